using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Altimeter bay: a coupler with plates at its ends, rods between them and a band.</summary>
[Word("altimeter bay")]
public sealed record AltimeterBayDesign : PartDesign
{
    [Key("The coupler it is built in.", Required = true)]
    public required BayCouplerDesign Coupler { get; init; }

    [Key("Ring of tube bonded round it.", Required = true)]
    public required BandDesign Band { get; init; }

    [Key("Rods that hold the plates together.")]
    public RodsDesign? Rods { get; init; }

    [Key("Static ports.")]
    public PortsDesign? Ports { get; init; }

    [Key("Switch that is reached through a hole.")]
    public ValueList<SwitchDesign> Switch { get; init; } = ValueList<SwitchDesign>.Empty;

    [Key("Volume of what fills the bay (sled, electronics, batteries), taken off its air.", Sign = Sign.NotBelow)]
    public Measure<Volume>? Filled { get; init; }
}

/// <summary>Coupler of an altimeter bay.</summary>
public sealed record BayCouplerDesign : Placed
{
    [Key("Length over all.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("Outside diameter.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Outside { get; init; }

    [Key("Inside diameter; either this or the wall.", Sign = Sign.Above)]
    public Measure<Length>? Inside { get; init; }

    [Key("Wall thickness; either this or the inside diameter.", Sign = Sign.Above)]
    public Measure<Length>? Wall { get; init; }
}

/// <summary>Threaded rods between the plates of a bay.</summary>
public sealed record RodsDesign : Placed
{
    [Key("Their thread.", Required = true)]
    public required ThreadName Thread { get; init; }

    [Key("How many.", Required = true, Sign = Sign.Above)]
    public required int Count { get; init; }

    [Key("Centre to centre across the bay.", Sign = Sign.Above)]
    public Measure<Length>? Spacing { get; init; }

    [Key("Length of each; plate to plate with room for nuts if left out.", Sign = Sign.Above)]
    public Measure<Length>? Length { get; init; }

    [Key("Clock angle of the first.")]
    public Measure<Angle>? FirstClock { get; init; }

    [Key("What they are made of.")]
    public string? Material { get; init; }

    [Key("Nuts that close the plates from outside.")]
    public RodNutWord? Nuts { get; init; }
}

/// <summary>Nuts on rods.</summary>
public enum RodNutWord
{
    /// <summary>Hexagon nuts.</summary>
    Hex,

    /// <summary>Wing nuts, which sweep a circle.</summary>
    Wing,
}

/// <summary>Static ports of an altimeter bay.</summary>
public sealed record PortsDesign : Placed
{
    [Key("How many, evenly spaced.", Required = true, Sign = Sign.Above)]
    public required int Count { get; init; }

    [Key("Diameter of each, or auto.", Required = true, Sign = Sign.Above)]
    public required AutoOr<Length> Diameter { get; init; }

    [Key("Forward (+) or aft (-) of the middle of the band.")]
    public Measure<Length>? StationFromBandCentre { get; init; }

    [Key("Clock angle of the first.")]
    public Measure<Angle>? FirstClock { get; init; }
}

/// <summary>Switch reached through a hole in the band.</summary>
public sealed record SwitchDesign : Placed
{
    [Key("Name.")]
    public string? Name { get; init; }

    [Key("Diameter of the hole.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Diameter { get; init; }

    [Key("Clock angle.")]
    public Measure<Angle>? Clock { get; init; }

    [Key("Forward (+) or aft (-) of the middle of the band.")]
    public Measure<Length>? StationFromBandCentre { get; init; }

    [Key("Whether air passes through it as through a static port.")]
    public bool Vents { get; init; }
}
