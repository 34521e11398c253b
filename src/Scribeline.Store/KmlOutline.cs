using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>
/// Areas of a KML text: the outer boundary of every polygon of every placemark, by its name and the data <c>kind</c> where it has one.
/// Hostile files are refused: no document type, no entities, nothing fetched, depth and size bounded.
/// </summary>
internal static class KmlOutline
{
    private const int MostDepth = 64;

    public static IReadOnlyList<PlacedArea> Read(string text, string at, List<Problem> problems)
    {
        XDocument document;
        try
        {
            document = Document(text);
        }
        catch (XmlException wrong)
        {
            problems.Add(new(at, "The file is not sound KML.", "Export it again as KML (not KMZ), without a document type.", wrong.LineNumber > 0 ? wrong.LineNumber : null));
            return [];
        }

        List<PlacedArea> areas = [];
        foreach (var placemark in document.Descendants().Where(e => e.Name.LocalName == "Placemark"))
        {
            var name = Child(placemark, "name")?.Value.Trim() ?? "";
            var kind = placemark.Descendants().FirstOrDefault(e => e.Name.LocalName == "Data" && (string?)e.Attribute("name") == "kind")?.Value.Trim();
            foreach (var polygon in placemark.Descendants().Where(e => e.Name.LocalName == "Polygon"))
            {
                var coordinates = polygon.Descendants().FirstOrDefault(e => e.Name.LocalName == "outerBoundaryIs")?.Descendants().FirstOrDefault(e => e.Name.LocalName == "coordinates");
                if (Ring(coordinates?.Value ?? "") is { } ring) areas.Add(new(name, OutlineFile.KindOf(kind, name), OutlineFile.Open(ring)));
                else problems.Add(new(at, $"The corners of '{name}' cannot be read.", "Each corner is longitude,latitude in degrees, corners parted by spaces."));
            }
        }

        return areas;
    }

    private static XDocument Document(string text)
    {
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            MaxCharactersInDocument = SafeText.Largest,
            MaxCharactersFromEntities = 1024,
        };

        // Depth first: a tree of elements is built by recursion in what reads it afterwards.
        using (var look = XmlReader.Create(new StringReader(text), settings))
        {
            while (look.Read())
            {
                if (look.Depth > MostDepth) throw new XmlException("Too deep.");
            }
        }

        using var reader = XmlReader.Create(new StringReader(text), settings);
        return XDocument.Load(reader);
    }

    private static XElement? Child(XElement of, string name) => of.Elements().FirstOrDefault(e => e.Name.LocalName == name);

    private static List<PlacedCorner>? Ring(string text)
    {
        List<PlacedCorner> ring = [];
        foreach (var corner in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            var numbers = corner.Split(',');
            if (numbers.Length is not (2 or 3) || Number(numbers[0]) is not { } longitude || Number(numbers[1]) is not { } latitude) return null;
            ring.Add(new(latitude, longitude));
        }

        return ring.Count > 0 ? ring : null;
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;
}
