using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Numerics;

/// <summary>How accurately, and in how large steps, a system is integrated.</summary>
public sealed record StepControl
{
    /// <summary>Error allowed in one step as a fraction of the component; zero or more.</summary>
    public double RelativeTolerance { get; init; } = 1e-6;

    /// <summary>
    /// Error allowed in one step in the component's own unit: one per component, or a single one for all.
    /// Zero or more; not zero for a component that passes through zero.
    /// </summary>
    public ValueList<double> AbsoluteTolerance { get; init; } = [1e-9];

    /// <summary>
    /// Longest step (may be passed by 1 % to meet a stop), s. Events are looked for at five points of a step: keep this
    /// below about four times the shortest stay on one side of an event's zero.
    /// </summary>
    public double MaxStep { get; init; } = double.PositiveInfinity;

    /// <summary>Length of the first step, s; 0 lets the integrator choose.</summary>
    public double FirstStep { get; init; }

    /// <summary>Accepted and rejected steps after which a run is given up.</summary>
    public int MaxSteps { get; init; } = 100_000;

    /// <summary>Largest distance between an event's reported time and its zero, s.</summary>
    public double EventTolerance { get; init; } = 1e-10;
}
