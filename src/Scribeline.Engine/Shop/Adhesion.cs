namespace Scribeline.Engine.Shop;

/// <summary>Amount, working time and stress of adhesives.</summary>
public static class Adhesion
{
    /// <summary>Activation energy of the amine-epoxide step, J/mol: 55 to 60 kJ/mol, Thermochimica Acta 447 (2006) 167.</summary>
    public const double Activation = 55e3;

    /// <summary>Heat of curing epoxy, J/kg (400 to 500 J/g, from memory), and its heat capacity, J/(kg K).</summary>
    public const double Heat = 460e3, HeatCapacity = 1900;

    /// <summary>Thermal diffusivity of epoxy, m²/s: from memory.</summary>
    public const double Diffusivity = 1e-7;

    /// <summary>Thickest line that keeps its strength, m: best 0.1 to 0.5 mm, Gleich, van Tooren and Beukers, J. Adhes. Sci. Technol. 15 (2001) 1091.</summary>
    public const double ThickestLine = 0.5e-3;

    /// <summary>Load of degreased over abraded glass epoxy: abrading with P240 gave 34 % more, Nazari, Khoramishad and Hakimi (2024).</summary>
    public const double Degreased = 1 / 1.34;

    // R, J/(mol K); Stefan and Boltzmann's constant, W/(m² K⁴): CODATA 2018, exact.
    private const double Gas = 8.31446261815324, Radiation = 5.670374419e-8, Emissivity = 0.9;

    /// <summary>A time at one temperature over the same at another: exp((E/R)(1/T₂ - 1/T₁)), Arrhenius; 10 to 45 °C in thin films.</summary>
    /// <param name="from">T₁, K.</param>
    /// <param name="to">T₂, K.</param>
    /// <param name="activation">E, J/mol.</param>
    public static double TimeFactor(double from, double to, double activation = Activation) => Math.Exp(activation / Gas * ((1 / to) - (1 / from)));

    /// <summary>Activation energy from two times, J/mol.</summary>
    /// <param name="firstTime">At <paramref name="first"/>, s.</param>
    /// <param name="first">K.</param>
    /// <param name="secondTime">At <paramref name="second"/>, s.</param>
    /// <param name="second">K.</param>
    public static double ActivationOf(double firstTime, double first, double secondTime, double second) => Gas * Math.Log(firstTime / secondTime) / ((1 / first) - (1 / second));

    /// <summary>Rise of a cup that keeps its heat, K: Q/c.</summary>
    /// <param name="heat">Q, J/kg.</param>
    /// <param name="capacity">c, J/(kg K).</param>
    public static double Rise(double heat = Heat, double capacity = HeatCapacity) => heat / capacity;

    /// <summary>Time in which heat leaves, s: a²/α.</summary>
    /// <param name="halfThickness">a, m.</param>
    public static double Cooling(double halfThickness) => halfThickness * halfThickness / Diffusivity;

    /// <summary>Adhesive between two round faces, m³.</summary>
    /// <param name="outside">m.</param>
    /// <param name="inside">m.</param>
    /// <param name="length">m.</param>
    public static double Annulus(double outside, double inside, double length) => Math.PI / 4 * ((outside * outside) - (inside * inside)) * length;

    /// <summary>Section of a concave fillet between faces that meet at an angle, m²: r² (cot(β/2) - (π - β)/2).</summary>
    /// <param name="radius">r, m.</param>
    /// <param name="angle">β, rad.</param>
    public static double Fillet(double radius, double angle = Math.PI / 2) => radius * radius * ((1 / Math.Tan(angle / 2)) - ((Math.PI - angle) / 2));

    /// <summary>A fillet round a bore or a tube, m³, by Pappus: 2π (R ∓ 0.2234 r) A.</summary>
    /// <param name="radius">r, m.</param>
    /// <param name="round">R, of the bore or tube, m.</param>
    /// <param name="inBore">Whether it lies inside a bore.</param>
    public static double RingFillet(double radius, double round, bool inBore)
    {
        // Centroid of the square less the quarter circle, from either face: (10 - 3π)/(12 - 3π) r.
        var centroid = (10 - (3 * Math.PI)) / (12 - (3 * Math.PI)) * radius;
        return 2 * Math.PI * (inBore ? round - centroid : round + centroid) * Fillet(radius);
    }

    /// <summary>Peak over mean shear of a lap of equal adherends: (λL/2) coth(λL/2), λ² = 2 G/(E t s), Volkersen (1938).</summary>
    /// <param name="length">L, m.</param>
    /// <param name="modulus">E of the adherends, Pa.</param>
    /// <param name="thickness">t of each, m.</param>
    /// <param name="line">s of the adhesive, m.</param>
    /// <param name="shear">G of the adhesive, Pa.</param>
    public static double PeakOverMean(double length, double modulus, double thickness, double line, double shear = 1e9)
    {
        var x = Math.Sqrt(2 * shear / (modulus * thickness * line)) * length / 2;
        return x / Math.Tanh(x);
    }

    /// <summary>Skin in the sun, K: α G = h (T - Tₐ) + ε σ (T⁴ - Tₐ⁴), by Newton's iteration.</summary>
    /// <param name="absorbed">α, share of the sunlight.</param>
    /// <param name="air">Tₐ, K.</param>
    /// <param name="film">h, W/(m² K): 5 in still air, 10 in light air.</param>
    /// <param name="sun">G, W/m².</param>
    public static double Skin(double absorbed, double air, double film = 5, double sun = 1000)
    {
        var t = air;
        for (var i = 0; i < 50; i++)
            t -= ((film * (t - air)) + (Emissivity * Radiation * (Math.Pow(t, 4) - Math.Pow(air, 4))) - (absorbed * sun)) / (film + (4 * Emissivity * Radiation * t * t * t));
        return t;
    }

    /// <summary>Mass ratio of a mix measured by volume: volume ratio times the ratio of densities.</summary>
    /// <param name="volumes">Resin to hardener.</param>
    /// <param name="resin">kg/m³.</param>
    /// <param name="hardener">kg/m³.</param>
    public static double MassRatio(double volumes, double resin, double hardener) => volumes * resin / hardener;

    /// <summary>Relative standard uncertainty of a mixing ratio weighed on a scale: root of the squares of its two parts.</summary>
    /// <param name="resin">kg.</param>
    /// <param name="hardener">kg.</param>
    /// <param name="scale">Standard uncertainty of one weighing, kg.</param>
    public static double RatioUncertainty(double resin, double hardener, double scale) => Math.Sqrt((scale / resin * scale / resin) + (scale / hardener * scale / hardener));
}
