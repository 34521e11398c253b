using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Body tube.</summary>
[Word("tube")]
public sealed record TubeDesign : PartDesign
{
    [Key("Length of the tube.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("Outside diameter.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Outside { get; init; }

    [Key("Inside diameter; either this or the wall.", Sign = Sign.Above)]
    public Measure<Length>? Inside { get; init; }

    [Key("Wall thickness; either this or the inside diameter.", Sign = Sign.Above)]
    public Measure<Length>? Wall { get; init; }

    [Key("Strength of a seam along it, as a share of the wall's; leave out for a tube without one.", Sign = Sign.Above)]
    public Measure<Ratio>? Seam { get; init; }

    [Key("Fins.")]
    public ValueList<FinsDesign> Fins { get; init; } = ValueList<FinsDesign>.Empty;

    [Key("Motor mount.")]
    public MotorMountDesign? MotorMount { get; init; }
}
