using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Something small fixed in a part, counted as a mass at a point.</summary>
public sealed record PointMassDesign : Placed
{
    [Key("Name.", Required = true)]
    public required string Name { get; init; }

    [Key("Mass.", Required = true, Sign = Sign.Above)]
    public required Measure<Mass> Mass { get; init; }

    [Key("From the front of the part's own length; either this or from aft end.")]
    public Measure<Length>? FromForwardEnd { get; init; }

    [Key("From the part's aft end; either this or from forward end.")]
    public Measure<Length>? FromAftEnd { get; init; }

    [Key("Off the axis.", Sign = Sign.NotBelow)]
    public Measure<Length>? Radius { get; init; }

    [Key("Clock angle.")]
    public Measure<Angle>? Clock { get; init; }
}
