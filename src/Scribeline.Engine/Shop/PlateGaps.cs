using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>A gap on a plate.</summary>
/// <param name="Face">Where the two could meet.</param>
/// <param name="First">One thing.</param>
/// <param name="Second">The other, or what bounds the plate there.</param>
/// <param name="Width">m; below 0 they reach into each other.</param>
/// <param name="Wall">Whether the other is the wall or an edge of the plate.</param>
public sealed record PlateGap(PlateFace Face, string First, string Second, double Width, bool Wall);

/// <summary>Gaps between all that sits on a plate, the walls round it and its edges.</summary>
public static class PlateGaps
{
    /// <summary>Every pair that could meet, narrowest first.</summary>
    /// <param name="plate">The plate.</param>
    public static ValueList<PlateGap> Of(PlateLayout plate)
    {
        var things = plate.Things;
        List<PlateGap> gaps = [];
        for (var i = 0; i < things.Count; i++)
        {
            gaps.AddRange(Bounds(plate, things[i]));
            for (var j = i + 1; j < things.Count; j++)
            {
                if (Meet(things[i], things[j]) is { } face) gaps.Add(new(face, things[i].Name, things[j].Name, Outlines.Gap(things[i].Outline, things[j].Outline), false));
            }
        }

        return gaps.OrderBy(g => g.Width).ToValueList();
    }

    /// <summary>Narrowest gap of what may move, m, infinite where nothing could meet; any value not above a bound where it is no better.</summary>
    internal static double Least(PlateLayout plate, IReadOnlyList<PlateThing> moving, IReadOnlyList<PlateThing> others, double enough)
    {
        var least = double.PositiveInfinity;
        foreach (var thing in moving) least = Math.Min(least, Bound(plate, thing));

        for (var i = 0; i < moving.Count && least > enough; i++)
        {
            for (var j = i + 1; j < moving.Count; j++) least = Math.Min(least, Between(moving[i], moving[j]));
            for (var j = 0; j < others.Count && least > enough; j++) least = Math.Min(least, Between(moving[i], others[j]));
        }

        return least;
    }

    private static double Between(PlateThing a, PlateThing b) => Meet(a, b) is null ? double.PositiveInfinity : Outlines.Gap(a.Outline, b.Outline);

    /// <summary>Where two things could meet; null where they cannot or belong together.</summary>
    private static PlateFace? Meet(PlateThing a, PlateThing b)
    {
        if (a.Owner == b.Owner) return null;

        // Free of metal: wires may pass.
        if ((a.Kind == PlateThingKind.KeepClear && b.Kind is PlateThingKind.WireHole or PlateThingKind.KeepClear) || (b.Kind == PlateThingKind.KeepClear && a.Kind == PlateThingKind.WireHole)) return null;
        if (a.Face == PlateFace.Through) return b.Face;
        return b.Face == PlateFace.Through || b.Face == a.Face ? a.Face : null;
    }

    // A body may overhang its plate where it clears the bore it must pass through; a hole must lie in the plate.
    private static IEnumerable<PlateGap> Bounds(PlateLayout plate, PlateThing thing)
    {
        if (thing.Kind == PlateThingKind.KeepClear) yield break;
        yield return new(thing.Face, thing.Name, thing.Face == PlateFace.Through ? "edge of the plate" : "wall", Outer(plate, thing), true);
        if (plate.IsRing) yield return new(thing.Face, thing.Name, "inner edge", Inner(plate, thing), true);
    }

    private static double Bound(PlateLayout plate, PlateThing thing) => thing.Kind == PlateThingKind.KeepClear ? double.PositiveInfinity
        : plate.IsRing ? Math.Min(Outer(plate, thing), Inner(plate, thing))
        : Outer(plate, thing);

    private static double Outer(PlateLayout plate, PlateThing thing) =>
        ((thing.Face == PlateFace.Through ? plate.Diameter : plate.BoreAt(thing.Face)) / 2) - Outlines.Reach(thing.Outline);

    private static double Inner(PlateLayout plate, PlateThing thing) => Outlines.Near(thing.Outline) - (plate.InnerDiameter / 2);
}
