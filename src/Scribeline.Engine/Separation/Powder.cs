namespace Scribeline.Engine.Separation;

/// <summary>
/// Black powder as the gas model knows it: one pseudo-gas of all products per kg of powder, and a surface that regresses at
/// a (p/1 atm)^n from spheres of one radius.
/// </summary>
/// <param name="GasConstant">J per kg of powder and K.</param>
/// <param name="FlameTemperature">K.</param>
/// <param name="HeatRatio">γ of the products, more than 1.</param>
/// <param name="BurnRate">a: at 1 atm, m/s.</param>
/// <param name="BurnExponent">n.</param>
/// <param name="GrainRadius">m.</param>
public sealed record Powder(
    double GasConstant, double FlameTemperature, double HeatRatio, double BurnRate, double BurnExponent, double GrainRadius)
{
    /// <summary>1 atm, Pa, to which burning rates are referred.</summary>
    public const double Atmosphere = 101_325;

    /// <summary>
    /// Fine powder (4F) with the customary R and T, γ 1.25 (assumption), burning as 17.2 mm/s (p/atm)^0.164 (Sasse, ARBRL-TR-02490,
    /// 1983, from memory).
    /// </summary>
    public static Powder Customary { get; } = new(StaticCharge.GasConstant, StaticCharge.Temperature, 1.25, 17.2e-3, 0.164, 0.15e-3);

    /// <summary>
    /// An outer bound: all of the 3.0 MJ/kg of Noble and Abel (Phil. Trans. 165, 1875) shared with the air, R 103.5, T 2473 K,
    /// c_v 1375 J/(kg K).
    /// </summary>
    public static Powder ClosedVessel { get; } = Customary with { GasConstant = 103.5, FlameTemperature = 2473, HeatRatio = 1 + (103.5 / 1375) };

    /// <summary>c_v of the products, J/(kg K).</summary>
    public double HeatCapacity => GasConstant / (HeatRatio - 1);

    /// <summary>R T, J/kg.</summary>
    public double Impetus => GasConstant * FlameTemperature;

    /// <summary>Burning by 12.1 mm/s (p/atm)^0.24 (Belyaev and Maznev through Shidlovskii, 2 to 30 atm, from memory).</summary>
    public Powder Slower() => this with { BurnRate = 12.1e-3, BurnExponent = 0.24 };

    /// <summary>Half the mean of the sieves a grade passes and is held on (ASTM E11 openings, from memory), m.</summary>
    /// <param name="grade">2F, 3F or 4F.</param>
    public static double RadiusOf(Design.PowderWord grade) => grade switch
    {
        Design.PowderWord.TwoF => 0.445e-3,
        Design.PowderWord.ThreeF => 0.29e-3,
        _ => 0.15e-3,
    };

    /// <summary>Regression of the surface, m/s.</summary>
    /// <param name="pressure">Pa.</param>
    public double RateAt(double pressure) => BurnRate * Math.Pow(pressure / Atmosphere, BurnExponent);

    /// <summary>With less heat and gas: the impetus scaled at the same γ.</summary>
    /// <param name="share">Of the impetus.</param>
    public Powder Scaled(double share) => this with { FlameTemperature = FlameTemperature * share };
}
