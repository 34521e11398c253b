using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Range;

namespace Scribeline.Store.Tests;

/// <summary>What is written for other programs reads back where it was.</summary>
public sealed class LandingExportTests
{
    private const double Degree = Math.PI / 180;

    private static readonly LandingPlane Plane = new(44.2 * Degree, -98.6 * Degree, 400);

    private static readonly LandingEllipse Ellipse = new(new(300, -200), 150, 60, 1.1, 0.95);

    private static readonly GroundMap Map = new(
        "Landings as planned", [new(-900, -900), new(1000, -900), new(0, 1200)], [new("Line & <people>", true, new([new(-90, 0), new(-60, 0), new(-60, 50)]))],
        [new("as planned", [new(310, -190), new(280, -230)], [Ellipse])], (4, 4), Plane);

    [Theory]
    [InlineData("landings.geojson")]
    [InlineData("landings.kml")]
    public void It_reads_back_to_a_centimetre(string name)
    {
        List<Problem> problems = [];
        var text = name.EndsWith("kml", StringComparison.Ordinal) ? LandingExport.KmlText(Map)! : LandingExport.GeoJson(Map)!;
        var areas = OutlineFile.Read(name, text, "site.boundary", problems);
        Assert.Empty(problems);
        Assert.Equal(["field", "Line & <people>", "as planned, 95 % ellipse"], areas.Select(a => a.Name));
        Assert.Null(areas[0].Kind);
        Near(Map.Field, areas[0].Ring.Select(Local));
        Near(Ellipse.Outline(), areas[2].Ring.Select(Local));
    }

    [Fact]
    public void Without_the_place_of_the_pad_there_is_nothing_to_write()
    {
        Assert.Null(LandingExport.GeoJson(Map with { Plane = null }));
        Assert.Null(LandingExport.KmlText(Map with { Plane = null }));
    }

    private static LandingPoint Local(Engine.Design.PlacedCorner corner) => Plane.ToPlane(corner.Latitude * Degree, corner.Longitude * Degree);

    private static void Near(IEnumerable<LandingPoint> expected, IEnumerable<LandingPoint> read) => Assert.All(expected.Zip(read, (e, r) => (e, r)), pair =>
    {
        Assert.Equal(pair.e.East, pair.r.East, 0.01);
        Assert.Equal(pair.e.North, pair.r.North, 0.01);
    });
}
