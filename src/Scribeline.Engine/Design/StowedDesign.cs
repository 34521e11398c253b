using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>One thing stowed in a part: exactly one of canopy, cord, blanket, link and other.</summary>
public sealed record StowedDesign : Placed
{
    [Key("The part it lies in.", Required = true)]
    public required string In { get; init; }

    [Key("From the front of the part's own length to the front of the thing, where it matters.")]
    public Measure<Length>? FromForwardEnd { get; init; }

    [Key("A parachute or streamer.")]
    public CanopyDesign? Canopy { get; init; }

    [Key("A harness or shock cord.")]
    public CordDesign? Cord { get; init; }

    [Key("A blanket or other protector.")]
    public BlanketDesign? Blanket { get; init; }

    [Key("A link or swivel.")]
    public LinkDesign? Link { get; init; }

    [Key("Anything else.")]
    public OtherDesign? Other { get; init; }
}

/// <summary>Blanket or other protector.</summary>
public sealed record BlanketDesign : Placed
{
    [Key("Name.")]
    public string? Name { get; init; }

    [Key("Mass.", Required = true, Sign = Sign.Above)]
    public required Measure<Mass> Mass { get; init; }

    [Key("Length it takes in the bay.", Sign = Sign.Above)]
    public Measure<Length>? PackedLength { get; init; }

    [Key("Volume it takes.", Sign = Sign.Above)]
    public Measure<Volume>? PackedVolume { get; init; }
}

/// <summary>Link or swivel between cord and canopy or plate.</summary>
public sealed record LinkDesign : Placed
{
    [Key("Name or kind, such as quick link 1/4.", Required = true)]
    public required string Name { get; init; }

    [Key("Mass.", Sign = Sign.Above)]
    public Measure<Mass>? Mass { get; init; }

    [Key("What it joins to the cord: a canopy or a tie of the cord. Where left out, it is taken to carry the whole pull.")]
    public string? Joins { get; init; }

    [Key("Working load, as stamped on it; from the table by name and size if left out.", Sign = Sign.Above)]
    public Measure<Force>? WorkingLoad { get; init; }

    [Key("Breaking load.", Sign = Sign.Above)]
    public Measure<Force>? Strength { get; init; }
}

/// <summary>Anything else stowed.</summary>
public sealed record OtherDesign : Placed
{
    [Key("Name.", Required = true)]
    public required string Name { get; init; }

    [Key("Mass.", Required = true, Sign = Sign.Above)]
    public required Measure<Mass> Mass { get; init; }

    [Key("Length it takes in the bay.", Sign = Sign.Above)]
    public Measure<Length>? PackedLength { get; init; }

    [Key("Volume it takes.", Sign = Sign.Above)]
    public Measure<Volume>? PackedVolume { get; init; }
}
