using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Range;

namespace Scribeline.Engine.Resolving;

/// <summary>Turns a typed or read outline into a field about the pad.</summary>
internal static class FieldResolver
{
    // Beyond this a corner is a slip of the pen, and a plane no longer serves, m.
    private const double Farthest = 20_000;

    /// <summary>The plane about the pad; null where the site does not say where the pad is.</summary>
    public static LandingPlane? Plane(SiteDesign site, double elevation) =>
        site is { Latitude: { } latitude, Longitude: { } longitude } ? new(latitude.Si, longitude.Si, elevation) : null;

    /// <summary>The field; null without an outline, with one that cannot be placed (what to type is added to <paramref name="missing"/>), or a wrong one.</summary>
    /// <param name="outline">As typed or read.</param>
    /// <param name="plane">About the pad.</param>
    /// <param name="draw">Value to take for a measure.</param>
    /// <param name="missing">Added to.</param>
    /// <param name="problems">Added to.</param>
    public static LandingField? Resolve(OutlineDesign? outline, LandingPlane? plane, Func<IMeasure, double> draw, List<string> missing, List<Problem> problems)
    {
        if (outline is null) return null;
        if (outline.Areas.Count > 0 && plane is null)
        {
            missing.Add("site: latitude and longitude of the pad, so that the outline can be placed about it");
            return null;
        }

        var before = problems.Count;
        var areas = outline.Areas.Count > 0
            ? outline.Areas.Select(a => (a.Name, a.Kind, At: "site.boundary", Corners: a.Ring.Select(c => plane!.ToPlane(Radians(c.Latitude), Radians(c.Longitude))).ToValueList())).ToList()
            : [
                ("the field", null, At: "site.boundary.corners", Placed(outline.Corners)),
                .. outline.NoGo.Select(n => (n.Name, Kind: (AreaKind?)n.Kind, n.At, Placed(n.Corners))),
            ];
        foreach (var (name, _, at, corners) in areas)
        {
            if (LandingArea.WhyNot(corners) is { } why)
                problems.Add(new(at, $"{Title(name)}: {why}", "List the corners in order as you would walk round them, each [east, north] of the pad."));
            else if (corners.Any(c => double.Hypot(c.East, c.North) > Farthest))
                problems.Add(new(at, $"{Title(name)}: a corner is more than 20 km from the pad.", "Check latitude and longitude of the pad, and the order of numbers in the outline: a file has longitude first."));
        }

        if (problems.Count > before) return null;
        var fields = areas.Where(a => a.Kind is null).ToArray();
        if (fields.Length == 1) return new(new(fields[0].Corners), areas.Where(a => a.Kind is not null).Select(a => new KeptArea(a.Name, a.Kind == AreaKind.Crowd, new(a.Corners))).ToValueList());
        problems.Add(new("site.boundary", $"The outline has {fields.Length} areas that may be the field.", "Give each area that must be kept clear a kind: crowd, road, buildings, ground or other; one area is left for the field."));
        return null;

        ValueList<LandingPoint> Placed(ValueList<FieldCornerDesign> corners) => corners.Select(c => new LandingPoint(draw(c.East), draw(c.North))).ToValueList();
    }

    private static string Title(string name) => name.Length == 0 ? "The outline" : char.ToUpperInvariant(name[0]) + name[1..];

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
