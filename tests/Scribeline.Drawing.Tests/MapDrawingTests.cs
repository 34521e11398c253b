using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Range;
using SkiaSharp;

namespace Scribeline.Drawing.Tests;

public partial class MapDrawingTests
{
    private static readonly LandingArea Square = new([new(-400, -300), new(600, -300), new(600, 700), new(-400, 700)]);

    private static readonly GroundMap Map = new(
        "Landings as planned", Square.Corners, [new("Spectators", true, new([new(-200, -100), new(-100, -100), new(-100, 100), new(-200, 100)]))],
        [
            new("as planned", [.. Enumerable.Range(0, 100).Select(i => new LandingPoint(200 + (7 * (i % 10)), 100 + (5 * (i / 10))))], [new(new(230, 125), 40, 20, 1, 0.5), new(new(230, 125), 83, 42, 1, 0.95)]),
            new("main at apogee", [new(500, 300), new(520, 310)], [new(new(510, 305), 20, 5, 1, 0.95)]),
        ],
        (4.2, 4.4), null);

    [Theory]
    [InlineData(900, 900)]
    [InlineData(640, 640)]
    [InlineData(360, 440)]
    public void The_drawing_stands_alone_and_is_true_to_scale(int width, int height)
    {
        var root = XDocument.Parse(MapDrawing.Svg(Map, new PlotStyle(Width: width, Height: height))).Root!;
        Assert.Equal(Map.Title, root.Element(root.Name.Namespace + "title")!.Value);
        Assert.DoesNotContain("http", root.ToString().Replace("http://www.w3.org/", "", StringComparison.Ordinal), StringComparison.Ordinal);

        // The outline, a kilometre square, is the widest closed path of straight lines: as high as wide, and inside the sheet.
        var rings = root.Descendants().Select(e => (string?)e.Attribute("d")).OfType<string>().Where(d => !d.Contains('Q', StringComparison.Ordinal) && !d.Contains('C', StringComparison.Ordinal))
            .Select(d => Number().Matches(d).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture)).ToArray()).Where(n => n.Length >= 8 && n.Length % 2 == 0).ToList();
        var widest = rings.MaxBy(n => n.Where((_, i) => i % 2 == 0).Max() - n.Where((_, i) => i % 2 == 0).Min())!;
        double[] x = [.. widest.Where((_, i) => i % 2 == 0)], y = [.. widest.Where((_, i) => i % 2 == 1)];
        Assert.Equal(x.Max() - x.Min(), y.Max() - y.Min(), 0.1);
        Assert.True(x.Min() >= 0 && x.Max() <= width && y.Min() >= 0 && y.Max() <= height);
    }

    [Fact]
    public void The_same_map_gives_the_same_bytes_and_a_picture_with_ink_on_it()
    {
        Assert.Equal(MapDrawing.Svg(Map, new PlotStyle()), MapDrawing.Svg(Map, new PlotStyle()));
        using var picture = SKBitmap.Decode(MapDrawing.Png(Map, new PlotStyle(Width: 400, Height: 400), 1));
        Assert.Equal(400, picture.Width);
        Assert.True(picture.Pixels.Distinct().Count() > 20);
    }

    [Fact]
    public void Nothing_to_show_but_the_pad_is_drawn_too() =>
        Assert.Contains("<svg", MapDrawing.Svg(new GroundMap("Nothing", [], [], [], (0, 0), null), new PlotStyle()), StringComparison.Ordinal);

    [GeneratedRegex(@"-?\d+(\.\d+)?(e-?\d+)?")]
    private static partial Regex Number();
}
