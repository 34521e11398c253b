namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Drag of the square trailing edge of a fin on its frontal area. Subsonic: Hoerner's two-dimensional base (from memory). Supersonic:
/// H. H. Korst, A Theory for Base Pressures in Transonic and Supersonic Flow, J. Appl. Mech. 23, 1956 (from memory), for a plane base behind
/// a thin turbulent layer, γ = 1.4: the flow expands around the edge to the base pressure, mixes along a straight free jet with an
/// error-function profile, and is turned back by a shock that the dividing streamline just climbs.
/// </summary>
public static class FinBaseDrag
{
    private static readonly double[] Machs = [1.2, 1.35, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 5, 6];
    private static readonly Lazy<Curve> Korst = new(() => new(Machs, [.. Machs.Select(m => -CompressibleFlow.PressureCoefficient(KorstRatio(m), m))]));

    /// <summary>Subsonic: 0.135/(2 C_F c/t)^⅓.</summary>
    public static double Subsonic(double friction, double chord, double thickness) =>
        thickness > 0 ? 0.135 / Math.Cbrt(2 * friction * chord / thickness) : 0;

    /// <summary>Supersonic, −C_p of a plane base; held at Mach 1.2 below it.</summary>
    public static double Supersonic(double mach) => Korst.Value.At(mach);

    /// <summary>p_base/p∞ by Korst's theory at a Mach number above 1.</summary>
    internal static double KorstRatio(double mach)
    {
        // The climb of the dividing streamline falls short at strong expansions and has room to spare at weak ones.
        double low = 0.02, high = 0.98;
        for (var i = 0; i < 50; i++)
        {
            var middle = (low + high) / 2;
            if (Spare(mach, middle) > 0) high = middle;
            else low = middle;
        }
        return (low + high) / 2;
    }

    /// <summary>Stagnation pressure of the dividing streamline over the pressure behind the recompression shock, less one.</summary>
    private static double Spare(double mach, double baseRatio)
    {
        var stagnation = 1 / CompressibleFlow.StaticRatio(mach);
        var jet = Math.Sqrt(5 * (Math.Pow(stagnation / baseRatio, 2 / 7.0) - 1));
        var turn = CompressibleFlow.PrandtlMeyer(jet) - CompressibleFlow.PrandtlMeyer(mach);
        if (CompressibleFlow.WeakShock(jet, turn) is not { } shock) return -1;
        var crocco = jet * jet / (5 + jet * jet);
        var dividing = DividingVelocity(crocco);
        return Math.Pow(1 - crocco * dividing * dividing, -3.5) / CompressibleFlow.ShockPressure(jet, shock) - 1;
    }

    /// <summary>
    /// Velocity over that of the jet on the dividing streamline of an isoenergetic turbulent free jet, φ = (1 + erf η)/2; what flows above
    /// the streamline is what the jet brought.
    /// </summary>
    internal static double DividingVelocity(double crocco)
    {
        // Momentum fixes the place of the profile, mass then the dividing streamline: ∫_{−∞}^{η_j} ρu dη = ∫ρu dη − ∫ρu² dη over all η,
        // with ρ/ρ_jet = (1 − C²)/(1 − C² φ²).
        const int count = 240;
        const double reach = 3;
        const double step = 2 * reach / count;
        Span<double> velocity = stackalloc double[count + 1];
        double difference = 0;
        for (var i = 0; i <= count; i++)
        {
            var phi = (1 + MathNet.Numerics.SpecialFunctions.Erf(-reach + i * step)) / 2;
            velocity[i] = phi;
            difference += Flux(phi) * (1 - phi) * step;
        }
        double mass = 0;
        for (var i = 0; i < count; i++)
        {
            var next = mass + (Flux(velocity[i]) + Flux(velocity[i + 1])) / 2 * step;
            if (next >= difference) return velocity[i] + (velocity[i + 1] - velocity[i]) * (difference - mass) / (next - mass);
            mass = next;
        }
        return 1;

        double Flux(double phi) => (1 - crocco) * phi / (1 - crocco * phi * phi);
    }
}
