using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Recovery;

/// <summary>A canopy as stowed. SI units.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Kind">Kind; null where only a measured drag area is given.</param>
/// <param name="DragArea">Drag coefficient times its own reference area, m².</param>
/// <param name="NominalDiameter">D0 = √(4 S0/π), m.</param>
/// <param name="Part">Name of the part it lies in.</param>
/// <param name="Basis">How the drag area is known.</param>
public sealed record Canopy(string Name, CanopyKind? Kind, double DragArea, double NominalDiameter, string Part, Basis Basis)
{
    /// <summary>n: fill distance in nominal diameters; null where neither typed nor tabled.</summary>
    public double? FillConstant { get; init; }

    /// <summary>
    /// Nominal diameter of a canopy sold by another diameter: across the mouth of a hemisphere (S0 = πd²/2), across the flats of a regular
    /// polygon (S0 = (N/4) d² tan(π/N)), by its cloth for a circle.
    /// </summary>
    /// <param name="nominalArea">S0, m², all cloth included.</param>
    public static double NominalOf(double nominalArea) => Math.Sqrt(4 * nominalArea / Math.PI);
}
