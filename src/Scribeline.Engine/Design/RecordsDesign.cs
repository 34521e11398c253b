using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>What was weighed and measured on the real rocket. It counts before what is planned.</summary>
public sealed record RecordsDesign : Placed
{
    [Key("Weighings of the whole or of pieces.")]
    public ValueList<WeighedDesign> Weighed { get; init; } = ValueList<WeighedDesign>.Empty;

    [Key("Values measured on the real thing, each counting in place of its plan; of several for one thing the last.")]
    public ValueList<MeasuredDesign> Measured { get; init; } = ValueList<MeasuredDesign>.Empty;

    [Key("Swings on two lines, which give a moment of inertia.")]
    public ValueList<SwungDesign> Swung { get; init; } = ValueList<SwungDesign>.Empty;

    [Key("Charges fired on the ground, one for each shot.")]
    public ValueList<ShotDesign> Shots { get; init; } = ValueList<ShotDesign>.Empty;

    [Key("Whether what the shots say counts in lets-go; no if left out.")]
    public bool ShotsCount { get; init; }
}

/// <summary>A value measured on the real thing.</summary>
public sealed record MeasuredDesign : Placed
{
    [Key("What was measured: the name of the part, plate, canopy, cord or joint, then its keys.", Required = true, Example = "Booster fins root")]
    public required string What { get; init; }

    [Key("The value, with how sure it is.", Required = true, Example = "8.48 in ± 0.01 in")]
    public required string Value { get; init; }

    [Key("When.")]
    public string? Date { get; init; }
}

/// <summary>A swing of the whole rocket or of neighbouring parts, hung from two equal upright lines and twisted a little about the upright.</summary>
public sealed record SwungDesign : Placed
{
    [Key("The parts that hung, by name; the whole rocket if left out.")]
    public ValueList<string> Parts { get; init; } = ValueList<string>.Empty;

    [Key("Whether it lay level (across) or hung nose up (along).")]
    public SwingWord Axis { get; init; }

    [Key("Between the two lines, the balance point midway.", Required = true, Sign = Sign.Above, Known = Basis.Measured)]
    public required Measure<Length> Apart { get; init; }

    [Key("Length of each line.", Required = true, Sign = Sign.Above, Known = Basis.Measured)]
    public required Measure<Length> Lines { get; init; }

    [Key("Time of one swing there and back; time twenty and divide.", Required = true, Sign = Sign.Above, Known = Basis.Measured)]
    public required Measure<Duration> Period { get; init; }

    [Key("Mass of what hung; the sum of its parts if left out.", Sign = Sign.Above, Known = Basis.Measured)]
    public Measure<Mass>? Mass { get; init; }

    [Key("Whether what is stowed was aboard.", Required = true)]
    public required bool Stowed { get; init; }

    [Key("Whether the loaded motor was aboard.", Required = true)]
    public required bool Motor { get; init; }

    [Key("When.")]
    public string? Date { get; init; }
}

/// <summary>The axis a swing turns about.</summary>
public enum SwingWord
{
    /// <summary>Across the rocket.</summary>
    Across,

    /// <summary>Along it.</summary>
    Along,
}

/// <summary>A weighing or balancing of the whole rocket or of neighbouring parts together.</summary>
public sealed record WeighedDesign : Placed
{
    [Key("The parts on the scale, by name; the whole rocket if left out.")]
    public ValueList<string> Parts { get; init; } = ValueList<string>.Empty;

    [Key("Mass.", Sign = Sign.Above, Known = Basis.Measured)]
    public Measure<Mass>? Mass { get; init; }

    [Key("Balance point, aft of the front of the first part's own length (of the nose tip for the whole).", Known = Basis.Measured)]
    public Measure<Length>? Balance { get; init; }

    [Key("Whether what is stowed was aboard.", Required = true)]
    public required bool Stowed { get; init; }

    [Key("Whether the loaded motor was aboard.", Required = true)]
    public required bool Motor { get; init; }

    [Key("When.")]
    public string? Date { get; init; }
}
