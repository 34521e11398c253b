namespace Scribeline.Engine.Range;

/// <summary>Classes by which rules tell rockets apart.</summary>
public static class RuleClass
{
    /// <summary>Greatest total impulse of high power and of Class 2, N·s. 14 CFR 101.22(b); NAR High Power Rocket Safety Code (2012), item 8.</summary>
    public const double MostImpulse = 40_960;

    /// <summary>
    /// Whether it is high power rather than a model rocket: one motor above 160 N·s or 80 N of average thrust (from memory), more than 320 N·s or
    /// 125 g of propellant in all, or more than 1500 g at lift-off. NFPA 1122-2018, 4.2 to 4.5; NFPA 1127.
    /// </summary>
    /// <param name="motors">Of each motor installed: total impulse N·s, average thrust N, propellant kg.</param>
    /// <param name="mass">At lift-off, kg.</param>
    public static bool IsHighPower(IReadOnlyCollection<(double Impulse, double Thrust, double Propellant)> motors, double mass) =>
        motors.Any(m => m.Impulse > 160 || m.Thrust > 80) || motors.Sum(m => m.Impulse) > 320 || motors.Sum(m => m.Propellant) > 0.125 || mass > 1.5;

    /// <summary>
    /// Level of certification for a high-power rocket of this total impulse, all motors together: 1 to 640 N·s, 2 to 5120, 3 to 40 960; null above.
    /// Certification pages of the two associations of the United States.
    /// </summary>
    /// <param name="impulse">N·s to 0.01.</param>
    public static int? Level(double impulse) => Math.Round(impulse, 2, MidpointRounding.AwayFromZero) switch
    {
        <= 640 => 1,
        <= 5120 => 2,
        <= MostImpulse => 3,
        _ => null,
    };

    /// <summary>Whether it is light enough for Class 1; what it is made of only a person can say. 14 CFR 101.22(a).</summary>
    /// <param name="propellant">kg.</param>
    /// <param name="mass">At lift-off, kg.</param>
    public static bool MayBeClass1(double propellant, double mass) => propellant <= 0.125 && mass <= 1.5;

    /// <summary>Whether a site of 1000 ft is enough for it. NAR High Power Rocket Safety Code (2012), item 10, from memory.</summary>
    /// <param name="impulse">N·s.</param>
    /// <param name="mass">At lift-off, kg.</param>
    /// <param name="height">Expected, m.</param>
    public static bool IsLight(double impulse, double mass, double height) => impulse < 160 && mass < 1.5 && height < RuleBounds.TwoThousandFeet;
}
