using Scribeline.Engine.Evidence.Shots;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <content>Ground tests of its charges.</content>
public sealed partial record Rocket
{
    /// <summary>Charges fired on the ground, in the order they were recorded.</summary>
    public ValueList<Shot> Shots { get; init; } = [];

    /// <summary>Whether the builder lets what they say count.</summary>
    public bool ShotsCount { get; init; }
}
