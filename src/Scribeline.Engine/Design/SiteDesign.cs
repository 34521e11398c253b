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

    [Key("Outline of the field: a GeoJSON or KML file, or its corners.")]
    public FileOr<OutlineDesign>? Boundary { get; init; }

    [Key("Shortest side of the field.", Sign = Sign.Above)]
    public Measure<Length>? ShortestSide { get; init; }

    [Key("Safety code and regulations in force there, by the names of the table of rules, such as NAR high power 2012.", Example = "NAR high power 2012")]
    public ValueList<string> Rules { get; init; } = ValueList<string>.Empty;

    [Key("Conditions of the club or of rules that are not in the table, each for a person to confirm.")]
    public ValueList<string> OwnConditions { get; init; } = ValueList<string>.Empty;

    [Key("How far things are from the pad.")]
    public DistancesDesign? Distances { get; init; }

    [Key("Most rockets that leave at once.", Sign = Sign.Above)]
    public int? RocketsAtOnce { get; init; }
}

/// <summary>How far things are from the pad.</summary>
public sealed record DistancesDesign : Placed
{
    [Key("Nearest people who take part or look on.", Sign = Sign.Above)]
    public Measure<Length>? People { get; init; }

    [Key("Nearest people and property that do not take part.", Sign = Sign.Above)]
    public Measure<Length>? Outsiders { get; init; }

    [Key("Nearest occupied building.", Sign = Sign.Above)]
    public Measure<Length>? Building { get; init; }

    [Key("Nearest public highway with more than 10 vehicles an hour.", Sign = Sign.Above)]
    public Measure<Length>? Highway { get; init; }

    [Key("Nearest edge of the site.", Sign = Sign.Above)]
    public Measure<Length>? Edge { get; init; }

    [Key("Nearest airport boundary.", Sign = Sign.Above)]
    public Measure<Length>? Airport { get; init; }

    [Key("Diameter cleared of what burns round the pad.", Sign = Sign.Above)]
    public Measure<Length>? Cleared { get; init; }
}
