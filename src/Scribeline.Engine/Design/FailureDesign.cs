using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Something that may go wrong, to be flown besides the standard failures. What is typed together fails together.</summary>
public sealed record FailureDesign : Placed
{
    [Key("Name of the failure.", Required = true, Example = "Drogue tangles and the primary is dead")]
    public required string Name { get; init; }

    [Key("Altimeters that fire nothing.")]
    public ValueList<string> Dead { get; init; } = ValueList<string>.Empty;

    [Key("Charges that do not burn.")]
    public ValueList<string> Unfired { get; init; } = ValueList<string>.Empty;

    [Key("Canopies that come out and do not open.")]
    public ValueList<string> Unopened { get; init; } = ValueList<string>.Empty;

    [Key("Joints that let go by themselves.")]
    public ValueList<LettingGoDesign> LetsGo { get; init; } = ValueList<LettingGoDesign>.Empty;

    [Key("Charges of one bay that burn together when the first of them is fired.")]
    public ValueList<string> Together { get; init; } = ValueList<string>.Empty;

    [Key("Whether every joint holds as much as it may: strongest pins, most friction.")]
    public bool StrongestPins { get; init; }

    [Key("Share of the heat and gas that the powder gives, such as 70 %.", Sign = Sign.Above, Example = "70 %")]
    public Measure<Ratio>? Powder { get; init; }

    [Key("Total impulse of the motor over that tested.", Sign = Sign.Above, Example = "95 %")]
    public Measure<Ratio>? Impulse { get; init; }

    [Key("Burn time of the motor over that tested; its thrust goes the other way.", Sign = Sign.Above, Example = "110 %")]
    public Measure<Ratio>? BurnTime { get; init; }

    [Key("How much later than told every altimeter fires.", Sign = Sign.Above)]
    public Measure<Duration>? Late { get; init; }

    [Key("Why it is looked at, or who asks for it.")]
    public string? Source { get; init; }
}

/// <summary>A joint that lets go by itself.</summary>
public sealed record LettingGoDesign : Placed
{
    [Key("The part ahead and the part behind.", Required = true)]
    public ValueList<string> Between { get; init; } = ValueList<string>.Empty;

    [Key("The moment.", Required = true)]
    public required MomentWord When { get; init; }

    [Key("Time after that moment.", Sign = Sign.NotBelow)]
    public Measure<Duration>? After { get; init; }
}

/// <summary>Moments of a flight to count from.</summary>
public enum MomentWord
{
    /// <summary>First motion on the rail.</summary>
    [Word("lift-off")]
    LiftOff,

    /// <summary>The motor has burnt out.</summary>
    Burnout,

    /// <summary>The top of the flight.</summary>
    Apogee,
}
