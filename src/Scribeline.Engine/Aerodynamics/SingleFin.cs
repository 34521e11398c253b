namespace Scribeline.Engine.Aerodynamics;

/// <summary>Lift of a thin fin, on the planform area of the pair joined root to root.</summary>
/// <param name="Slope">C_Lα, 1/rad.</param>
/// <param name="Centre">Where it acts, m aft of the root leading edge.</param>
public readonly record struct FinLoad(double Slope, double Centre);

/// <summary>
/// Lift slope and centre of pressure of a thin fin against Mach number.
/// Subsonic: Diederich's form with the Prandtl–Glauert–Göthert factor (Barrowman 1966 eq. 50 and 57; Barrowman 1967).
/// Supersonic: linear theory, 4α/β on the planform and half of it in the Mach cone of the tip; with a subsonic leading edge
/// the load of the delta wing 2π cot Λ/E(k) (Ackeret, Busemann; from memory). Between: a cubic from the slender-wing value at
/// Mach 1 (R. T. Jones) to the first Mach number linear theory serves.
/// </summary>
public static class SingleFin
{
    private const double LastSubsonicCentre = 0.9;

    /// <summary>Load of the fin at a Mach number, 0 or more.</summary>
    public static FinLoad At(FinPlanform fin, double mach) => new(Slope(fin, mach), Centre(fin, mach));

    /// <summary>C_Lα below Mach 1, 1/rad: 2π AR/(2 + √(4 + (β AR/cos Γ)²)).</summary>
    public static double SubsonicSlope(FinPlanform fin, double mach)
    {
        var ar = fin.AspectRatio;
        var sweep = 1 + fin.MidChordSweep * fin.MidChordSweep;
        return 2 * Math.PI * ar / (2 + Math.Sqrt(4 + Math.Max(0, 1 - mach * mach) * ar * ar * sweep));
    }

    /// <summary>C_Lα and centre of pressure by supersonic linear theory; meant for β AR of 1 and more.</summary>
    public static FinLoad Supersonic(FinPlanform fin, double mach)
    {
        var beta = Math.Sqrt(Math.Max(1e-6, mach * mach - 1));
        var (tipArea, tipMoment) = TipCone(fin, beta);
        var sweep = fin.LeadingEdgeSweep;
        var moment = fin.Area * (fin.MeanLeadingEdge + fin.MeanChord / 2);
        var loaded = fin.Area - tipArea / 2;
        return new(RootLoad(sweep, beta) * loaded / fin.Area, (moment - tipMoment / 2) / loaded);
    }

    /// <summary>Load per unit area and angle away from the tip: 4/β, or 2π cot Λ/E(k), k² = 1 − (β cot Λ)², behind a subsonic leading edge.</summary>
    private static double RootLoad(double sweep, double beta) =>
        beta >= sweep ? 4 / beta : 2 * Math.PI / (sweep * CompleteElliptic(1 - beta * beta / (sweep * sweep)));

    /// <summary>Complete elliptic integral of the second kind of parameter k², by the arithmetic-geometric mean (Abramowitz and Stegun 17.6).</summary>
    internal static double CompleteElliptic(double k2)
    {
        double a = 1, b = Math.Sqrt(Math.Max(0, 1 - k2)), sum = k2 / 2, power = 0.5;
        if (b < 1e-12) return 1;
        for (var i = 0; i < 8; i++)
        {
            (a, b, var c) = ((a + b) / 2, Math.Sqrt(a * b), (a - b) / 2);
            power *= 2;
            sum += power * c * c;
        }
        return Math.PI / (2 * a) * (1 - sum);
    }

    private static double Slope(FinPlanform fin, double mach)
    {
        if (mach <= 1) return SubsonicSlope(fin, mach);
        var join = Join(fin);
        if (mach >= join) return Supersonic(fin, mach).Slope;
        var clipped = Bridge.Step(TipCone(fin, 1e-3, bothTips: false).Area / fin.Area, 0, 0.2);
        return clipped * Bridged(fin, mach, join) + (1 - clipped) * Pointed(fin, mach);
    }

    /// <summary>From the slender-wing value at Mach 1 to linear theory at the join.</summary>
    private static double Bridged(FinPlanform fin, double mach, double join)
    {
        var slender = Math.PI * fin.AspectRatio / 2;
        var top = Supersonic(fin, join).Slope;
        var rise = 3 * Math.Max(0, top - slender) / (join - 1);
        var start = Math.Min(rise, (slender - SubsonicSlope(fin, 1 - 1e-4)) / 1e-4);
        return Bridge.Hermite(mach, 1, slender, start, join, top, SlopeOf(fin, join, f => f.Slope));
    }

    /// <summary>A fin pointed at the tip: the delta wing's load all the way down to Mach 1, on a swept trailing edge drawn to the slender value.</summary>
    private static double Pointed(FinPlanform fin, double mach)
    {
        var beta = Math.Sqrt(mach * mach - 1);
        var sweep = fin.LeadingEdgeSweep;
        if (sweep * fin.AspectRatio < 1) return Bridged(fin, mach, Join(fin));
        var missing = Math.PI * fin.AspectRatio / 2 - 2 * Math.PI / sweep;
        return RootLoad(sweep, beta) + missing * (1 - Bridge.Step(beta, 0, sweep));
    }

    private static double Centre(FinPlanform fin, double mach)
    {
        if (mach <= LastSubsonicCentre) return fin.QuarterChord;
        var end = Math.Clamp(Join(fin), 1.1, 1.4);
        if (mach >= end) return Supersonic(fin, mach).Centre;
        return Bridge.Hermite(
            mach, LastSubsonicCentre, fin.QuarterChord, 0, end, Supersonic(fin, end).Centre, SlopeOf(fin, end, f => f.Centre));
    }

    /// <summary>First Mach number of linear theory: β AR = 1, or the leading edge turning supersonic if that comes later.</summary>
    private static double Join(FinPlanform fin) =>
        Math.Sqrt(1 + Math.Max(1 / (fin.AspectRatio * fin.AspectRatio), Math.Pow(Math.Max(0, fin.LeadingEdgeSweep), 2)));

    private static double SlopeOf(FinPlanform fin, double mach, Func<FinLoad, double> value) =>
        (value(Supersonic(fin, mach + 1e-4)) - value(Supersonic(fin, mach))) / 1e-4;

    /// <summary>
    /// Area inside the Mach cones of both tips on one fin of the joined pair, and its moment about the root leading edge; where the cones
    /// overlap both count. Exact for straight edges.
    /// </summary>
    private static (double Area, double Moment) TipCone(FinPlanform fin, double beta, bool bothTips = true)
    {
        double area = 0, moment = 0;
        foreach (var band in fin.Bands)
        {
            for (var side = bothTips ? -1 : 1; side <= 1; side += 2)
            {
                var (a, m) = Covered(fin, band, beta, side);
                area += a;
                moment += m;
            }
        }
        return (area, moment);
    }

    /// <summary>Part of a band behind the Mach line of the own tip (side 1) or the other one (side −1).</summary>
    private static (double Area, double Moment) Covered(FinPlanform fin, FinBand band, double beta, int side)
    {
        double area = 0, moment = 0;
        double Edge(double u) => fin.TipLeadingEdge + beta * (fin.Span - side * (band.InnerY + u * (band.OuterY - band.InnerY)));
        // Clamped between leading and trailing edge the Mach line is straight between its crossings.
        var overLead = Crossing(Edge(0) - band.LeadRoot, Edge(1) - band.LeadTip);
        var overTrail = Crossing(Edge(0) - band.TrailRoot, Edge(1) - band.TrailTip);
        ReadOnlySpan<double> cuts = [0, Math.Min(overLead, overTrail), Math.Max(overLead, overTrail), 1];
        for (var i = 0; i < 3; i++)
        {
            foreach (var (g, w) in GaussRule.Three)
            {
                var u = cuts[i] + g * (cuts[i + 1] - cuts[i]);
                var strip = band.Strip(u, w * (cuts[i + 1] - cuts[i]));
                var trail = strip.LeadingEdge + strip.Chord;
                var from = Math.Clamp(Edge(u), strip.LeadingEdge, Math.Max(trail, strip.LeadingEdge));
                area += (trail - from) * strip.Width;
                moment += (trail * trail - from * from) / 2 * strip.Width;
            }
        }
        return (area, moment);
    }

    private static double Crossing(double atRoot, double atTip) =>
        atRoot * atTip < 0 ? atRoot / (atRoot - atTip) : 0;
}
