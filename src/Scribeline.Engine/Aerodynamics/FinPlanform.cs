using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Integrals over the planform of one fin. x aft of the root leading edge, y outboard from the root; SI units.
/// Source: strip integrals of J. S. and J. A. Barrowman, The Theoretical Prediction of the Center of Pressure, NARAM-8, 1966.
/// </summary>
/// <param name="Area">Of one fin, m².</param>
/// <param name="Span">Root to tip, m.</param>
/// <param name="RootChord">m.</param>
/// <param name="MeanChord">Mean aerodynamic chord ∫c² dy/A, m.</param>
/// <param name="MeanLeadingEdge">Leading edge of the mean aerodynamic chord ∫x_L c dy/A, m.</param>
/// <param name="SpanwiseCentre">∫y c dy/A, m.</param>
/// <param name="SpanwiseSquare">∫y² c dy, m⁴.</param>
/// <param name="MidChordSweep">tan Γ of the mid-chord line, straight-line fit weighted by chord.</param>
/// <param name="LeadingEdgeSweep">tan Λ of the leading edge, fitted the same way.</param>
/// <param name="TipLeadingEdge">x of the leading edge at the tip, m.</param>
public sealed record FinPlanform(
    double Area,
    double Span,
    double RootChord,
    double MeanChord,
    double MeanLeadingEdge,
    double SpanwiseCentre,
    double SpanwiseSquare,
    double MidChordSweep,
    double LeadingEdgeSweep,
    double TipLeadingEdge)
{
    /// <summary>Bands with straight edges that make up the outline, root to tip.</summary>
    internal IReadOnlyList<FinBand> Bands { get; private init; } = [];

    /// <summary>AR = 2 s²/A of two fins joined root to root.</summary>
    public double AspectRatio => 2 * Span * Span / Area;

    /// <summary>Quarter-chord point of the mean aerodynamic chord, m.</summary>
    public double QuarterChord => MeanLeadingEdge + MeanChord / 4;

    /// <summary>∫c (r + y)² dy, m⁴, for fins on a body of radius r.</summary>
    public double RollIntegral(double bodyRadius) =>
        Area * bodyRadius * (bodyRadius + 2 * SpanwiseCentre) + SpanwiseSquare;

    /// <summary>The integrals of an outline. A free outline counts by its outermost leading and trailing edges.</summary>
    public static FinPlanform Of(FinOutline outline) => outline switch
    {
        TrapezoidFin t => FromBands([new(0, t.Span, 0, t.Sweep, t.Root, t.Sweep + t.Tip)], t.Root, t.Sweep),
        EllipticalFin e => Ellipse(e),
        FreeFin f => Free(f),
        _ => throw new ArgumentException($"unknown outline {outline.GetType().Name}", nameof(outline)),
    };

    private static FinPlanform FromBands(List<FinBand> bands, double root, double tipLeadingEdge) =>
        FromStrips(
            bands.SelectMany(b => GaussRule.Three.Select(g => b.Strip(g.U, g.Weight))), bands[^1].OuterY, root, tipLeadingEdge) with
        { Bands = bands };

    private static FinPlanform Ellipse(EllipticalFin e)
    {
        FinStrip At(double angle, double weight)
        {
            var chord = e.Root * Math.Cos(angle);
            return new(e.Span * Math.Sin(angle), (e.Root - chord) / 2, chord, weight * e.Span * Math.Cos(angle));
        }
        var strips = GaussRule.Twenty.Select(g => At(g.U * Math.PI / 2, g.Weight * Math.PI / 2));
        const int count = 16;
        List<FinBand> bands = [];
        for (var i = 0; i < count; i++)
        {
            var (a, b) = (At(Math.PI / 2 * i / count, 0), At(Math.PI / 2 * (i + 1) / count, 0));
            bands.Add(new(a.Y, b.Y, a.LeadingEdge, b.LeadingEdge, a.LeadingEdge + a.Chord, b.LeadingEdge + b.Chord));
        }
        return FromStrips(strips, e.Span, e.Root, e.Root / 2) with { Bands = bands };
    }

    private static FinPlanform Free(FreeFin fin)
    {
        double[] levels = [.. fin.Corners.Select(c => c.Y).Append(0).Where(y => y >= 0).Distinct().Order()];
        List<FinBand> bands = [];
        for (var i = 1; i < levels.Length; i++)
        {
            // The order of the edges cannot change inside a band: two cuts give the straight edges exactly.
            var (y0, y1) = (levels[i - 1], levels[i]);
            var a = Cut(fin.Corners, y0 + (y1 - y0) / 4);
            var b = Cut(fin.Corners, y1 - (y1 - y0) / 4);
            if (a is null || b is null) continue;
            bands.Add(new(
                y0, y1,
                a.Value.Lead + (a.Value.Lead - b.Value.Lead) / 2, b.Value.Lead + (b.Value.Lead - a.Value.Lead) / 2,
                a.Value.Trail + (a.Value.Trail - b.Value.Trail) / 2, b.Value.Trail + (b.Value.Trail - a.Value.Trail) / 2));
        }
        if (bands.Count == 0) return new(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
        return FromBands(bands, bands[0].TrailRoot - bands[0].LeadRoot, bands[^1].LeadTip);
    }

    private static (double Lead, double Trail)? Cut(IReadOnlyList<FinCorner> corners, double y)
    {
        double lead = double.PositiveInfinity, trail = double.NegativeInfinity;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            if ((a.Y - y) * (b.Y - y) >= 0) continue;
            var x = a.X + (b.X - a.X) * (y - a.Y) / (b.Y - a.Y);
            (lead, trail) = (Math.Min(lead, x), Math.Max(trail, x));
        }
        return lead < trail ? (lead, trail) : null;
    }

    private static FinPlanform FromStrips(IEnumerable<FinStrip> strips, double span, double root, double tipLeadingEdge)
    {
        double area = 0, c2 = 0, lead = 0, y1 = 0, y2 = 0, mid = 0, midY = 0, leadY = 0;
        foreach (var (y, x, c, dy) in strips)
        {
            var da = c * dy;
            area += da;
            c2 += c * da;
            lead += x * da;
            leadY += x * y * da;
            mid += (x + c / 2) * da;
            midY += (x + c / 2) * y * da;
            y1 += y * da;
            y2 += y * y * da;
        }
        if (area <= 0) return new(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
        var spread = y2 - y1 * y1 / area;
        double Fit(double m, double my) => spread > 0 ? (my - m * y1 / area) / spread : 0;
        return new(area, span, root, c2 / area, lead / area, y1 / area, y2, Fit(mid, midY), Fit(lead, leadY), tipLeadingEdge);
    }
}

/// <summary>A strip of a fin: spanwise place, leading edge, chord and width, m.</summary>
internal readonly record struct FinStrip(double Y, double LeadingEdge, double Chord, double Width);

/// <summary>Part of a fin between two spanwise places, with straight edges, m.</summary>
internal readonly record struct FinBand(
    double InnerY, double OuterY, double LeadRoot, double LeadTip, double TrailRoot, double TrailTip)
{
    /// <summary>The strip at the fraction u of the band's span, of the relative width given.</summary>
    public FinStrip Strip(double u, double weight)
    {
        var lead = LeadRoot + u * (LeadTip - LeadRoot);
        return new(InnerY + u * (OuterY - InnerY), lead, TrailRoot + u * (TrailTip - TrailRoot) - lead, weight * (OuterY - InnerY));
    }
}
