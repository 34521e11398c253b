namespace Scribeline.Engine.Airframe;

/// <summary>Area moments of a plane figure, x aft and y outboard; they add.</summary>
/// <param name="Area">m².</param>
/// <param name="X">∫x dA, m³.</param>
/// <param name="Y">∫y dA, m³.</param>
/// <param name="Xx">∫x²dA, m⁴.</param>
/// <param name="Yy">∫y²dA, m⁴.</param>
/// <param name="Xy">∫xy dA, m⁴.</param>
/// <remarks>
/// Source: polygon moments by Green's theorem, Steger, On the Calculation of Arbitrary Moments of Polygons (1996), from memory;
/// half ellipse in closed form.
/// </remarks>
public readonly record struct PlaneMoments(double Area, double X, double Y, double Xx, double Yy, double Xy)
{
    /// <summary>m.</summary>
    public double CentroidX => X / Area;

    /// <summary>m.</summary>
    public double CentroidY => Y / Area;

    /// <summary>∫(x - centroid)²dA, m⁴.</summary>
    public double CentralXx => Xx - X * X / Area;

    /// <summary>∫(y - centroid)²dA, m⁴.</summary>
    public double CentralYy => Yy - Y * Y / Area;

    /// <summary>∫(x - centroid)(y - centroid)dA, m⁴.</summary>
    public double CentralXy => Xy - X * Y / Area;

    /// <summary>Of a polygon given by its corners in order, either way round.</summary>
    public static PlaneMoments Polygon(params ReadOnlySpan<FinCorner> corners)
    {
        PlaneMoments sum = default;
        for (int i = 0; i < corners.Length; i++)
        {
            (FinCorner a, FinCorner b) = (corners[i], corners[(i + 1) % corners.Length]);
            double cross = a.X * b.Y - b.X * a.Y;
            sum += new PlaneMoments(
                cross / 2,
                cross * (a.X + b.X) / 6,
                cross * (a.Y + b.Y) / 6,
                cross * (a.X * a.X + a.X * b.X + b.X * b.X) / 12,
                cross * (a.Y * a.Y + a.Y * b.Y + b.Y * b.Y) / 12,
                cross * (a.X * b.Y + 2 * a.X * a.Y + 2 * b.X * b.Y + b.X * a.Y) / 24);
        }

        return sum.Area < 0 ? new(-sum.Area, -sum.X, -sum.Y, -sum.Xx, -sum.Yy, -sum.Xy) : sum;
    }

    /// <summary>Of a rectangle from its corner of least x and y.</summary>
    public static PlaneMoments Rectangle(double x, double y, double length, double height) =>
        Polygon(new(x, y), new(x + length, y), new(x + length, y + height), new(x, y + height));

    /// <summary>Of the half ellipse on the root chord, y ≥ 0, from the root's leading edge.</summary>
    /// <param name="root">m.</param>
    /// <param name="span">m.</param>
    public static PlaneMoments HalfEllipse(double root, double span)
    {
        double a = root / 2, area = Math.PI * a * span / 2;
        double y = area * 4 * span / (3 * Math.PI);
        return new(area, area * a, y, area * (a * a / 4 + a * a), area * span * span / 4, a * y);
    }

    public static PlaneMoments operator +(PlaneMoments a, PlaneMoments b) =>
        new(a.Area + b.Area, a.X + b.X, a.Y + b.Y, a.Xx + b.Xx, a.Yy + b.Yy, a.Xy + b.Xy);
}

/// <summary>Measures of fin outlines.</summary>
public static class FinOutlineGeometry
{
    /// <summary>Area moments from the root leading edge.</summary>
    public static PlaneMoments Moments(this FinOutline outline) => outline switch
    {
        TrapezoidFin f => PlaneMoments.Polygon(new(0, 0), new(f.Sweep, f.Span), new(f.Sweep + f.Tip, f.Span), new(f.Root, 0)),
        EllipticalFin f => PlaneMoments.HalfEllipse(f.Root, f.Span),
        FreeFin f => PlaneMoments.Polygon(f.Corners.Span),
        _ => throw new ArgumentOutOfRangeException(nameof(outline), outline, "Unknown outline."),
    };

    /// <summary>Root chord, m.</summary>
    public static double RootChord(this FinOutline outline) => outline switch
    {
        TrapezoidFin f => f.Root,
        EllipticalFin f => f.Root,
        FreeFin f => f.Corners[^1].X - f.Corners[0].X,
        _ => throw new ArgumentOutOfRangeException(nameof(outline), outline, "Unknown outline."),
    };

    /// <summary>Exposed semi-span, m.</summary>
    public static double Span(this FinOutline outline) => outline switch
    {
        TrapezoidFin f => f.Span,
        EllipticalFin f => f.Span,
        FreeFin f => f.Corners.Max(c => c.Y),
        _ => throw new ArgumentOutOfRangeException(nameof(outline), outline, "Unknown outline."),
    };
}
