using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>The launch rail.</summary>
public sealed record RailDesign : Placed
{
    [Key("From the rocket's aft end at rest to the rail's tip.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> UsableLength { get; init; }

    [Key("Size, such as 1010 or 1515.")]
    public string? Size { get; init; }

    [Key("Angle above the horizon; either this or the tilt.", Sign = Sign.Above)]
    public Measure<Angle>? Elevation { get; init; }

    [Key("Angle off the vertical; either this or the elevation.", Sign = Sign.NotBelow)]
    public Measure<Angle>? Tilt { get; init; }

    [Key("Direction it leans towards, clockwise from north.")]
    public Measure<Angle>? Azimuth { get; init; }

    [Key("Coefficient of friction of the guides.", Sign = Sign.NotBelow)]
    public Measure<Ratio>? Friction { get; init; }
}
