using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Bulk plate.</summary>
public sealed record PlateDesign : Placed
{
    [Key("Name, by which charges and cords find it.", Required = true, Names = true)]
    public required string Name { get; init; }

    [Key("Which end of the part it closes; otherwise its place is given by from forward end or from aft end.")]
    public EndWord? Face { get; init; }

    [Key("From the front of the part's own length (of the coupler for a bay) to its front.")]
    public Measure<Length>? FromForwardEnd { get; init; }

    [Key("From the part's aft end to its back.")]
    public Measure<Length>? FromAftEnd { get; init; }

    [Key("Diameter; the inside of the part if left out.", Sign = Sign.Above)]
    public Measure<Length>? Outside { get; init; }

    [Key("Thickness.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Thickness { get; init; }

    [Key("What it is made of.")]
    public string? Material { get; init; }

    [Key("What a cord ties to on it, such as U-bolt 1/4.")]
    public string? Hardware { get; init; }

    [Key("Working load of the hardware in line, as stamped on it; from the table by name and size if left out.", Sign = Sign.Above)]
    public Measure<Force>? HardwareLoad { get; init; }

    [Key("Outside diameter of the washers it bears on the plate with.", Sign = Sign.Above)]
    public Measure<Length>? Washer { get; init; }

    [Key("Where that U-bolt or eye bolt sits.")]
    public BoltPlaceDesign? Bolt { get; init; }

    [Key("What else sits on it or goes through it.")]
    public ValueList<OnPlateDesign> Carries { get; init; } = ValueList<OnPlateDesign>.Empty;

    [Key("Adhesive that holds it, by the name of a list or table.")]
    public string? Adhesive { get; init; }
}

/// <summary>An end of a part.</summary>
public enum EndWord
{
    /// <summary>Towards the nose.</summary>
    Forward,

    /// <summary>Towards the tail.</summary>
    Aft,
}
