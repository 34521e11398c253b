using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Finish of the outside.</summary>
public sealed record SurfaceDesign : Placed
{
    [Key("Finish in words; a roughness typed beside it counts instead.")]
    public Finish? Finish { get; init; }

    [Key("Equivalent sand roughness.", Sign = Sign.NotBelow)]
    public Measure<Length>? Roughness { get; init; }

    [Key("Colour, by which the sun heats it.")]
    public ColourWord? Colour { get; init; }
}

/// <summary>Colours, with the share of sunlight usual for each (common practice: 0.25, 0.70, 0.95).</summary>
public enum ColourWord
{
    /// <summary>Takes about a quarter.</summary>
    White,

    /// <summary>Takes about seven tenths.</summary>
    Coloured,

    /// <summary>Takes nearly all.</summary>
    Black,
}

/// <summary>Finishes, with the equivalent sand roughness usual for each (DATCOM table 4.1.5.1-A, from memory; bare glass is common practice).</summary>
public enum Finish
{
    /// <summary>About 1 µm.</summary>
    Polished,

    /// <summary>About 6 µm.</summary>
    SandedPaint,

    /// <summary>About 10 µm.</summary>
    SprayedPaint,

    /// <summary>About 30 µm.</summary>
    HeavyPaint,

    /// <summary>20 to 60 µm.</summary>
    BareGlass,
}
