using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>Reads a record: pad, heights, lift-off, smoothing, moments, descents.</summary>
public static class FlightReader
{
    private const double Gravity = 9.80665;
    private const double BeforeLiftOff = 5, AfterLanding = 30;

    // Common practice: jerk of the motors flown here, and of what hangs under an open canopy; noise that a pad too still does not show.
    private const double Jerk = 500, QuietJerk = 5, LeastHeightSigma = 0.15, LeastAccelerationSigma = 0.5;

    // Canopies need this long to open and settle; channels that fire within this time of apogee are those of apogee.
    private const double Settling = 4, AtApogee = 6;

    /// <summary>Reads.</summary>
    /// <param name="record">The record.</param>
    /// <param name="air">Air of the day above the pad.</param>
    /// <param name="portLag">Time by which the pressure inside is behind, s; 0 where it is not stated.</param>
    /// <returns>The reading; or why there is none.</returns>
    public static (FlightReading? Reading, string Why) Read(FlightRecord record, DayAir air, double portLag = 0)
    {
        var rough = RoughHeights(record, air);
        var start = record.HasAcceleration ? FlightMoments.LiftOff(Zeroed(record, Math.Min(20, record.Time.Count))) : null;
        start ??= FlightMoments.Climbed(rough);
        if (start is not { } left) return (null, "No lift-off is in it: the height never passes 30 m above the first samples, nor the acceleration 3 g.");
        var pad = PadOf(record, left);
        if (pad < 3) return (null, "It holds no samples on the pad: heights and accelerations cannot be zeroed.");

        var (heights, padPressure, padSigma) = Heights(record, air, pad);
        var along = record.HasAcceleration ? Zeroed(record, pad) : [.. Enumerable.Repeat(double.NaN, record.Time.Count)];
        var from = Enumerable.Range(0, record.Time.Count).First(i => record.Time[i] >= record.Time[left] - BeforeLiftOff);
        var (times, h, a) = (record.Time.Skip(from).ToArray(), heights[from..], along[from..]);
        double heightNoise = Deviation(heights.Take(pad)), accelerationNoise = record.HasAcceleration ? Deviation(along.Take(pad)) : double.NaN;

        SmoothingSettings settings = new(Math.Max(heightNoise, LeastHeightSigma), Math.Max(record.HasAcceleration ? accelerationNoise : 0, LeastAccelerationSigma), Jerk)
        {
            PortLag = portLag,
            SoundSpeed = z => air.At<Scalar>(air.Elevation + Math.Clamp(z, -500, 30_000)).SoundSpeed,
        };
        var top = times[Enumerable.Range(0, h.Length).Where(i => double.IsFinite(h[i])).MaxBy(i => h[i])];
        var fired = record.Firings.Where(f => f.Time > record.Time[left]).Select(f => f.Time).DefaultIfEmpty(top).Min();
        var used = a.Select((x, i) => times[i] < Math.Min(top, fired) ? x : double.NaN).ToArray();

        var first = SmoothedFlight.Of(times, h, used, settings);
        settings = Coasting(first, times[left - from], Math.Min(top, fired), settings);
        first = SmoothedFlight.Of(times, h, used, settings);
        var moments = new MomentsOf(record, first, times, h, a, times[left - from]).Find();
        settings = settings with { QuietJerk = QuietJerk, Quiet = Quiet(moments) };
        var smooth = SmoothedFlight.Of(times, h, used, settings);
        moments = new MomentsOf(record, smooth, times, h, a, times[left - from]).Find();

        var landed = moments.FirstOrDefault(m => m.Kind == MomentKind.Landing)?.Time;
        var push = used.Where(double.IsFinite).DefaultIfEmpty(double.NaN).Max();
        return (new(record, smooth, ValueList.Of<double>(h), ValueList.Of<double>(a), moments, settings)
        {
            PadPressure = padPressure,
            PadPressureSigma = padSigma,
            PadSamples = pad,
            PadNoise = (heightNoise, accelerationNoise),
            Descents = Descents(times, h, moments),
            GreatestPush = FlightReading.Felt(push),
            Saturated = used.Where((x, i) => i >= 4 && x == push && used[i - 1] == push && used[i - 2] == push && used[i - 3] == push && used[i - 4] == push).Any(),
            Gaps = GapsIn(times, record.Step, landed ?? times[^1]),
        }, "");
    }

    /// <summary>Geometric heights above the pad from pressures, m, in the air of a day whose pad pressure is that of the record.</summary>
    /// <param name="pressures">Pa.</param>
    /// <param name="padPressure">Pa.</param>
    /// <param name="air">The day.</param>
    public static double[] HeightsOf(IEnumerable<double> pressures, double padPressure, DayAir air) =>
        [.. pressures.Select(p => double.IsFinite(p) && p > 0 ? (double)air.HeightAtPressure<Scalar>(p / padPressure * air.StationPressure) - air.Elevation : double.NaN)];

    private static double[] RoughHeights(FlightRecord record, DayAir air)
    {
        if (record.Pressure.Count == 0) return Zero(record.ShownHeight.ToArray(), Math.Min(20, record.Time.Count));
        var first = Median(record.Pressure.Where(double.IsFinite).Take(20));
        return HeightsOf(record.Pressure, first, air);
    }

    private static (double[] Heights, double Pressure, double Sigma) Heights(FlightRecord record, DayAir air, int pad)
    {
        if (record.Pressure.Count > 0)
        {
            var onPad = record.Pressure.Take(pad).Where(double.IsFinite).ToArray();
            var middle = Median(onPad);
            return (HeightsOf(record.Pressure, middle, air), middle, Deviation(onPad));
        }

        // What the altimeter shows is a difference of heights in the standard atmosphere; the day's air makes true heights of them.
        var shown = Zero(record.ShownHeight.ToArray(), pad);
        return ([.. shown.Select(h => double.IsFinite(h) ? (double)Altimetry.TrueHeight<Scalar>(air, h) : double.NaN)], double.NaN, double.NaN);
    }

    // Half a second before the first sign of motion is still the pad.
    private static int PadOf(FlightRecord record, int left)
    {
        var count = 0;
        while (count < left && record.Time[count] < record.Time[left] - (record.HasAcceleration ? 0.5 : 2.5)) count++;
        return count;
    }

    // An axis that points down reads negative at rest.
    private static double[] Zeroed(FlightRecord record, int pad)
    {
        var rest = record.Acceleration.Take(pad).Where(double.IsFinite).DefaultIfEmpty(0).Average();
        var sign = rest < -Gravity / 2 ? -1 : 1;
        return [.. record.Acceleration.Select(a => sign * (a - rest))];
    }

    private static double[] Zero(double[] values, int pad)
    {
        var rest = Median(values.Take(pad).Where(double.IsFinite));
        return [.. values.Select(v => v - rest)];
    }

    // In flight, wind over the ports and vibration add to what the pad shows: of both, the larger counts.
    private static SmoothingSettings Coasting(SmoothedFlight first, double liftOff, double end, SmoothingSettings settings)
    {
        var seen = first.Innovations.Where((v, i) => double.IsFinite(v) && first.Time[i] > liftOff + 1 && first.Time[i] < end).Select(v => v * v).ToArray();
        return seen.Length < 20 || seen.Average() <= 1 ? settings : settings with { HeightSigma = settings.HeightSigma * Math.Min(Math.Sqrt(seen.Average()), 30) };
    }

    private static Func<double, bool> Quiet(ValueList<FlightMoment> moments)
    {
        var disturbed = moments.Where(m => m.Kind is MomentKind.Apogee or MomentKind.Firing or MomentKind.Opening or MomentKind.Landing).Select(m => m.Time).ToArray();
        return disturbed.Length == 0 ? _ => false : time => time > disturbed[0] + Settling && disturbed.All(d => time < d - 0.5 || time > d + Settling);
    }

    private static ValueList<SteadyDescentSeen> Descents(double[] times, double[] heights, ValueList<FlightMoment> moments)
    {
        if (moments.FirstOrDefault(m => m.Kind == MomentKind.Apogee) is not { } apogee) return [];
        var (early, late) = (
            moments.LastOrDefault(m => m.Kind == MomentKind.Firing && m.Time < apogee.Time + AtApogee) ?? apogee,
            moments.Where(m => m.Kind is MomentKind.Firing or MomentKind.Opening && m.Time >= apogee.Time + AtApogee).ToArray());
        var end = moments.FirstOrDefault(m => m.Kind == MomentKind.Landing)?.Time ?? times[^1];
        List<SteadyDescentSeen> seen = [];
        if (DescentFit.Of(times, heights, early.Time + (2 * Settling), (late.Length > 0 ? late[0].Time : end) - 1) is { To: var to, From: var from } drogue && to - from >= 5)
            seen.Add(new(late.Length == 0 && !moments.Any(m => m.Kind == MomentKind.Landing), drogue, early));
        if (late.Length > 0 && DescentFit.Of(times, heights, late[^1].Time + (1.5 * Settling), end - 1.5) is { } main && main.To - main.From >= 5)
            seen.Add(new(true, main, late[0]));
        return seen.ToValueList();
    }

    private static int GapsIn(double[] times, double step, double until) => Enumerable.Range(1, times.Length - 1).Count(i => times[i] < until && times[i] - times[i - 1] > 3 * step && IsLong(times, i));

    // An altimeter may write less often on the way down: a gap is long beside its neighbours too.
    private static bool IsLong(double[] times, int i) =>
        (i < 2 || times[i] - times[i - 1] > 3 * (times[i - 1] - times[i - 2])) && (i + 1 >= times.Length || times[i] - times[i - 1] > 3 * (times[i + 1] - times[i]));

    private static double Median(IEnumerable<double> values) => MathNet.Numerics.Statistics.Statistics.Median(values);

    private static double Deviation(IEnumerable<double> values) => MathNet.Numerics.Statistics.Statistics.StandardDeviation(values.Where(double.IsFinite));
}
