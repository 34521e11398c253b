using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Range;

namespace Scribeline.Store;

/// <summary>Landings, ellipses, field and areas of a map by latitude and longitude: GeoJSON (RFC 7946) and KML (OGC 12-007r2).</summary>
public static class LandingExport
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = false };

    private static readonly XNamespace Kml = "http://www.opengis.net/kml/2.2";

    /// <summary>The map as GeoJSON; null where the site does not say where the pad is.</summary>
    public static string? GeoJson(GroundMap map)
    {
        if (map.Plane is not { } plane) return null;
        JsonArray features = [];
        foreach (var (name, kind, ring) in Rings(map))
        {
            JsonArray corners = [.. ring.Append(ring[0]).Select(p => (JsonNode)Place(plane, p))];
            features.Add(Feature(name, kind, "Polygon", new JsonArray(corners)));
        }

        foreach (var cloud in map.Clouds)
            features.Add(Feature(cloud.Name, "landings", "MultiPoint", new JsonArray([.. cloud.Points.Select(p => (JsonNode)Place(plane, p))])));
        features.Add(Feature("pad", "pad", "Point", Place(plane, new(0, 0))));
        return new JsonObject { ["type"] = "FeatureCollection", ["features"] = features }.ToJsonString(Options) + "\n";
    }

    /// <summary>The map as KML; null where the site does not say where the pad is.</summary>
    public static string? KmlText(GroundMap map)
    {
        if (map.Plane is not { } plane) return null;
        var document = new XElement(Kml + "Document", new XElement(Kml + "name", map.Title), Placemark("pad", "pad", Point(plane, new(0, 0))));
        foreach (var (name, kind, ring) in Rings(map))
        {
            document.Add(Placemark(name, kind, new XElement(Kml + "Polygon", new XElement(Kml + "outerBoundaryIs", new XElement(Kml + "LinearRing",
                new XElement(Kml + "coordinates", string.Join(' ', ring.Append(ring[0]).Select(p => Text(plane, p)))))))));
        }

        foreach (var cloud in map.Clouds) document.Add(Placemark(cloud.Name, "landings", new XElement(Kml + "MultiGeometry", cloud.Points.Select(p => Point(plane, p)))));
        return new XDocument(new XElement(Kml + "kml", document)) is var whole ? "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + whole.ToString(SaveOptions.DisableFormatting) + "\n" : null;
    }

    private static IEnumerable<(string Name, string Kind, IReadOnlyList<LandingPoint> Ring)> Rings(GroundMap map)
    {
        if (map.Field.Count > 0) yield return ("field", "field", map.Field);
        foreach (var kept in map.Kept) yield return (kept.Name, kept.People ? "crowd" : "other", kept.Area.Corners);
        foreach (var cloud in map.Clouds)
        {
            foreach (var ellipse in cloud.Ellipses)
                yield return (string.Create(CultureInfo.InvariantCulture, $"{cloud.Name}, {100 * ellipse.Content:0} % ellipse"), "ellipse", ellipse.Outline());
        }
    }

    private static JsonObject Feature(string name, string kind, string type, JsonNode coordinates) => new()
    {
        ["type"] = "Feature",
        ["properties"] = new JsonObject { ["name"] = name, ["kind"] = kind },
        ["geometry"] = new JsonObject { ["type"] = type, ["coordinates"] = coordinates },
    };

    private static JsonArray Place(LandingPlane plane, LandingPoint point)
    {
        var (longitude, latitude) = Degrees(plane, point);
        return [longitude, latitude];
    }

    private static XElement Placemark(string name, string kind, XElement geometry) => new(
        Kml + "Placemark",
        new XElement(Kml + "name", name),
        new XElement(Kml + "ExtendedData", new XElement(Kml + "Data", new XAttribute("name", "kind"), new XElement(Kml + "value", kind))),
        geometry);

    private static XElement Point(LandingPlane plane, LandingPoint point) => new(Kml + "Point", new XElement(Kml + "coordinates", Text(plane, point)));

    private static string Text(LandingPlane plane, LandingPoint point)
    {
        var (longitude, latitude) = Degrees(plane, point);
        return new StringBuilder().Append(CultureInfo.InvariantCulture, $"{longitude},{latitude}").ToString();
    }

    // A ten-millionth of a degree is a centimetre.
    private static (double Longitude, double Latitude) Degrees(LandingPlane plane, LandingPoint point)
    {
        var (latitude, longitude) = plane.ToPlace(point);
        return (Math.Round(longitude * 180 / Math.PI, 7), Math.Round(latitude * 180 / Math.PI, 7));
    }
}
