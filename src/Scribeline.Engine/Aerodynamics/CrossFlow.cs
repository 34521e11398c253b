using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Cross-flow drag of long round bodies: L. H. Jorgensen, NASA TR R-474, 1977 (η and C_dn), after Allen and Perkins, NACA TR 1048, 1951.
/// Above a cross-flow Reynolds number of about 3·10⁵ and below cross-flow Mach 0.4 the drag falls to the supercritical values of
/// circular cylinders (Panton, Incompressible Flow; Roshko, J. Fluid Mech. 10, 1961, p. 345).
/// </summary>
public static class CrossFlow
{
    private static readonly Curve Drag = Load("cdn", (0, 1.2));
    private static readonly Curve Length = Load("eta");

    // Drag over its subcritical value against log10 Re: plateau, crisis, recovery.
    private static readonly Curve Crisis = new(
        [5.0, 5.30103, 5.69897, 6.0, 6.518514, 7.0],
        [1, 1, 0.28 / 1.2, 0.34 / 1.2, 0.67 / 1.2, 0.70 / 1.2]);

    /// <summary>C_dn of an infinite circular cylinder at a cross-flow Mach number, subcritical; constant beyond Mach 4.</summary>
    public static double CylinderDrag(double crossMach) => Drag.At(crossMach);

    /// <summary>η of a body of length over diameter, subsonic cross-flow; constant beyond 1.5 to 39.</summary>
    public static double LengthFactor(double fineness) => Length.At(fineness);

    /// <summary>η at a cross-flow Mach number: rises to 1 through the speed of sound (from memory).</summary>
    public static double LengthFactor(double fineness, double crossMach)
    {
        var eta = LengthFactor(fineness);
        return eta + (1 - eta) * Bridge.Step(crossMach, 0.8, 1.4);
    }

    /// <summary>Drag over the subcritical value at a cross-flow Reynolds number on the diameter, at low cross-flow Mach numbers.</summary>
    public static double ReynoldsFactor(double crossReynolds) => Crisis.At(Math.Log10(Math.Max(crossReynolds, 1)));

    /// <summary>How far the Reynolds number counts: 1 below cross-flow Mach 0.3, 0 above 0.5.</summary>
    public static double ReynoldsWeight(double crossMach) => 1 - Bridge.Step(crossMach, 0.3, 0.5);

    private static Curve Load(string quantity, (double X, double Y)? before = null)
    {
        var points = EmbeddedTable.Rows("Aerodynamics.crossflow", 4).Where(r => r[0] == quantity)
            .Select(r => (X: EmbeddedTable.Number(r[1]), Y: EmbeddedTable.Number(r[2]))).ToList();
        if (before is { } point) points.Insert(0, point);
        return new([.. points.Select(p => p.X)], [.. points.Select(p => p.Y)]);
    }
}
