using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Drag of a blunt base, on base area, motor off. Sources: MIL-HDBK-762(MI), 1990, Fig. 5-140; Hoerner, Fluid-Dynamic Drag, 1965,
/// Fleeman, Tactical Missile Design, Gabeaud, J. Aero. Sci. 17, 1950, p. 525 (the last three from memory).
/// </summary>
public static class BaseDrag
{
    private static readonly Curve Measured = Load();

    /// <summary>The handbook's curve for a cylinder; constant below Mach 0.69, and falling as M^−1.4 beyond 4.3 as at its end.</summary>
    public static double Handbook(double mach) => mach <= 4.3 ? Measured.At(mach) : Measured.At(4.3) * Math.Pow(4.3 / mach, 1.4);

    /// <summary>Hoerner, subsonic: 0.029/√C_D,fb with the friction drag of the forebody on base area.</summary>
    public static double Hoerner(double forebodyFriction) => 0.029 / Math.Sqrt(Math.Max(forebodyFriction, 1e-3));

    /// <summary>Fleeman: 0.12 + 0.13 M² below Mach 1, 0.25/M above.</summary>
    public static double Fleeman(double mach) => mach < 1 ? 0.12 + 0.13 * mach * mach : 0.25 / mach;

    /// <summary>Gabeaud, good above Mach 2.5: −C_pb.</summary>
    public static double Gabeaud(double mach)
    {
        const double g = 1.4;
        var m2 = mach * mach;
        return 2 / (g * m2) * (1 - Math.Pow(2 / (g + 1), g) * Math.Pow(mach, -2 * g) * (2 * g * m2 - (g - 1)) / (g + 1));
    }

    /// <summary>
    /// What the build-up uses: below Mach 0.8 the mean of Hoerner and the handbook (they differ by up to 0.1: take ±0.05),
    /// above 1.1 the handbook.
    /// </summary>
    public static double Cylinder(double mach, double forebodyFriction)
    {
        var book = Handbook(mach);
        var mean = (book + Math.Min(Hoerner(forebodyFriction), 2 * book)) / 2;
        return mean + (book - mean) * Bridge.Step(mach, 0.8, 1.1);
    }

    /// <summary>Pressure on the base with a jet of the given exit area over that without (Fleeman, from memory): 1 − A_exit/A_base.</summary>
    public static double PowerOn(double exitArea, double baseArea) => baseArea > 0 ? Math.Clamp(1 - exitArea / baseArea, 0, 1) : 1;

    private static Curve Load()
    {
        var points = EmbeddedTable.Rows("Aerodynamics.base-drag", 5).Select(r => (X: EmbeddedTable.Number(r[0]), Y: EmbeddedTable.Number(r[1]))).ToList();
        return new([.. points.Select(p => p.X)], [.. points.Select(p => p.Y)]);
    }
}
