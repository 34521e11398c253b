using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Coupler between two tubes.</summary>
[Word("coupler")]
public sealed record CouplerDesign : PartDesign
{
    [Key("Length over all.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("Outside diameter.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Outside { get; init; }

    [Key("Inside diameter; either this or the wall.", Sign = Sign.Above)]
    public Measure<Length>? Inside { get; init; }

    [Key("Wall thickness; either this or the inside diameter.", Sign = Sign.Above)]
    public Measure<Length>? Wall { get; init; }

    [Key("How far it reaches into the part behind; the rest, less the band, reaches into the part ahead.", Required = true, Sign = Sign.NotBelow)]
    public required Measure<Length> ReachAft { get; init; }

    [Key("Ring of tube bonded round it, seen from outside.")]
    public BandDesign? Band { get; init; }
}

/// <summary>Ring of tube bonded round a coupler.</summary>
public sealed record BandDesign : Placed
{
    [Key("Length along the tube.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("Outside diameter.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Outside { get; init; }

    [Key("From the coupler's aft end to the band's aft edge: how far the coupler reaches into the part behind. Needed for altimeter bays.", Sign = Sign.NotBelow)]
    public Measure<Length>? FromAftEnd { get; init; }

    [Key("Adhesive that holds it on the coupler.")]
    public string? Adhesive { get; init; }

    [Key("What it is made of, if not of what the coupler is.")]
    public string? Material { get; init; }
}
