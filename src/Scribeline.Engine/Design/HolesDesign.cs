using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Vent holes in one row round a part.</summary>
public sealed record HolesDesign : Placed
{
    [Key("How many.", Required = true, Sign = Sign.Above)]
    public required int Count { get; init; }

    [Key("Diameter of each, or auto.", Required = true, Sign = Sign.Above)]
    public required AutoOr<Length> Diameter { get; init; }

    [Key("From the front of the part's own length; either this or from aft end.")]
    public Measure<Length>? FromForwardEnd { get; init; }

    [Key("From the part's aft end; either this or from forward end.")]
    public Measure<Length>? FromAftEnd { get; init; }

    [Key("Clock angle of each, or a rule such as thirds from 60 deg.")]
    public ValueList<ClockPattern> Clock { get; init; } = ValueList<ClockPattern>.Empty;
}
