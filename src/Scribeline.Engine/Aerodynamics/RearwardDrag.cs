namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Drag flying base first: a flat-faced cylinder (White, Fluid Mechanics, table 7.3, from memory), risen with the stagnation pressure,
/// and 0.85 of the stagnation pressure on the fins' trailing edges. Good enough for tumbling, no more.
/// </summary>
public static class RearwardDrag
{
    private static readonly Curve Face = new(
        [Math.Log(0.5), 0, Math.Log(2), Math.Log(4), Math.Log(8)], [1.15, 0.90, 0.85, 0.87, 0.99]);

    /// <summary>C_D of a flat-faced cylinder in axial flow by its length over diameter, Re above 10⁴; held beyond 0.5 to 8.</summary>
    public static double FlatFaced(double fineness) => Face.At(Math.Log(fineness));

    internal static double At(RocketGeometry rocket, double mach) =>
        CompressibleFlow.StagnationPressure(mach)
        * (FlatFaced(rocket.Length / rocket.Diameter)
            + rocket.Fins.Sum(f => 0.85 * f.Set.Count * f.Set.Thickness * f.Planform.Span / rocket.Area));
}

/// <summary>Fins square across the flow.</summary>
internal static class FinPlate
{
    /// <summary>C_N of a set at 90°: N/2 plates of drag coefficient 1.15 (Hoerner, square or disc 1.1 to 1.2, from memory).</summary>
    public static double Normal(FinGeometry fins, double area) => fins.Set.Count / 2.0 * fins.Planform.Area / area * 1.15;
}
