using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Contradictions of what is stowed.</summary>
internal static class StowedChecks
{
    internal static void In(RocketDesign design, DesignNames names, List<Problem> problems)
    {
        string[] ties = [.. names.Parts, .. names.Plates, DesignChecks.Motor];
        foreach (var thing in design.Stowed)
        {
            names.Need(thing.In, names.Parts, "part", $"{thing.At}.in", problems);
            object?[] kinds = [thing.Canopy, thing.Cord, thing.Blanket, thing.Link, thing.Other];
            var typed = kinds.Count(k => k is not null);
            if (typed != 1 && names.Whole)
                problems.Add(new(thing.At, typed == 0 ? "Nothing is stowed here." : "Two things are stowed in one entry.", "Write one of canopy, cord, blanket, link and other in each entry."));
            if (thing.Canopy is { } canopy) Canopy(canopy, names, problems);
            if (thing.Cord is { } cord) Cord(cord, ties, names, problems);
        }
    }

    private static void Canopy(CanopyDesign canopy, DesignNames names, List<Problem> problems)
    {
        if (canopy.Diameter is null && canopy.DragArea is null)
            problems.Add(new(canopy.At, $"The size of '{canopy.Name}' is missing.", "Add diameter, or drag area where it was measured."));
        if (canopy.Type == CanopyType.Streamer && canopy.DragArea is null)
            problems.Add(new(canopy.At, $"The streamer '{canopy.Name}' has no drag area.", "Add drag area; there is no table for streamers."));
        if (canopy.On is { } cord) names.Need(cord, names.Cords, "cord", $"{canopy.At}.on", problems);
    }

    private static void Cord(CordDesign cord, string[] ties, DesignNames names, List<Problem> problems)
    {
        if (cord.Ties.Count != 2) problems.Add(new($"{cord.At}.ties", $"A cord has two ends, not {cord.Ties.Count}.", "Write ties: [the part or plate ahead, the one behind]."));
        for (var i = 0; i < cord.Ties.Count; i++) names.Need(cord.Ties[i], ties, "part or plate", $"{cord.At}.ties[{i}]", problems);
        if (cord.Ties is [var one, var other] && one == other) problems.Add(new($"{cord.At}.ties", $"Both ends are tied to '{one}'.", "Tie one end to each side of the joint."));
        if (cord.Mass is not null && cord.MassPerLength is not null) problems.Add(new(cord.At, "'mass' and 'mass per length' are both typed.", "Keep one of them."));
    }
}
