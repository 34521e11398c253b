using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Rail guides in a row.</summary>
public sealed record RailGuideDesign : Placed
{
    [Key("Rail they fit, such as 1010 or 1515.", Required = true)]
    public required string Size { get; init; }

    [Key("From the part's aft end to the middle of each.", Required = true)]
    public ValueList<Measure<Length>> FromAftEnd { get; init; } = ValueList<Measure<Length>>.Empty;

    [Key("Clock angle; the scribe line if left out.")]
    public Measure<Angle>? Clock { get; init; }

    [Key("How far they stand out of the surface.", Sign = Sign.Above)]
    public Measure<Length>? Height { get; init; }

    [Key("Width across the flow.", Sign = Sign.Above)]
    public Measure<Length>? Width { get; init; }

    [Key("Length along the rail.", Sign = Sign.Above)]
    public Measure<Length>? Length { get; init; }

    [Key("Mass of each with its screw.", Sign = Sign.Above)]
    public Measure<Mass>? Mass { get; init; }

    [Key("Thread of the screw that holds each.")]
    public ThreadName? Screw { get; init; }

    [Key("What that screw turns into.")]
    public ScrewHoldWord? Into { get; init; }

    [Key("Whether they are bonded on, without screws.")]
    public bool Bonded { get; init; }

    [Key("Whether they are streamlined.")]
    public bool Faired { get; init; }
}
