using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>What a recorded flight did, read from its record and the air of the day.</summary>
/// <param name="Record">As written down.</param>
/// <param name="Smooth">Smoothed, from shortly before lift-off.</param>
/// <param name="Heights">By pressure at the times of <paramref name="Smooth"/>, m above the pad; NaN where missing.</param>
/// <param name="Accelerations">Along the axis, nil on the pad, at those times, m/s²; NaN where missing.</param>
/// <param name="Moments">In order of time.</param>
/// <param name="Settings">How it was smoothed.</param>
public sealed record FlightReading(
    FlightRecord Record, SmoothedFlight Smooth, ValueList<double> Heights, ValueList<double> Accelerations, ValueList<FlightMoment> Moments, SmoothingSettings Settings)
{
    private const double Gravity = 9.80665;

    /// <summary>Lift-off.</summary>
    public FlightMoment LiftOff => Moments.First(m => m.Kind == MomentKind.LiftOff);

    /// <summary>Null where the record does not tell.</summary>
    public FlightMoment? Burnout => Of(MomentKind.Burnout);

    /// <summary>Null where the record ends before.</summary>
    public FlightMoment? Apogee => Of(MomentKind.Apogee);

    /// <summary>Null where the record ends before.</summary>
    public FlightMoment? Landing => Of(MomentKind.Landing);

    /// <summary>Standard error of the pad pressure's samples, Pa; NaN without pressure.</summary>
    public double PadPressureSigma { get; init; } = double.NaN;

    /// <summary>Pressure on the pad, Pa; NaN without pressure.</summary>
    public double PadPressure { get; init; } = double.NaN;

    /// <summary>Samples from which the pad is known.</summary>
    public int PadSamples { get; init; }

    /// <summary>Standard error of a height and of an acceleration as the pad shows it, m and m/s².</summary>
    public (double Height, double Acceleration) PadNoise { get; init; }

    /// <summary>Steady descents, in order of time: under the drogue, under the main.</summary>
    public ValueList<SteadyDescentSeen> Descents { get; init; } = [];

    /// <summary>Greatest reading on the way up above the axis at rest, m/s² of thrust less drag over mass; NaN without accelerometer.</summary>
    public double GreatestPush { get; init; } = double.NaN;

    /// <summary>Whether that reading is the end of the sensor's range.</summary>
    public bool Saturated { get; init; }

    /// <summary>Gaps of more than three steps while it flew.</summary>
    public int Gaps { get; init; }

    /// <summary>Time after lift-off, s.</summary>
    public double Since(double time) => time - LiftOff.Time;

    /// <summary>Sample of the greatest speed on the way up.</summary>
    public int Fastest
    {
        get
        {
            var end = Apogee is { } apogee ? Smooth.IndexAt(apogee.Time) : Smooth.Time.Count - 1;
            return Enumerable.Range(0, end + 1).MaxBy(i => Smooth.Speed[i]);
        }
    }

    /// <summary>
    /// Standard uncertainty of the greatest speed, m/s: that of the smoothing, and half a per cent for the scale of an accelerometer or two for heights
    /// alone (assumptions).
    /// </summary>
    public double FastestSigma
    {
        get
        {
            var scale = (Record.HasAcceleration ? 0.005 : 0.02) * Smooth.Speed[Fastest];
            return Math.Sqrt((Smooth.SpeedSigma[Fastest] * Smooth.SpeedSigma[Fastest]) + (scale * scale));
        }
    }

    /// <summary>Whether the greatest speed was told while shocks crossed the ports.</summary>
    public bool FastestDisturbed => Smooth.TransonicAt.Contains(Smooth.Time[Fastest]);

    /// <summary>Mean of the squared normalised innovations of heights on the way up, from how many.</summary>
    public (double Mean, int Count) Consistency
    {
        get
        {
            var end = Apogee?.Time ?? double.PositiveInfinity;
            var seen = Smooth.Innovations.Where((v, i) => double.IsFinite(v) && Smooth.Time[i] > LiftOff.Time && Smooth.Time[i] < end).Select(v => v * v).ToArray();
            return seen.Length == 0 ? (double.NaN, 0) : (seen.Average(), seen.Length);
        }
    }

    /// <summary>Firings of channels, in order of time.</summary>
    public IEnumerable<FlightMoment> Firings => Moments.Where(m => m.Kind == MomentKind.Firing);

    /// <summary>Acceleration an accelerometer feels, m/s², from the reading that is nil on the pad.</summary>
    internal static double Felt(double acceleration) => acceleration + Gravity;

    private FlightMoment? Of(MomentKind kind) => Moments.FirstOrDefault(m => m.Kind == kind);
}

/// <summary>A steady descent in a record.</summary>
/// <param name="Main">Whether under the last canopy; otherwise under what opened at apogee.</param>
/// <param name="Fit">Its line.</param>
/// <param name="From">What it follows.</param>
public sealed record SteadyDescentSeen(bool Main, DescentFit Fit, FlightMoment From);
