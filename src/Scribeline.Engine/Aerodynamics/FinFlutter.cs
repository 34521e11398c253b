namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Fin flutter and divergence: screening values for solid fins with rigid roots.
/// Flutter: D. J. Martin, NACA TN 4197, 1958 (from memory, constant recomputed), thin unswept cantilever of low bending to torsion frequency
/// ratio. A copy in circulation divides once more by two and overstates the speed by √2: not used here.
/// </summary>
public static class FinFlutter
{
    /// <summary>
    /// Flutter speed, m/s: a √{G (AR + 2)(t/c)³/[(24 ε γ/π)/2 · p AR³ (λ + 1)]}, with AR = s²/A of one panel and ε = 0.25. Keep below 0.8 of it
    /// (common practice).
    /// </summary>
    /// <param name="shearModulus">Of the fin, Pa.</param>
    /// <param name="thickness">m.</param>
    /// <param name="fin">Planform; its root and tip chords give c and λ.</param>
    /// <param name="tipChord">m, 0 or more.</param>
    /// <param name="pressure">Static, Pa.</param>
    /// <param name="soundSpeed">m/s.</param>
    public static double Speed(double shearModulus, double thickness, FinPlanform fin, double tipChord, double pressure, double soundSpeed)
    {
        var ar = fin.Span * fin.Span / fin.Area;
        var ratio = thickness / fin.RootChord;
        const double constant = 24 * 0.25 * CompressibleFlow.Gamma / Math.PI / 2;
        return soundSpeed * Math.Sqrt(shearModulus * (ar + 2) * ratio * ratio * ratio
            / (constant * pressure * ar * ar * ar * (tipChord / fin.RootChord + 1)));
    }

    /// <summary>
    /// Dynamic pressure of divergence, Pa: π² GJ/(4 s² e c² C_Lα) of a uniform strip (Bisplinghoff, Ashley and Halfman, Aeroelasticity).
    /// Not for forward-swept fins, which diverge far earlier.
    /// </summary>
    /// <param name="torsionalStiffness">GJ, N·m².</param>
    /// <param name="span">m.</param>
    /// <param name="chord">m.</param>
    /// <param name="liftSlope">C_Lα, 1/rad.</param>
    /// <param name="eccentricity">Aerodynamic centre ahead of the elastic axis, over the chord: about 0.25 subsonic.</param>
    public static double DivergencePressure(double torsionalStiffness, double span, double chord, double liftSlope, double eccentricity = 0.25) =>
        Math.PI * Math.PI * torsionalStiffness / (4 * span * span * eccentricity * chord * chord * liftSlope);

    /// <summary>GJ of a flat slab c t³/3, N·m².</summary>
    public static double SlabStiffness(double shearModulus, double chord, double thickness) =>
        shearModulus * chord * thickness * thickness * thickness / 3;
}
