using System.Text.Json;
using NetTopologySuite.Features;
using NetTopologySuite.Geometries;
using NetTopologySuite.IO.Converters;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>Areas of a GeoJSON text: polygons of a feature collection, a feature or a bare geometry, with properties <c>name</c> and <c>kind</c>.</summary>
internal static class GeoJsonOutline
{
    private static readonly JsonSerializerOptions Options = new() { MaxDepth = 32, Converters = { new GeoJsonConverterFactory() } };

    public static IReadOnlyList<PlacedArea> Read(string text, string at, List<Problem> problems)
    {
        try
        {
            return [.. Features(text).SelectMany(f => Areas(f.Geometry, Word(f.Attributes, "name"), Word(f.Attributes, "kind")))];
        }
        catch (Exception wrong) when (wrong is JsonException or ArgumentException or InvalidOperationException or NotSupportedException or FormatException or KeyNotFoundException)
        {
            problems.Add(new(at, "The file is not sound GeoJSON.", "Export it again as GeoJSON in WGS 84, one polygon for the field.", (int?)(wrong as JsonException)?.LineNumber + 1));
            return [];
        }
    }

    private static IEnumerable<IFeature> Features(string text)
    {
        using var document = JsonDocument.Parse(text, new() { MaxDepth = 32 });
        var type = document.RootElement.ValueKind == JsonValueKind.Object && document.RootElement.TryGetProperty("type", out var said) ? said.GetString() : null;
        return type switch
        {
            "FeatureCollection" => JsonSerializer.Deserialize<FeatureCollection>(text, Options)!,
            "Feature" => [JsonSerializer.Deserialize<IFeature>(text, Options)!],
            _ => [new Feature(JsonSerializer.Deserialize<Geometry>(text, Options), new AttributesTable())],
        };
    }

    private static IEnumerable<PlacedArea> Areas(Geometry? geometry, string? name, string? kind)
    {
        for (var i = 0; i < (geometry?.NumGeometries ?? 0); i++)
        {
            if (geometry!.GetGeometryN(i) is not Polygon polygon || polygon.IsEmpty) continue;
            var ring = polygon.ExteriorRing.Coordinates.Select(c => new PlacedCorner(c.Y, c.X)).ToArray();
            yield return new(name ?? "", OutlineFile.KindOf(kind, name ?? ""), OutlineFile.Open(ring));
        }
    }

    private static string? Word(IAttributesTable? attributes, string key) =>
        attributes is not null && attributes.Exists(key) && attributes[key] is { } value ? value.ToString() : null;
}
