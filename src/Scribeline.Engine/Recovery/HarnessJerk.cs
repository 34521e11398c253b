using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Recovery;

/// <summary>A harness that runs out after the hardest charge on the joint it spans.</summary>
/// <param name="Cord">Index of the harness.</param>
/// <param name="Harness">The harness.</param>
/// <param name="Firing">The charge, alone.</param>
/// <param name="Snap">What it takes up; null where the strength or stretch of the harness is not known.</param>
public sealed record HarnessJerk(int Cord, Harness Harness, ChargeFiring Firing, SnapOut? Snap)
{
    /// <summary>Its peak tension, N; null where not known.</summary>
    public double? Tension => Snap?.Tension;
}
