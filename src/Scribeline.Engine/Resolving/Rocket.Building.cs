using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Resolving;

/// <content>Building, and what was measured on it.</content>
public sealed partial record Rocket
{
    /// <summary>Steps of building it; none for a case drawn from its tolerances, which nobody builds.</summary>
    public BuildSteps Build { get; init; } = BuildSteps.None;

    /// <summary>Measured values beside their plans; the rocket itself is as measured.</summary>
    public ValueList<Compared> Compared { get; init; } = [];

    /// <summary>Parts and what they make up, as weighed.</summary>
    public Weighings Weighings { get; init; } = Weighings.None;

    /// <summary>Swings that give moments of inertia.</summary>
    public ValueList<SwungPiece> Swung { get; init; } = [];
}
