using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Parachute or streamer.</summary>
public sealed record CanopyDesign : Placed
{
    [Key("Name, such as Drogue or Main.", Required = true, Names = true)]
    public required string Name { get; init; }

    [Key("Its type.", Required = true)]
    public required CanopyType Type { get; init; }

    [Key("Diameter that belongs to the reference area.", Sign = Sign.Above)]
    public Measure<Length>? Diameter { get; init; }

    [Key("Drag coefficient on the reference area; from the tables by type if left out.", Sign = Sign.Above)]
    public Measure<Ratio>? DragCoefficient { get; init; }

    [Key("Area the coefficient belongs to; the nominal area if left out.")]
    public ReferenceAreaWord ReferenceArea { get; init; }

    [Key("Number of sides of a flat polygon; the diameter is then that across the flats.", Sign = Sign.Above)]
    public int? Sides { get; init; }

    [Key("Width of a strip of a cross; the diameter is then the length of a strip.", Sign = Sign.Above)]
    public Measure<Length>? StripWidth { get; init; }

    [Key("Diameter of a hole in the crown that the coefficient does not allow for.", Sign = Sign.Above)]
    public Measure<Length>? SpillHole { get; init; }

    [Key("Drag coefficient times area, where measured; counts before the coefficient.", Sign = Sign.Above)]
    public Measure<Area>? DragArea { get; init; }

    [Key("Mass with lines.", Sign = Sign.Above)]
    public Measure<Mass>? Mass { get; init; }

    [Key("Length it takes in the bay.", Sign = Sign.Above)]
    public Measure<Length>? PackedLength { get; init; }

    [Key("Volume it takes.", Sign = Sign.Above)]
    public Measure<Volume>? PackedVolume { get; init; }

    [Key("Fill distance in nominal diameters; from the tables by type if left out.", Sign = Sign.NotBelow)]
    public Measure<Ratio>? FillConstant { get; init; }

    [Key("Suspension lines.")]
    public LinesDesign? Lines { get; init; }

    [Key("Breaking load of the canopy and its seams as a whole, where its maker states one.", Sign = Sign.Above)]
    public Measure<Force>? Strength { get; init; }

    [Key("The cord it hangs on; the cord in the same part if left out.")]
    public string? On { get; init; }

    [Key("How far along the cord from its first tie.", Sign = Sign.NotBelow)]
    public Measure<Length>? Along { get; init; }
}

/// <summary>Suspension lines.</summary>
public sealed record LinesDesign : Placed
{
    [Key("How many.", Required = true, Sign = Sign.Above)]
    public required int Count { get; init; }

    [Key("Length of each.", Sign = Sign.Above)]
    public Measure<Length>? Length { get; init; }

    [Key("What they are made of, with its size, such as nylon cord type II.")]
    public string? Material { get; init; }

    [Key("Breaking load of each; from the table by material if left out.", Sign = Sign.Above)]
    public Measure<Force>? Strength { get; init; }

    [Key("Stretch at the breaking load, as a share of the length; from the table by material if left out.", Sign = Sign.Above)]
    public Measure<Ratio>? Stretch { get; init; }
}

/// <summary>Which area a drag coefficient belongs to.</summary>
public enum ReferenceAreaWord
{
    /// <summary>Whole cloth area, vent included.</summary>
    Nominal,

    /// <summary>Disc of the constructed diameter.</summary>
    Constructed,

    /// <summary>Disc of the inflated mouth.</summary>
    Projected,

    /// <summary>Disc across the mouth of a hemisphere as made.</summary>
    Mouth,
}

/// <summary>Canopy types with published figures (Knacke 1991, tables 5-1 and 5-2), and streamers.</summary>
public enum CanopyType
{
    FlatCircular,
    Conical,
    Biconical,
    Triconical,

    /// <summary>10 % flat extended skirt.</summary>
    [Word("extended skirt 10 % flat")]
    ExtendedSkirtFlat,

    /// <summary>14.3 % full extended skirt.</summary>
    [Word("extended skirt 14 % full")]
    ExtendedSkirtFull,
    Hemispherical,
    GuideSurfaceRibbed,
    GuideSurfaceRibless,
    Annular,
    Cross,
    FlatRibbon,
    ConicalRibbon,
    ConicalRibbonVariedPorosity,
    HemisfloRibbon,
    Ringslot,
    Ringsail,

    /// <summary>Disc, gap and band.</summary>
    [Word("disc-gap-band")]
    DiscGapBand,

    /// <summary>A strip of cloth or film; needs a drag area.</summary>
    Streamer,
}
