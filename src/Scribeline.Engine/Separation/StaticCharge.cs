namespace Scribeline.Engine.Separation;

/// <summary>
/// The customary charge relation of a rigid bay, m = Δp V/(R T), R = 22.16 ft·lbf/(lbm·°R), T = 3307 °R (D. Mobley, "Ejection Charge
/// Calculations", club newsletter, June 1997; T from memory). No primary source of R and T is known. It leaves out that hot products
/// heat the bay's air, the heat lost to wall and cloth, and leakage.
/// </summary>
public static class StaticCharge
{
    /// <summary>R as used with pounds and degrees Rankine, ft·lbf/(lbm·°R).</summary>
    public const double GasConstantUs = 22.16;

    /// <summary>T as used with pounds and degrees Rankine, °R.</summary>
    public const double TemperatureUs = 3307;

    /// <summary>g/lbm, exact.</summary>
    private const double GramsPerPound = 453.59237;

    /// <summary>R, J/(kg K): 1 ft·lbf/(lbm·°R) is 0.3048 · 9.80665 · 1.8 J/(kg K).</summary>
    public const double GasConstant = GasConstantUs * 0.3048 * 9.80665 * 1.8;

    /// <summary>T, K.</summary>
    public const double Temperature = TemperatureUs / 1.8;

    /// <summary>R T, J per kg of powder, solids included.</summary>
    public const double Impetus = GasConstant * Temperature;

    /// <summary>Share of the relation to plan success with: an assumption that stands for heat lost and leakage.</summary>
    public const double SuccessShare = 0.7;

    /// <summary>Multiple of the relation to plan strength with: an assumption that stands for air heated by the products.</summary>
    public const double StrengthMultiple = 2;

    /// <summary>Powder for a gauge pressure, kg.</summary>
    /// <param name="gaugePressure">Δp, Pa.</param>
    /// <param name="volume">Free volume, m³.</param>
    public static double Mass(double gaugePressure, double volume) => gaugePressure * volume / Impetus;

    /// <summary>Gauge pressure of a charge, Pa.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="volume">m³.</param>
    public static double GaugePressure(double mass, double volume) => mass * Impetus / volume;

    /// <summary>The same relation worked in pounds and inches, grams: Δp V/(12 R T) pounds of powder.</summary>
    /// <param name="psi">Gauge pressure, lbf/in².</param>
    /// <param name="cubicInches">Volume, in³.</param>
    public static double GramsUs(double psi, double cubicInches) =>
        psi * cubicInches / (12 * GasConstantUs * TemperatureUs) * GramsPerPound;
}
