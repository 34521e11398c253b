using NetTopologySuite.Geometries;

namespace Scribeline.Engine.Shop;

/// <summary>
/// Gaps between outlines on a plate. A circle is its middle grown by its radius, so every gap is an exact distance of points and polygons.
/// </summary>
internal static class Outlines
{
    private static readonly GeometryFactory Plane = new();

    /// <summary>Least distance between two outlines, m; below 0 how far they reach into each other.</summary>
    public static double Gap(PlateOutline a, PlateOutline b)
    {
        if (a is PlateCircle p && b is PlateCircle q) return Math.Sqrt(((p.X - q.X) * (p.X - q.X)) + ((p.Y - q.Y) * (p.Y - q.Y))) - p.Radius - q.Radius;
        return (a, b) switch
        {
            (PlateRectangle r, PlateCircle c) => Beside(r, c),
            (PlateCircle c, PlateRectangle r) => Beside(r, c),
            _ => Distance(Core(a), Core(b)) - Grown(a) - Grown(b),
        };
    }

    // The middle of the plate seen in the frame of the rectangle: the corner across from it is the farthest.
    private static double Corner(PlateRectangle r)
    {
        var (sin, cos) = Math.SinCos(r.Turn);
        double x = Math.Abs((r.X * cos) + (r.Y * sin)) + (r.Length / 2), y = Math.Abs((r.Y * cos) - (r.X * sin)) + (r.Width / 2);
        return Math.Sqrt((x * x) + (y * y));
    }

    // The middle of the circle seen in the frame of the rectangle. Tried thousands of times by the solver, hence not by polygons.
    private static double Beside(PlateRectangle r, PlateCircle c)
    {
        var (sin, cos) = Math.SinCos(r.Turn);
        double x = Math.Abs(((c.X - r.X) * cos) + ((c.Y - r.Y) * sin)) - (r.Length / 2), y = Math.Abs(((c.Y - r.Y) * cos) - ((c.X - r.X) * sin)) - (r.Width / 2);
        var outside = Math.Sqrt((Math.Max(x, 0) * Math.Max(x, 0)) + (Math.Max(y, 0) * Math.Max(y, 0)));
        return outside + Math.Min(Math.Max(x, y), 0) - c.Radius;
    }

    /// <summary>From the middle of the plate to the farthest point of an outline, m.</summary>
    public static double Reach(PlateOutline outline) => outline is PlateRectangle r ? Corner(r) : Grown(outline) + Math.Sqrt((outline.X * outline.X) + (outline.Y * outline.Y));

    /// <summary>From the middle of the plate to the nearest point of an outline, m; 0 where it covers the middle.</summary>
    public static double Near(PlateOutline outline) => Math.Max(Gap(outline, new PlateCircle(0, 0, 0)), 0);

    private static double Grown(PlateOutline outline) => outline is PlateCircle circle ? circle.Radius : 0;

    private static Geometry Core(PlateOutline outline) => outline switch
    {
        PlateRectangle r => Plane.CreatePolygon([.. r.Corners.Append(r.Corners[0]).Select(c => new Coordinate(c.X, c.Y))]),
        _ => Plane.CreatePoint(new Coordinate(outline.X, outline.Y)),
    };

    private static double Distance(Geometry a, Geometry b) => (a, b) switch
    {
        _ when !a.Intersects(b) => a.Distance(b),
        (Polygon p, Polygon q) => -Overlap(p, q),
        (Polygon p, _) => -p.ExteriorRing.Distance(b),
        (_, Polygon q) => -q.ExteriorRing.Distance(a),
        _ => 0,
    };

    // Least shift that parts two convex polygons: the smallest overlap of their shadows across any side (separating axis theorem,
    // Gottschalk, Lin and Manocha, SIGGRAPH 1996).
    private static double Overlap(Polygon p, Polygon q)
    {
        var least = double.PositiveInfinity;
        foreach (var ring in new[] { p.Coordinates, q.Coordinates })
        {
            for (var i = 1; i < ring.Length; i++)
            {
                double x = ring[i].Y - ring[i - 1].Y, y = ring[i - 1].X - ring[i].X, length = Math.Sqrt((x * x) + (y * y));
                double Shadow(Coordinate c) => ((c.X * x) + (c.Y * y)) / length;
                var overlap = Math.Min(p.Coordinates.Max(Shadow) - q.Coordinates.Min(Shadow), q.Coordinates.Max(Shadow) - p.Coordinates.Min(Shadow));
                least = Math.Min(least, overlap);
            }
        }

        return least;
    }
}
