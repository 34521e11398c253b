using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>What an altimeter wrote down, SI, as it stands in its file: NaN where a value is missing.</summary>
/// <param name="Time">s, rising, from any origin.</param>
/// <param name="Pressure">Static pressure, Pa; empty where it was not recorded.</param>
/// <param name="ShownHeight">Height as the altimeter shows it, m, by the standard atmosphere; empty where it was not recorded.</param>
/// <param name="Acceleration">Along the axis, m/s², with or without gravity: the pad tells; empty where it was not recorded.</param>
public sealed record FlightRecord(ValueList<double> Time, ValueList<double> Pressure, ValueList<double> ShownHeight, ValueList<double> Acceleration)
{
    /// <summary>Supply, V; empty where it was not recorded.</summary>
    public ValueList<double> Voltage { get; init; } = [];

    /// <summary>When each channel fired, in the order of the file's columns.</summary>
    public ValueList<RecordedFiring> Firings { get; init; } = [];

    /// <summary>Whether there is an accelerometer.</summary>
    public bool HasAcceleration => Acceleration.Count > 0;

    /// <summary>Middle of the steps of time, s.</summary>
    public double Step
    {
        get
        {
            var steps = Time.Zip(Time.Skip(1), (a, b) => b - a).Order().ToArray();
            return steps.Length == 0 ? double.NaN : steps[steps.Length / 2];
        }
    }

    /// <summary>The same record with another origin of time.</summary>
    /// <param name="by">s added to every time.</param>
    public FlightRecord Shifted(double by) => this with
    {
        Time = Time.Select(t => t + by).ToValueList(),
        Firings = Firings.Select(f => f with { Time = f.Time + by }).ToValueList(),
    };
}

/// <summary>A channel of the altimeter that fired.</summary>
/// <param name="Name">Of its column.</param>
/// <param name="Time">First sample that shows it fired, s.</param>
public readonly record struct RecordedFiring(string Name, double Time);
