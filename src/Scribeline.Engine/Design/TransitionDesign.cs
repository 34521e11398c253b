using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Transition between two diameters; a boat tail where it narrows at the tail.</summary>
[Word("transition")]
public sealed record TransitionDesign : PartDesign
{
    [Key("Its profile; a cone if left out.")]
    public ProfileWord Shape { get; init; }

    [Key("Parameter of the profile, as for nose cones.", Sign = Sign.NotBelow)]
    public Measure<Ratio>? Parameter { get; init; }

    [Key("Length without shoulders.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("Outside diameter at the front.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> ForwardOutside { get; init; }

    [Key("Outside diameter at the back.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> AftOutside { get; init; }

    [Key("Wall thickness square to the surface.", Sign = Sign.Above)]
    public Measure<Length>? Wall { get; init; }

    [Key("Whether it is solid; otherwise it has a wall.")]
    public bool Solid { get; init; }

    [Key("What slides into the part ahead.")]
    public ShoulderDesign? ForwardShoulder { get; init; }

    [Key("What slides into the part behind.")]
    public ShoulderDesign? AftShoulder { get; init; }
}
