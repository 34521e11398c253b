namespace Scribeline.Engine.Recovery;

/// <summary>
/// How much room folded cloth and cord take. Hand-packed densities after Knacke, Parachute Recovery Systems Design Manual, 1991, chapter 6
/// (from memory); the rest is common practice. SI.
/// </summary>
public static class Packing
{
    /// <summary>Least density of a careful hand pack, rolled tight, kg/m³ (from memory).</summary>
    public const double HandPackedLow = 290;

    /// <summary>Greatest density of a careful hand pack, rolled tight, kg/m³ (from memory).</summary>
    public const double HandPackedHigh = 370;

    /// <summary>Density beyond which a pack in a tube no longer slides out, kg/m³: common practice.</summary>
    public const double TooTight = 400;

    /// <summary>What a canopy of unknown packed size is taken to be packed to, kg/m³: within the hand-packed range.</summary>
    public const double Canopy = 320;

    /// <summary>The same for cords, bags and blankets, kg/m³: common practice.</summary>
    public const double Cord = 350;

    /// <summary>Length that voids add: common practice.</summary>
    public const double Voids = 1.10;

    /// <summary>Solid nylon fibre, kg/m³ (from memory).</summary>
    public const double NylonFibre = 1140;

    /// <summary>kg/m² of cloth of 1 oz/yd².</summary>
    public const double OuncePerSquareYard = 0.028349523125 / (0.9144 * 0.9144);

    /// <summary>Mass of a canopy, kg: cloth with seams, and lines.</summary>
    /// <param name="area">S0, m².</param>
    /// <param name="cloth">kg/m².</param>
    /// <param name="seams">Share that seams and tapes add, 0.20 to 0.30 (common practice).</param>
    /// <param name="lines">Number of lines.</param>
    /// <param name="length">Of each, over the canopy where they run on, m.</param>
    /// <param name="lineDensity">kg/m.</param>
    public static double CanopyMass(double area, double cloth, double seams, int lines, double length, double lineDensity) =>
        (area * cloth * (1 + seams)) + (lines * length * lineDensity);

    /// <summary>Volume, m³.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="density">As packed, kg/m³.</param>
    public static double Volume(double mass, double density) => mass / density;

    /// <summary>Length in a bore, m.</summary>
    /// <param name="volume">m³.</param>
    /// <param name="bore">m.</param>
    public static double Length(double volume, double bore) => volume / ClothArea.Disc(bore);
}
