using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>A measured value beside its plan.</summary>
/// <param name="Planned">What was planned, if anything.</param>
/// <param name="Measured">What was measured.</param>
public sealed record Compared(PlannedMeasure Planned, IMeasure Measured)
{
    /// <summary>Measured less planned, SI; null where nothing was planned.</summary>
    public double? Difference => Planned.Plan is { } plan ? Measured.Si - plan.Si : null;

    /// <summary>What the plan allows either way, SI; null where it says nothing of that.</summary>
    public double? Allowed => Planned.Plan is { ToleranceSi: > 0 } plan ? plan.ToleranceSi : null;
}
