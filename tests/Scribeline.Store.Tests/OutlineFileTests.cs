using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Tests;

/// <summary>Outlines of fields from files that may be anything.</summary>
public sealed class OutlineFileTests
{
    private const string Ring = "[[[-98.61, 44.19], [-98.59, 44.19], [-98.59, 44.21], [-98.61, 44.19]]]";

    [Fact]
    public void Geojson_of_a_field_and_a_crowd()
    {
        var areas = Read("field.geojson", $$$"""
            {"type": "FeatureCollection", "features": [
              {"type": "Feature", "properties": {"name": "Field"}, "geometry": {"type": "Polygon", "coordinates": {{{Ring}}}}},
              {"type": "Feature", "properties": {"name": "Line", "kind": "crowd"}, "geometry": {"type": "Polygon", "coordinates": {{{Ring}}}}},
              {"type": "Feature", "properties": {"name": "Pad"}, "geometry": {"type": "Point", "coordinates": [-98.6, 44.2]}}]}
            """);
        Assert.Equal(["Field", "Line"], areas.Select(a => a.Name));
        Assert.Equal([null, AreaKind.Crowd], areas.Select(a => a.Kind));
        Assert.Equal([new(44.19, -98.61), new(44.19, -98.59), new(44.21, -98.59)], areas[0].Ring);
    }

    [Theory]
    [InlineData("{\"type\": \"Polygon\", \"coordinates\": {0}}")]
    [InlineData("{\"type\": \"MultiPolygon\", \"coordinates\": [{0}]}")]
    [InlineData("{\"type\": \"Feature\", \"properties\": null, \"geometry\": {\"type\": \"Polygon\", \"coordinates\": {0}}}")]
    public void A_bare_geometry_or_feature_is_the_field(string text) =>
        Assert.Null(Assert.Single(Read("field.json", text.Replace("{0}", Ring, StringComparison.Ordinal))).Kind);

    [Fact]
    public void Kml_of_a_field_and_a_road()
    {
        var areas = Read("field.kml", """
            <?xml version="1.0" encoding="UTF-8"?>
            <kml xmlns="http://www.opengis.net/kml/2.2"><Document>
              <Placemark><name>North field</name><Polygon><outerBoundaryIs><LinearRing><coordinates>
                -98.61,44.19,0 -98.59,44.19,0 -98.59,44.21,0 -98.61,44.19,0
              </coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark>
              <Placemark><name>Way</name><ExtendedData><Data name="kind"><value>road</value></Data></ExtendedData>
                <Polygon><outerBoundaryIs><LinearRing><coordinates>-98.61,44.19 -98.59,44.19 -98.59,44.21</coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark>
            </Document></kml>
            """);
        Assert.Equal([null, AreaKind.Road], areas.Select(a => a.Kind));
        Assert.Equal(areas[0].Ring, areas[1].Ring);
    }

    [Theory]
    [InlineData("field.txt", "anything")]
    [InlineData("field.geojson", "")]
    [InlineData("field.geojson", "[]")]
    [InlineData("field.geojson", "{\"type\": \"Polygon\", \"coordinates\": 3}")]
    [InlineData("field.geojson", "{\"type\": \"Polygon\", \"coordinates\": [[[0, 0]]]}")]
    [InlineData("field.geojson", "{\"type\": \"Point\", \"coordinates\": [1, 2]}")]
    [InlineData("field.geojson", "{\"type\": \"Polygon\", \"coordinates\": [[[500, 44], [501, 44], [501, 45], [500, 44]]]}")]
    [InlineData("field.geojson", "{\"type\": \"Whatever\"}")]
    [InlineData("field.geojson", "{\"type\": \"FeatureCollection\", \"features\": [7]}")]
    [InlineData("field.kml", "<kml><Placemark>")]
    [InlineData("field.kml", "<!DOCTYPE kml [<!ENTITY a \"b\">]><kml>&a;</kml>")]
    [InlineData("field.kml", "<!DOCTYPE kml SYSTEM \"file:///etc/passwd\"><kml/>")]
    [InlineData("field.kml", "<kml/>")]
    [InlineData("field.kml", "<kml><Placemark><Polygon><outerBoundaryIs><coordinates>1,2 3</coordinates></outerBoundaryIs></Polygon></Placemark></kml>")]
    [InlineData("field.kml", "<kml><Placemark><Polygon><outerBoundaryIs><coordinates>1,NaN 3,4 5,6</coordinates></outerBoundaryIs></Polygon></Placemark></kml>")]
    public void What_is_no_outline_is_a_problem_that_says_what_to_do(string name, string text)
    {
        List<Problem> problems = [];
        Assert.Empty(OutlineFile.Read(name, text, "site.boundary", problems));
        Assert.NotEmpty(problems);
        Assert.All(problems, p => Assert.NotEmpty(p.Suggestion));
    }

    [Fact]
    public void Depth_and_size_are_bounded()
    {
        foreach (var (name, text) in new[]
        {
            ("deep.kml", string.Concat(Enumerable.Repeat("<a>", 20_000)) + string.Concat(Enumerable.Repeat("</a>", 20_000))),
            ("deep.geojson", new string('[', 20_000)),
            ("many.geojson", "{\"type\": \"Polygon\", \"coordinates\": [[" + string.Join(",", Enumerable.Range(0, 30_000).Select(i => $"[{i % 100}, {i % 80}]")) + ", [0, 0]]]}"),
        })
        {
            List<Problem> problems = [];
            Assert.Empty(OutlineFile.Read(name, text, "site.boundary", problems));
            Assert.NotEmpty(problems);
        }
    }

    private static ValueList<PlacedArea> Read(string name, string text)
    {
        List<Problem> problems = [];
        var areas = OutlineFile.Read(name, text, "site.boundary", problems);
        Assert.Empty(problems);
        return areas;
    }
}
