using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Section of a fin: a slab whose sharp edges are bevelled. Pressure on bevels by Busemann's third-order theory in the flow normal to
/// the leading edge; blunt edges after Barrowman 1967 (rounded, from memory), 0.85 of the stagnation pressure (square, common practice),
/// Hoerner's two-dimensional base (from memory) and Korst's base in supersonic flow.
/// </summary>
/// <param name="LeadBevel">Chordwise length of the sharpened leading edge, m; 0 where blunt.</param>
/// <param name="TrailBevel">The same of the trailing edge.</param>
/// <param name="Thickness">m.</param>
/// <param name="Chord">Mean chord, m.</param>
/// <param name="Sweep">tan Λ of the leading edge.</param>
internal readonly record struct FinSection(double LeadBevel, double TrailBevel, double Thickness, double Chord, double Sweep)
{
    private const double FirstWave = 0.85;

    /// <summary>Section of a fin of a set.</summary>
    public static FinSection Of(FinSet fins, FinPlanform planform)
    {
        var chord = planform.MeanChord;
        var sharpLead = fins.LeadingEdge == FinEdge.Sharp;
        var sharpTrail = fins.TrailingEdge == FinEdge.Sharp;
        var longest = sharpLead && sharpTrail ? chord / 2 : chord;
        // A sharp edge of unknown bevel is taken as four thicknesses long.
        var bevel = Math.Min(fins.Bevel > 0 ? Math.Max(fins.Bevel, fins.Thickness) : 4 * fins.Thickness, longest);
        return new(sharpLead ? bevel : 0, sharpTrail ? bevel : 0, fins.Thickness, chord, planform.LeadingEdgeSweep);
    }

    private double Cosine => 1 / Math.Sqrt(1 + Sweep * Sweep);

    private double Slope(double bevel) => bevel > 0 ? Thickness / (2 * bevel) / Cosine : 0;

    /// <summary>Lift of the section over that of a flat plate, and how far the centre of pressure moves aft, m.</summary>
    public (double Factor, double Shift) Thickening(double mach)
    {
        var normal = mach * Cosine;
        var steepest = Math.Max(Slope(LeadBevel), Slope(TrailBevel));
        if (normal <= 1 || steepest <= 0) return (1, 0);
        var beta = Math.Sqrt(normal * normal - 1);
        var detached = Busemann.Detachment(steepest);
        var weight = Bridge.Step(beta, detached, 2 * detached);
        if (weight == 0) return (1, 0);
        var (c1, c2, c3) = Busemann.Coefficients(normal);
        double Load(double slope) => 1 + weight * (2 * c2 / c1 * slope + 3 * c3 / c1 * slope * slope);
        var (lead, flat, trail) = (LeadBevel / Chord, 1 - (LeadBevel + TrailBevel) / Chord, TrailBevel / Chord);
        var (a, b, c) = (lead * Load(Slope(LeadBevel)), flat, trail * Load(-Slope(TrailBevel)));
        var factor = a + b + c;
        var centre = (a * lead / 2 + b * (lead + flat / 2) + c * (1 - trail / 2)) / factor;
        return (factor, (centre - 0.5) * Chord);
    }

    /// <summary>Pressure drag of the leading edge on the frontal area.</summary>
    public double LeadingEdgeDrag(FinEdge edge, double mach)
    {
        var (c2, normal) = (Cosine * Cosine, mach * Cosine);
        return edge switch
        {
            FinEdge.Sharp => c2 * BevelDrag(normal, Slope(LeadBevel), 1),
            FinEdge.Rounded => c2 * RoundedEdge(normal),
            _ => c2 * 0.85 * CompressibleFlow.StagnationPressure(normal),
        };
    }

    /// <summary>Pressure drag of a sharp trailing edge's bevel on the frontal area, 0 at a blunt one.</summary>
    public double TrailingBevelDrag(double mach) => TrailBevel > 0 ? Cosine * Cosine * BevelDrag(mach * Cosine, Slope(TrailBevel), -1) : 0;

    /// <summary>Rounded leading edge normal to the flow, on frontal area (Barrowman 1967, from memory).</summary>
    internal static double RoundedEdge(double mach)
    {
        var m2 = mach * mach;
        if (mach < 0.9) return Math.Pow(1 - m2, -0.417) - 1;
        return mach < 1 ? 1 - 1.785 * (mach - 0.9) : 1.214 - 0.502 / m2 + 0.1095 / (m2 * m2);
    }

    private static double BevelDrag(double normal, double slope, int sign)
    {
        if (normal <= FirstWave || slope <= 0) return 0;
        var attached = Math.Sqrt(1 + Math.Pow(1.5 * Busemann.Detachment(slope), 2));
        double Wave(double m) => Math.Clamp(sign * Busemann.Pressure(m, sign * slope), 0, sign > 0 ? CompressibleFlow.StagnationPressure(m) : 1 / (0.7 * m * m));
        if (normal >= attached) return Wave(normal);
        return Bridge.Hermite(normal, FirstWave, 0, 0, attached, Wave(attached), Bridge.Slope(Wave, attached + 1e-3, 1e-3));
    }
}
