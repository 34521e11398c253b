using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>A field.</summary>
public sealed record SiteDesign : Placed
{
    [Key("Name.", Required = true)]
    public required string Name { get; init; }

    [Key("Latitude of the pad, north positive.")]
    public Measure<Angle>? Latitude { get; init; }

    [Key("Longitude of the pad, east positive.")]
    public Measure<Angle>? Longitude { get; init; }

    [Key("Height of the pad above sea level.", Required = true)]
    public required Measure<Length> Elevation { get; init; }

    [Key("Greatest height allowed, above the pad.", Sign = Sign.Above)]
    public Measure<Length>? Ceiling { get; init; }

    [Key("Outline of the field: a GeoJSON or KML file.")]
    public string? Boundary { get; init; }

    [Key("Shortest side of the field.", Sign = Sign.Above)]
    public Measure<Length>? ShortestSide { get; init; }

    [Key("Rule sets that apply.")]
    public ValueList<string> Rules { get; init; } = ValueList<string>.Empty;
}
