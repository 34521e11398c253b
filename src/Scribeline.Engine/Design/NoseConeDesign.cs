using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Nose cone.</summary>
[Word("nose cone")]
public sealed record NoseConeDesign : PartDesign
{
    [Key("Its profile.", Required = true)]
    public required ProfileWord Shape { get; init; }

    [Key("Parameter of the profile: radius over the tangent ogive's for a secant ogive (1 or more), K' for a parabola (0 to 1), n for power (0 to 1), C for Haack (0 to 2/3).", Sign = Sign.NotBelow)]
    public Measure<Ratio>? Parameter { get; init; }

    [Key("Tip to shoulder.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("Outside diameter at the base.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Outside { get; init; }

    [Key("Wall thickness square to the surface.", Sign = Sign.Above)]
    public Measure<Length>? Wall { get; init; }

    [Key("Whether it is solid; otherwise it has a wall.")]
    public bool Solid { get; init; }

    [Key("What slides into the part behind.")]
    public ShoulderDesign? Shoulder { get; init; }
}

/// <summary>Profiles of nose cones and transitions.</summary>
public enum ProfileWord
{
    /// <summary>Straight.</summary>
    Cone,

    /// <summary>Circular arc tangent to the tube behind.</summary>
    TangentOgive,

    /// <summary>Circular arc not tangent to the tube behind; needs a parameter.</summary>
    SecantOgive,

    /// <summary>Half ellipsoid.</summary>
    Ellipsoid,

    /// <summary>Parabolic series; needs a parameter.</summary>
    Parabola,

    /// <summary>Power series; needs a parameter.</summary>
    Power,

    /// <summary>Haack series for length and diameter.</summary>
    [Word("von Karman")]
    VonKarman,

    /// <summary>Haack series; needs a parameter.</summary>
    [Word("Haack")]
    Haack,
}

/// <summary>A shoulder that slides into a neighbouring part.</summary>
public sealed record ShoulderDesign : Placed
{
    [Key("How far it reaches in.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("Outside diameter.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Outside { get; init; }

    [Key("Inside diameter; left out for a solid shoulder or where the wall is given.", Sign = Sign.Above)]
    public Measure<Length>? Inside { get; init; }

    [Key("Wall thickness.", Sign = Sign.Above)]
    public Measure<Length>? Wall { get; init; }
}
