using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>A charge fired on the ground, and what it did. What is left out was as the design has it, or was not measured.</summary>
public sealed record ShotDesign : Placed
{
    [Key("The charge whose place it took, by name.", Required = true, Example = "Main A")]
    public required string Charge { get; init; }

    [Key("Powder as weighed and loaded.", Required = true, Sign = Sign.Above, Known = Basis.Measured, Example = "1.40 g")]
    public required Measure<Mass> Powder { get; init; }

    [Key("What happened.", Required = true)]
    public required ShotWord Happened { get; init; }

    [Key("Grain of the powder.")]
    public PowderWord? Grain { get; init; }

    [Key("Pins fitted; 0 for none.", Sign = Sign.NotBelow)]
    public int? Pins { get; init; }

    [Key("Screw of the pins.", Example = "\"#2-56 nylon\"")]
    public ScrewName? Screw { get; init; }

    [Key("Free volume of the bay then; the program fills it in, and so knows a bay that has changed since.", Sign = Sign.Above)]
    public Measure<Volume>? Volume { get; init; }

    [Key("What filled the room round the powder.", Example = "cellulose to the brim")]
    public string? Wadding { get; init; }

    [Key("Air temperature.", Known = Basis.Measured)]
    public Measure<Temperature>? Temperature { get; init; }

    [Key("Whether the piece behind was strapped fast; otherwise both were free to move.")]
    public bool Held { get; init; }

    [Key("How far apart the pieces ended, or how much of the harness ran out.", Sign = Sign.NotBelow, Known = Basis.Measured)]
    public Measure<Length>? Distance { get; init; }

    [Key("Speed of the pieces from one another as the joint came apart.", Sign = Sign.Above, Known = Basis.Measured)]
    public Measure<Speed>? Speed { get; init; }

    [Key("The same from pictures: a distance passed in a number of frames.")]
    public FilmedDesign? Filmed { get; init; }

    [Key("Greatest pressure in the bay over that outside.", Sign = Sign.Above, Known = Basis.Measured)]
    public Measure<Pressure>? Pressure { get; init; }

    [Key("Anything else.")]
    public string? Note { get; init; }

    [Key("When.")]
    public string? Date { get; init; }

    [Key("Revision of the design it was fired with: the beginning of its SHA-256, which the program fills in.")]
    public string? Revision { get; init; }
}

/// <summary>A speed from pictures.</summary>
public sealed record FilmedDesign : Placed
{
    [Key("Distance the pieces moved from one another.", Required = true, Sign = Sign.Above, Known = Basis.Measured)]
    public required Measure<Length> Distance { get; init; }

    [Key("Frames it took.", Required = true, Sign = Sign.Above)]
    public required int Frames { get; init; }

    [Key("Frames per second.", Required = true, Sign = Sign.Above, Known = Basis.Measured, Example = "240 Hz")]
    public required Measure<Frequency> Rate { get; init; }
}

/// <summary>What a shot did.</summary>
public enum ShotWord
{
    /// <summary>The joint stayed shut.</summary>
    [Word("did not part")]
    Stayed,

    /// <summary>It came apart, and what was stowed stayed in.</summary>
    [Word("gear stayed in")]
    GearIn,

    /// <summary>It came apart and the gear came out.</summary>
    [Word("parted")]
    Parted,

    /// <summary>The same, harder than anything should be.</summary>
    [Word("parted hard")]
    Hard,

    /// <summary>It came apart and something broke.</summary>
    [Word("broke")]
    Broke,
}
