namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// The rocket as an oscillator in pitch at one speed: Mandell, Caporaso and Bengen, Topics in Advanced Model Rocketry, 1973 (from memory);
/// jet damping: Rosser, Newton and Gross, 1947; plunging: R. L. McCoy, Modern Exterior Ballistics, 1999.
/// </summary>
/// <param name="Stiffness">C₁, N·m/rad: restoring moment per angle.</param>
/// <param name="Damping">C₂, N·m·s/rad.</param>
/// <param name="Inertia">I_y, kg·m².</param>
public readonly record struct PitchStability(double Stiffness, double Damping, double Inertia)
{
    /// <summary>ω_n, rad/s; NaN where unstable.</summary>
    public double NaturalFrequency => Math.Sqrt(Stiffness / Inertia);

    /// <summary>ζ = C₂/(2 √(C₁ I_y)).</summary>
    public double DampingRatio => Damping / (2 * Math.Sqrt(Stiffness * Inertia));

    /// <summary>The oscillator of a rocket.</summary>
    /// <param name="density">Of the air, kg/m³.</param>
    /// <param name="speed">m/s.</param>
    /// <param name="area">Reference area, m².</param>
    /// <param name="sum0">Σ C_Nα, 1/rad.</param>
    /// <param name="sum1">Σ C_Nα X, m/rad.</param>
    /// <param name="sum2">Σ C_Nα X², m²/rad.</param>
    /// <param name="centreOfMass">Station, m.</param>
    /// <param name="inertia">I_y, kg·m².</param>
    /// <param name="jetDamping">ṁ r_e² + İ, N·m·s.</param>
    /// <param name="mass">kg, to let the path give way (plunging); infinite to hold it.</param>
    public static PitchStability Of(
        double density,
        double speed,
        double area,
        double sum0,
        double sum1,
        double sum2,
        double centreOfMass,
        double inertia,
        double jetDamping = 0,
        double mass = double.PositiveInfinity)
    {
        var half = 0.5 * density * speed * area;
        var (x, arm) = (centreOfMass, sum1 - sum0 * centreOfMass);
        return new(half * speed * arm, half * (sum2 - 2 * x * sum1 + x * x * sum0) + jetDamping + half * sum0 / mass * inertia, inertia);
    }

    /// <summary>Pitch wavelength, m of path: 2π √(2 I_y/(ρ A C_Nα (X − x_cg))).</summary>
    public static double Wavelength(double density, double area, double sum0, double sum1, double centreOfMass, double inertia) =>
        2 * Math.PI * Math.Sqrt(2 * inertia / (density * area * (sum1 - sum0 * centreOfMass)));

    /// <summary>C_mq per q d/2V about a station: −2 (S₂ − 2 x S₁ + x² S₀)/d².</summary>
    public static double DampingMoment(double sum0, double sum1, double sum2, double centreOfMass, double diameter) =>
        -2 * (sum2 - 2 * centreOfMass * sum1 + centreOfMass * centreOfMass * sum0) / (diameter * diameter);

    /// <summary>Roll rate of resonance with pitch, rad/s: ω_n/√(1 − I_x/I_y) (Nicolaides, BRL R-858, from memory).</summary>
    public static double ResonantRollRate(double naturalFrequency, double rollInertia, double pitchInertia) =>
        naturalFrequency / Math.Sqrt(1 - rollInertia / pitchInertia);

    /// <summary>Trim amplification of an asymmetry at p/p_cr = λ: 1/√((1 − λ²)² + (2ζλ)²).</summary>
    public static double TrimAmplification(double rateRatio, double dampingRatio)
    {
        var gap = 1 - rateRatio * rateRatio;
        return 1 / Math.Sqrt(gap * gap + 4 * dampingRatio * dampingRatio * rateRatio * rateRatio);
    }

    /// <summary>Steady roll rate of canted fins, rad/s: 2V/d · C_l/(−C_lp).</summary>
    public static double SteadyRollRate(double forcing, double damping, double speed, double diameter) => -forcing / damping * 2 * speed / diameter;
}
