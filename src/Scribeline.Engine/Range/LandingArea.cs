using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Range;

/// <summary>A patch of ground inside a ring of corners that does not cross itself.</summary>
public sealed record LandingArea
{
    private readonly Polygon polygon;
    private readonly IndexedPointInAreaLocator locator;

    /// <param name="corners">Three or more in order, either way round; the last need not repeat the first.</param>
    /// <exception cref="ArgumentException">Fewer than three, not finite, or a ring that crosses itself: ask <see cref="WhyNot"/> first.</exception>
    public LandingArea(ValueList<LandingPoint> corners)
    {
        if (WhyNot(corners) is { } why) throw new ArgumentException(why, nameof(corners));
        Corners = Open(corners);
        polygon = Ring(Corners);
        locator = new(polygon);
    }

    /// <summary>Its corners in order, none twice.</summary>
    public ValueList<LandingPoint> Corners { get; }

    /// <summary>m².</summary>
    public double Size => polygon.Area;

    /// <summary>Shortest width of the ring between two parallel lines, m.</summary>
    public double Narrowest => new NetTopologySuite.Algorithm.MinimumDiameter(polygon).Length;

    /// <summary>Whether a point lies in it or on its edge.</summary>
    public bool Contains(LandingPoint point) => locator.Locate(new Coordinate(point.East, point.North)) != Location.Exterior;

    /// <summary>From a point to the nearest place of the edge, m: positive inside, negative outside.</summary>
    public double Inside(LandingPoint point)
    {
        var nearest = double.PositiveInfinity;
        var from = Corners[^1];
        foreach (var to in Corners)
        {
            double alongEast = to.East - from.East, alongNorth = to.North - from.North, square = (alongEast * alongEast) + (alongNorth * alongNorth);
            var share = square > 0 ? (((point.East - from.East) * alongEast) + ((point.North - from.North) * alongNorth)) / square : 0;
            share = Math.Clamp(share, 0, 1);
            nearest = Math.Min(nearest, double.Hypot(point.East - from.East - (share * alongEast), point.North - from.North - (share * alongNorth)));
            from = to;
        }

        return Contains(point) ? nearest : -nearest;
    }

    /// <summary>Why corners make no area, a whole sentence; null where they do.</summary>
    public static string? WhyNot(ValueList<LandingPoint> corners)
    {
        if (corners.Any(c => !double.IsFinite(c.East) || !double.IsFinite(c.North))) return "A corner is not a number.";
        if (Open(corners).Distinct().Count() < 3) return "An outline needs three corners or more that differ.";
        return Ring(Open(corners)).IsValid ? null : "The outline crosses or touches itself.";
    }

    /// <inheritdoc/>
    public bool Equals(LandingArea? other) => other is not null && Corners.Equals(other.Corners);

    /// <inheritdoc/>
    public override int GetHashCode() => Corners.GetHashCode();

    private static ValueList<LandingPoint> Open(ValueList<LandingPoint> corners) =>
        corners.Count > 1 && corners[0] == corners[^1] ? corners.SkipLast(1).ToValueList() : corners;

    private static Polygon Ring(ValueList<LandingPoint> corners) =>
        new(new LinearRing([.. corners.Append(corners[0]).Select(c => new Coordinate(c.East, c.North))]));
}
