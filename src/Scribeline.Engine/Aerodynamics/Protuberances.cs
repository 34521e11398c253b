using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Drag of small things standing in the boundary layer. Stubs as finite cylinders (White, Fluid Mechanics, table 7.3, from memory),
/// with the mean dynamic pressure of a 1/7-power layer of thickness 0.37 x/Re_x^0.2.
/// </summary>
public static class Protuberances
{
    private static readonly Curve Stub = new(
        [Math.Log(1), Math.Log(2), Math.Log(3), Math.Log(5), Math.Log(10), Math.Log(40), Math.Log(1000)],
        [0.64, 0.68, 0.72, 0.74, 0.82, 0.98, 1.2]);

    /// <summary>C_D of a stub of height over width on its frontal area, standing on a wall.</summary>
    public static double StubDrag(double heightOverWidth) => Stub.At(Math.Log(Math.Max(2 * heightOverWidth, 1)));

    /// <summary>Thickness of the turbulent boundary layer at a station, m.</summary>
    public static double LayerThickness(double station, double reynoldsPerMetre) =>
        0.37 * station / Math.Pow(Math.Max(reynoldsPerMetre * station, 1e4), 0.2);

    /// <summary>Mean dynamic pressure over the height h of a stub in a layer of thickness δ, over that outside: (7/9)(h/δ)^(2/7).</summary>
    public static double LayerPressure(double height, double thickness) =>
        height >= thickness ? 1 - 2.0 / 9 * thickness / height : 7.0 / 9 * Math.Pow(height / thickness, 2.0 / 7);

    /// <summary>Drag area, m², of a protuberance, subsonic; 0.2 on the frontal area where it is faired.</summary>
    public static double Drag(Protuberance p, double reynoldsPerMetre)
    {
        if (p.Height <= 0 || p.Width <= 0) return 0;
        var layer = LayerThickness(Math.Max(p.Station, 1e-6), reynoldsPerMetre);
        var coefficient = p.Faired ? 0.2 : StubDrag(p.Height / p.Width);
        return p.Count * coefficient * p.Height * p.Width * LayerPressure(p.Height, layer);
    }

    /// <summary>Rise of the drag with Mach number, as that of a cylinder across the flow (modelling choice).</summary>
    public static double MachFactor(double mach) => 1 + (CrossFlow.CylinderDrag(mach) / 1.2 - 1) * Bridge.Step(mach, 0.6, 0.95);
}
