using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>Reads the outline of a field: GeoJSON (RFC 7946) or KML (OGC 12-007r2). Only polygons count; heights and holes are left out.</summary>
public static class OutlineFile
{
    /// <summary>Most corners of all areas together.</summary>
    public const int MostCorners = 20_000;

    /// <summary>Most areas.</summary>
    public const int MostAreas = 200;

    /// <summary>Reads the text of a file.</summary>
    /// <param name="name">Its name, whose ending says what it is: .geojson, .json or .kml.</param>
    /// <param name="text">Its text.</param>
    /// <param name="at">Path in the design.</param>
    /// <param name="problems">Takes the problems.</param>
    /// <returns>Areas in the order of the file; empty if there was a problem.</returns>
    public static ValueList<PlacedArea> Read(string name, string text, string at, List<Problem> problems)
    {
        var before = problems.Count;
        IReadOnlyList<PlacedArea> areas = Path.GetExtension(name).ToLowerInvariant() switch
        {
            ".geojson" or ".json" => GeoJsonOutline.Read(text, at, problems),
            ".kml" => KmlOutline.Read(text, at, problems),
            _ => Other(),
        };
        if (problems.Count > before) return [];
        if (areas.Count == 0) problems.Add(new(at, "The file holds no polygon.", "Draw the field as an area, not as a line or a point."));
        if (areas.Count > MostAreas || areas.Sum(a => a.Ring.Count) > MostCorners)
            problems.Add(new(at, $"The file holds more than {MostAreas} areas or {MostCorners} corners.", "Keep the field and what must be kept clear; a corner every few metres is enough."));
        foreach (var area in areas.Where(a => a.Ring.Any(c => !(Math.Abs(c.Latitude) <= 90) || !(Math.Abs(c.Longitude) <= 180))))
        {
            problems.Add(new(at, $"{(area.Name.Length == 0 ? "An area" : $"'{area.Name}'")} has a corner that is no place on Earth.", "Each corner is longitude, then latitude, in degrees."));
        }

        return problems.Count > before ? [] : areas.ToValueList();

        IReadOnlyList<PlacedArea> Other()
        {
            problems.Add(new(at, $"'{name}' is no outline this program reads.", "Name a file that ends in .geojson, .json or .kml, or type the corners in place."));
            return [];
        }
    }

    /// <summary>What an area is: the word of its kind; without one, the field, unless its name begins with a kind.</summary>
    internal static AreaKind? KindOf(string? kind, string name)
    {
        var words = RecordShape.Words(typeof(AreaKind)).Select(w => (w.Word, Value: (AreaKind)w.Value)).Append(("no-go", AreaKind.Other)).ToArray();
        var said = (kind ?? name).Trim();
        foreach (var (word, value) in words)
        {
            if (kind is null ? said.StartsWith(word, StringComparison.OrdinalIgnoreCase) : said.Equals(word, StringComparison.OrdinalIgnoreCase)) return value;
        }

        return kind is null || said.Equals("field", StringComparison.OrdinalIgnoreCase) ? null : AreaKind.Other;
    }

    /// <summary>The ring without its repeated last corner.</summary>
    internal static ValueList<PlacedCorner> Open(IReadOnlyList<PlacedCorner> ring) =>
        (ring.Count > 1 && ring[0] == ring[^1] ? ring.SkipLast(1) : ring).ToValueList();
}
