using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>A material of the builder's own.</summary>
public sealed record MaterialDesign : Placed
{
    [Key("Name that parts use.", Required = true, Names = true)]
    public required string Name { get; init; }

    [Key("Density.", Required = true, Sign = Sign.Above)]
    public required Measure<Density> Density { get; init; }

    [Key("Young's modulus along the part.", Sign = Sign.Above)]
    public Measure<Pressure>? Modulus { get; init; }

    [Key("Shear modulus in the plane of the sheet.", Sign = Sign.Above)]
    public Measure<Pressure>? ShearModulus { get; init; }

    [Key("Tensile strength; bending strength for wood.", Sign = Sign.Above)]
    public Measure<Pressure>? Strength { get; init; }

    [Key("Where the figures come from.", Required = true)]
    public required string Source { get; init; }
}
