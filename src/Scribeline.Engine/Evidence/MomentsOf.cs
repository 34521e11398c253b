using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>The moments of one smoothed flight.</summary>
/// <param name="record">As written down.</param>
/// <param name="smooth">Smoothed.</param>
/// <param name="times">Of the smoothed flight, s.</param>
/// <param name="heights">By pressure, m; NaN where missing.</param>
/// <param name="accelerations">Nil on the pad, m/s²; NaN where missing.</param>
/// <param name="left">First sign of motion, s.</param>
internal sealed class MomentsOf(FlightRecord record, SmoothedFlight smooth, double[] times, double[] heights, double[] accelerations, double left)
{
    private const double Gravity = 9.80665;
    private readonly double step = record.Step;

    /// <summary>In order of time.</summary>
    public ValueList<FlightMoment> Find()
    {
        List<FlightMoment> found = [];
        var liftOff = LiftOff();
        found.Add(liftOff);
        if (Burnout(liftOff.Time) is { } burnout) found.Add(burnout);
        var after = Math.Max(found[^1].Time, liftOff.Time + 1);
        var apogee = FlightMoments.Apogee(smooth, after);
        if (apogee is { } top) found.Add(Apogee(top));
        found.AddRange(record.Firings.Where(f => f.Time > liftOff.Time).OrderBy(f => f.Time)
            .Select(f => At(MomentKind.Firing, f.Name, f.Time, step / 2, "the altimeter's channel")));
        if (apogee is { } peak)
        {
            var landing = FlightMoments.Landing(smooth, peak + 5);
            if (!found.Any(m => m.Kind == MomentKind.Firing) && FlightMoments.Slowed(times, heights, peak + 8, landing ?? times[^1]) is { } slower)
                found.Add(At(MomentKind.Opening, "slower descent", slower, 1, "cumulative sums of the descent rate"));
            if (landing is { } down) found.Add(At(MomentKind.Landing, "landing", down, Math.Max(step, 0.3), "ten seconds of rest"));
        }

        return found.OrderBy(m => m.Time).ToValueList();
    }

    private FlightMoment LiftOff()
    {
        if (record.HasAcceleration && FlightMoments.LiftOff(accelerations) is { } i) return At(MomentKind.LiftOff, "lift-off", times[i], step, "three readings beyond 3 g");
        var from = smooth.IndexAt(left - 3);
        var time = FlightMoments.Left([.. times.Skip(from)], [.. smooth.Height.Skip(from)]) ?? left;
        return At(MomentKind.LiftOff, "lift-off", time, Math.Max(step, 0.15), "back from 10 m and 40 m");
    }

    private FlightMoment? Burnout(double liftOff)
    {
        if (record.HasAcceleration && FlightMoments.Burnout(times, accelerations, liftOff) is { } i) return At(MomentKind.Burnout, "burnout", times[i], step, "drag exceeds thrust");
        for (var k = smooth.IndexAt(liftOff + 0.3); k < times.Length; k++)
        {
            if (smooth.Acceleration[k] <= -Gravity) return At(MomentKind.Burnout, "burnout", times[k], 0.3, "slows by more than gravity");
        }

        return null;
    }

    private FlightMoment Apogee(double time)
    {
        var i = smooth.IndexAt(time);
        var falls = Math.Max(Math.Abs(smooth.Acceleration[i]), 1);
        return At(MomentKind.Apogee, "apogee", time, smooth.SpeedSigma[i] / falls, "smooth speed falls through nil");
    }

    private FlightMoment At(MomentKind kind, string name, double time, double sigma, string how) =>
        new(kind, name, time, sigma, smooth.HeightAt(time), smooth.SpeedAt(time), how);
}
