namespace Scribeline.Engine.Aerodynamics;

/// <summary>Drag of the square trailing edge of a fin on its frontal area.</summary>
public static class FinBaseDrag
{
    /// <summary>Hoerner's two-dimensional base, subsonic (from memory): 0.135/(2 C_F c/t)^⅓.</summary>
    public static double Subsonic(double friction, double chord, double thickness) =>
        thickness > 0 ? 0.135 / Math.Cbrt(2 * friction * chord / thickness) : 0;

    /// <summary>Supersonic: as the base of a body at the same Mach number (modelling choice).</summary>
    public static double Supersonic(double mach) => BaseDrag.Handbook(mach);
}
