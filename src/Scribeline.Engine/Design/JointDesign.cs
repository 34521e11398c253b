using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>How a part meets the next. Pinned and sliding joints let go in flight; how far they reach follows from shoulder or coupler.</summary>
public sealed record JointDesign : Placed
{
    [Key("The part ahead and the part behind.", Required = true)]
    public ValueList<string> Between { get; init; } = ValueList<string>.Empty;

    [Key("How they are held.", Required = true)]
    public required JointWord Kind { get; init; }

    [Key("Shear pins of a pinned joint.")]
    public PinsDesign? Pins { get; init; }

    [Key("Screws of a screwed joint.")]
    public ScrewsDesign? Screws { get; init; }

    [Key("How tightly they slide.")]
    public FitDesign? Fit { get; init; }

    [Key("Bond of a bonded joint.")]
    public BondDesign? Bond { get; init; }

    [Key("Whether something makes it close one way only.")]
    public bool Keyed { get; init; }

    [Key("Said on purpose: it closes more than one way, and witness marks show which.")]
    public bool Unkeyed { get; init; }
}

/// <summary>Ways to hold two parts together.</summary>
public enum JointWord
{
    /// <summary>Glued for good.</summary>
    Bonded,

    /// <summary>Screwed, opened on the bench only.</summary>
    Screwed,

    /// <summary>Held by shear pins until a charge cuts them.</summary>
    Pinned,

    /// <summary>Held by friction alone.</summary>
    Sliding,
}

/// <summary>Shear pins.</summary>
public sealed record PinsDesign : Placed
{
    [Key("Which screw, such as \"#2-56 nylon\" (in quotes).", Required = true)]
    public required ScrewName Screw { get; init; }

    [Key("How many.", Required = true, Sign = Sign.Above)]
    public required int Count { get; init; }

    [Key("Clock angle of each, or a rule such as thirds from 60 deg.")]
    public ValueList<ClockPattern> Clock { get; init; } = ValueList<ClockPattern>.Empty;

    [Key("From the edge of the outer tube to the middle of each; one value for all, or one each.", Sign = Sign.Above)]
    public ValueList<Measure<Length>> FromEdge { get; init; } = ValueList<Measure<Length>>.Empty;

    [Key("Force that cuts one pin, where tested.", Sign = Sign.Above)]
    public Measure<Force>? Strength { get; init; }

    [Key("How much one pin may travel before another takes up load: hole less screw, on the diameter; none in drilled and tapped holes.", Sign = Sign.NotBelow)]
    public Measure<Length>? Play { get; init; }
}

/// <summary>Screws of a joint.</summary>
public sealed record ScrewsDesign : Placed
{
    [Key("Their thread.", Required = true)]
    public required ThreadName Thread { get; init; }

    [Key("How many.", Required = true, Sign = Sign.Above)]
    public required int Count { get; init; }

    [Key("Clock angle of each, or a rule such as thirds from 60 deg.")]
    public ValueList<ClockPattern> Clock { get; init; } = ValueList<ClockPattern>.Empty;

    [Key("From the edge of the outer tube to the middle of each; one value for all, or one each.", Sign = Sign.Above)]
    public ValueList<Measure<Length>> FromEdge { get; init; } = ValueList<Measure<Length>>.Empty;

    [Key("What they are made of.")]
    public string? Material { get; init; }

    [Key("What they turn into.")]
    public ScrewHoldWord? Into { get; init; }

    [Key("Their heads; pan if left out.")]
    public ScrewHeadWord? Head { get; init; }
}

/// <summary>What a screw turns into.</summary>
public enum ScrewHoldWord
{
    /// <summary>A thread tapped into the wall.</summary>
    TappedWall,

    /// <summary>A nut bonded behind the wall.</summary>
    CaptiveNut,
}

/// <summary>Head of a screw.</summary>
public enum ScrewHeadWord
{
    /// <summary>Stands on the surface.</summary>
    Pan,

    /// <summary>Sunk flush into a countersink.</summary>
    Flat,
}

/// <summary>How tightly a joint slides.</summary>
public sealed record FitDesign : Placed
{
    [Key("Force that pulls it apart without pins.", Sign = Sign.NotBelow)]
    public Measure<Force>? Friction { get; init; }

    [Key("Bore less shoulder, on the diameter; from the two diameters if left out.")]
    public Measure<Length>? Play { get; init; }
}

/// <summary>Bond of a joint.</summary>
public sealed record BondDesign : Placed
{
    [Key("Which adhesive.", Required = true)]
    public required string Adhesive { get; init; }

    [Key("Length bonded; the whole engagement if left out.", Sign = Sign.Above)]
    public Measure<Length>? Length { get; init; }
}
