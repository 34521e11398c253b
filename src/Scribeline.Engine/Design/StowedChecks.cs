using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

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
            if (thing.Link is { Joins: { } joined } link) names.Need(joined, [.. ties, .. design.Stowed.Select(s => s.Canopy?.Name).OfType<string>()], "canopy or tie", $"{link.At}.joins", problems);
        }
    }

    private static void Canopy(CanopyDesign canopy, DesignNames names, List<Problem> problems)
    {
        if (canopy.Diameter is null && canopy.DragArea is null)
            problems.Add(new(canopy.At, $"The size of '{canopy.Name}' is missing.", "Add diameter, or drag area where it was measured."));
        if (canopy.Type == CanopyType.Streamer && canopy.DragArea is null)
            problems.Add(new(canopy.At, $"The streamer '{canopy.Name}' has no drag area.", "Add drag area; there is no table for streamers."));
        if (canopy.Sides is < 3) problems.Add(new($"{canopy.At}.sides", "A polygon has three sides or more.", "Write sides: 6 for a hexagon, or leave it out for a round canopy."));
        if (canopy is { StripWidth: { } width, Diameter: { } length } && width.Si > length.Si)
            problems.Add(new(width.At, $"A strip {width.Text} wide is not longer than it is wide.", "Type the length of a strip as the diameter."));
        if (canopy.ReferenceArea == ReferenceAreaWord.Mouth && canopy.Type != CanopyType.Hemispherical)
            problems.Add(new($"{canopy.At}.reference area", "Only a hemisphere is measured across its mouth.", "Write nominal, constructed or projected."));
        if (canopy.On is { } cord) names.Need(cord, names.Cords, "cord", $"{canopy.At}.on", problems);
    }

    private static void Cord(CordDesign cord, string[] ties, DesignNames names, List<Problem> problems)
    {
        if (cord.Ties.Count != 2) problems.Add(new($"{cord.At}.ties", $"A cord has two ends, not {cord.Ties.Count}.", "Write ties: [the part or plate ahead, the one behind]."));
        for (var i = 0; i < cord.Ties.Count; i++) names.Need(cord.Ties[i], ties, "part or plate", $"{cord.At}.ties[{i}]", problems);
        if (cord.Ties is [var one, var other] && one == other) problems.Add(new($"{cord.At}.ties", $"Both ends are tied to '{one}'.", "Tie one end to each side of the joint."));
        if (cord.Ends is { } ends && Knot.Find(ends) is null)
            problems.Add(new($"{cord.At}.ends", $"'{ends}' is no end of a cord that is known.", Spelling.Suggest(ends, [.. Knot.All.Select(k => k.Name)])));
        if (cord.Mass is not null && cord.MassPerLength is not null) problems.Add(new(cord.At, "'mass' and 'mass per length' are both typed.", "Keep one of them."));
    }
}
