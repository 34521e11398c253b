using static System.Math;

namespace Scribeline.Engine.Range;

/// <summary>Bounds of rules that follow from the flight or the site, m.</summary>
public static class RuleBounds
{
    /// <summary>1500 ft, the least distance from people and property not taking part and the least side of a site, m.</summary>
    public const double FifteenHundredFeet = 457.2;

    /// <summary>2000 ft, m.</summary>
    public const double TwoThousandFeet = 609.6;

    /// <summary>From the pad to people and property not taking part: a quarter of the greatest height, at least 1500 ft. 14 CFR 101.25(g).</summary>
    /// <param name="height">Greatest height expected above the pad, m.</param>
    public static double Outsiders(double height) => Max(height / 4, FifteenHundredFeet);

    /// <summary>Least side of a site for high power: half of the height allowed there, at least 1500 ft. NAR High Power Rocket Safety Code (2012), item 10.</summary>
    /// <param name="allowed">Height allowed at the site, m.</param>
    public static double Side(double allowed) => Max(allowed / 2, FifteenHundredFeet);

    /// <summary>
    /// People from three rockets or more at once: the least of twice the complex distance, 2000 ft and one and a half times the greatest height
    /// (NFPA 1127-2018, Table 4.16.3 as amended by TIA 18-1); never less than the ordinary distance, which is a careful reading.
    /// </summary>
    /// <param name="complex">Distance of the table for a complex rocket, m.</param>
    /// <param name="ordinary">Distance of the table for this rocket, m.</param>
    /// <param name="height">Greatest height expected, m.</param>
    public static double Several(double complex, double ordinary, double height) => Max(ordinary, Min(Min(2 * complex, TwoThousandFeet), 1.5 * height));

    /// <summary>Diameter to clear for a motor that throws titanium sparks, m. NAR High Power Rocket Safety Code (2012), item 7, from memory.</summary>
    /// <param name="cleared">Diameter of the table, m.</param>
    public static double SparksCleared(double cleared) => 1.5 * cleared;

    /// <summary>
    /// Least side of a site by the height expected: 500 m to 3000 ft, 1 km to 6000 ft, 2 km to 10 000 ft, 3 km to 12 000 ft; never less than half of
    /// the height. Null above, where each case is decided. CAR/ACF High Power Rocket Safety Code.
    /// </summary>
    /// <param name="height">m.</param>
    public static double? SideByHeight(double height) => (height / 0.3048) switch
    {
        <= 3000 => Max(500, height / 2),
        <= 6000 => Max(1000, height / 2),
        <= 10_000 => Max(2000, height / 2),
        <= 12_000 => Max(3000, height / 2),
        _ => null,
    };

    /// <summary>Height above the pad of a ceiling given above sea level, m.</summary>
    /// <param name="aboveSea">m.</param>
    /// <param name="pad">Height of the pad above sea level, m.</param>
    public static double AbovePad(double aboveSea, double pad) => aboveSea - pad;

    /// <summary>A value on its bound, where the two differ by no more than turning units into one another does; otherwise the value.</summary>
    public static double Snap(double value, double bound) => Abs(value - bound) <= 1e-9 * Abs(bound) ? bound : value;
}
