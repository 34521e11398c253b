using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Something that sits on a plate or goes through it. A place left out is proposed by the program.</summary>
public sealed record OnPlateDesign : Placed
{
    [Key("What it is.", Required = true)]
    public required OnPlateWord Kind { get; init; }

    [Key("Name.")]
    public string? Name { get; init; }

    [Key("Diameter of a round thing.", Sign = Sign.Above)]
    public Measure<Length>? Diameter { get; init; }

    [Key("Length of a rectangle, along the circle round the middle of the plate.", Sign = Sign.Above)]
    public Measure<Length>? Length { get; init; }

    [Key("Width of a rectangle, towards the middle of the plate.", Sign = Sign.Above)]
    public Measure<Length>? Width { get; init; }

    [Key("How many alike; one if left out.", Sign = Sign.Above)]
    public int? Count { get; init; }

    [Key("From the middle of the plate to its middle; proposed if left out.", Sign = Sign.NotBelow)]
    public Measure<Length>? FromCentre { get; init; }

    [Key("Clock angle of each, or a rule such as halves from 50 deg; proposed if left out.")]
    public ValueList<ClockPattern> Clock { get; init; } = ValueList<ClockPattern>.Empty;

    [Key("Which side it sits on; the outer side of a plate at an end if left out.")]
    public EndWord? Face { get; init; }
}

/// <summary>Kinds of things on a plate.</summary>
public enum OnPlateWord
{
    /// <summary>Holder of an ejection charge.</summary>
    ChargeCup,

    /// <summary>Terminals for match leads.</summary>
    TerminalBlock,

    /// <summary>Hole that wires pass through.</summary>
    WireHole,

    /// <summary>Space that must stay free of metal, as for an antenna.</summary>
    KeepClear,

    /// <summary>Something else.</summary>
    Other,
}

/// <summary>Where a U-bolt or eye bolt sits on its plate.</summary>
public sealed record BoltPlaceDesign : Placed
{
    [Key("Clock angle of the line through the legs of a U-bolt; proposed if left out.")]
    public Measure<Angle>? Clock { get; init; }

    [Key("From the middle of the plate to the middle of the bolt; in the middle if left out.", Sign = Sign.NotBelow)]
    public Measure<Length>? FromCentre { get; init; }

    [Key("Inside width of a U-bolt; the narrowest usual one if left out.", Sign = Sign.Above)]
    public Measure<Length>? InsideWidth { get; init; }

    [Key("Across the eye of an eye bolt; the table's if left out.", Sign = Sign.Above)]
    public Measure<Length>? Across { get; init; }

    [Key("Length of a backing plate, along the line through the legs.", Sign = Sign.Above)]
    public Measure<Length>? BackingLength { get; init; }

    [Key("Width of a backing plate.", Sign = Sign.Above)]
    public Measure<Length>? BackingWidth { get; init; }
}
