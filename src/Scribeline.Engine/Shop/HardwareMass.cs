using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Shop;

/// <summary>Mass of hardware from its shape, good to 5 to 10 %: weigh before flight. Textbook solids; the pitch diameter stands for the threaded part.</summary>
public static class HardwareMass
{
    /// <summary>Density of steel, kg/m³.</summary>
    public const double Steel = 7850;

    // A chamfered hexagon has less than its prism: common practice.
    private const double Chamfers = 0.96;

    /// <summary>Hexagon nut, kg: 0.96 (0.8660 F² - 0.7854 d₂²) h ρ.</summary>
    /// <param name="flats">F, across flats, m.</param>
    /// <param name="height">h, m.</param>
    /// <param name="thread">Its thread.</param>
    /// <param name="density">kg/m³.</param>
    public static double Nut(double flats, double height, ScrewThread thread, double density = Steel) =>
        Chamfers * ((Math.Sqrt(3) / 2 * flats * flats) - Disc(thread.PitchDiameter)) * height * density;

    /// <summary>Washer, kg.</summary>
    /// <param name="outside">m.</param>
    /// <param name="inside">m.</param>
    /// <param name="thickness">m.</param>
    /// <param name="density">kg/m³.</param>
    public static double Washer(double outside, double inside, double thickness, double density = Steel) => (Disc(outside) - Disc(inside)) * thickness * density;

    /// <summary>Threaded rod, kg/m.</summary>
    /// <param name="thread">Its thread.</param>
    /// <param name="density">kg/m³.</param>
    public static double RodPerLength(ScrewThread thread, double density = Steel) => Disc(thread.PitchDiameter) * density;

    /// <summary>U-bolt with a round bend, at its full diameter, kg: 0.7854 d² ρ (π (W + d)/2 + 2 (h - W/2)).</summary>
    /// <param name="diameter">d, m.</param>
    /// <param name="width">W, inside, m.</param>
    /// <param name="height">h, inside, m.</param>
    /// <param name="density">kg/m³.</param>
    public static double UBolt(double diameter, double width, double height, double density = Steel) =>
        Disc(diameter) * density * ((Math.PI * (width + diameter) / 2) + (2 * (height - (width / 2))));

    private static double Disc(double diameter) => Math.PI / 4 * diameter * diameter;
}
