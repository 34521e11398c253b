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

    /// <summary>Suspension lines; null where none are typed.</summary>
    public CanopyLines? Lines { get; init; }

    /// <summary>Breaking load of canopy and seams as a whole, N; null where not stated.</summary>
    public double? Strength { get; init; }

    /// <summary>With lines, kg; null where not weighed.</summary>
    public double? Mass { get; init; }

    /// <summary>Where it is typed.</summary>
    public string At { get; init; } = "";

    /// <summary>S0, m².</summary>
    public double NominalArea => ClothArea.Disc(NominalDiameter);

    /// <summary>Drag coefficient on all of its cloth: comparable between canopies, whatever area theirs was told by.</summary>
    public double NominalCoefficient => DragArea / NominalArea;

    /// <summary>Diameter of the inflated mouth, m: that of a flat circular canopy where the kind is not known.</summary>
    public double ProjectedDiameter => (Kind?.Projected ?? FlatCircular.Projected) * NominalDiameter;

    /// <summary>What the handbook says where the kind is not known.</summary>
    public static CanopyKind FlatCircular => CanopyKind.All[0];
}

/// <summary>Suspension lines of a canopy. SI.</summary>
/// <param name="Count">1 or more.</param>
/// <param name="Length">Of each, m; null where not typed.</param>
/// <param name="Strength">Breaking load of each, N; null where unknown.</param>
/// <param name="Stretch">At break, as a share of the length; null where unknown.</param>
/// <param name="Source">Of the strength.</param>
public sealed record CanopyLines(int Count, double? Length, double? Strength, double? Stretch, string Source);
