using System.Globalization;
using System.Xml.Linq;
using Scribeline.Engine.Questions;
using SkiaSharp;

namespace Scribeline.Drawing.Tests;

public class PlotDrawingTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Names => ExamplePlots.Names;

    [Theory, MemberData(nameof(Names))]
    public void Svg_needs_nothing_outside_itself(string name)
    {
        var root = XDocument.Parse(PlotDrawing.Svg(ExamplePlots.Named(name), new PlotStyle())).Root!;
        Assert.Empty(root.Descendants(Svg + "text"));
        Assert.Empty(root.Descendants(Svg + "image"));
        var outside = root.DescendantsAndSelf().Attributes().Where(a => !a.IsNamespaceDeclaration && a.Value.Contains("://", StringComparison.Ordinal));
        Assert.Empty(outside);
        Assert.Equal("0 0 900 500", root.Attribute("viewBox")!.Value);
        Assert.Equal(ExamplePlots.Named(name).Title, root.Element(Svg + "title")!.Value);
    }

    [Theory, MemberData(nameof(Names))]
    public void Same_plot_gives_the_same_bytes(string name)
    {
        var plot = ExamplePlots.Named(name);
        LookAt(name, plot);
        Assert.Equal(PlotDrawing.Svg(plot, new PlotStyle()), PlotDrawing.Svg(plot, new PlotStyle()));
        Assert.Equal(PlotDrawing.Png(plot, new PlotStyle(Dark: true)), PlotDrawing.Png(plot, new PlotStyle(Dark: true)));
    }

    [Fact]
    public void The_line_goes_where_the_values_say()
    {
        // The greatest height of the example is v²/2g = 2039.4 m at v/g = 20.394 s, half way across; the line must touch that pixel.
        using var picture = SKBitmap.Decode(PlotDrawing.Png(ExamplePlots.Height, new PlotStyle(), 1));
        var top = Enumerable.Range(0, picture.Height).First(y => Enumerable.Range(90, 780).Any(x => IsAccent(picture.GetPixel(x, y))));
        var columns = Enumerable.Range(90, 780).Where(x => IsAccent(picture.GetPixel(x, top + 1))).ToList();
        var middle = (columns[0] + columns[^1]) / 2.0;
        Assert.InRange(middle, (86 + 878) / 2.0 - 2, (86 + 878) / 2.0 + 2);
    }

    [Fact]
    public void A_line_breaks_where_nothing_is_known()
    {
        var broken = ExamplePlots.Margins with { Series = [ExamplePlots.Margins.Series[2]], Bound = null };
        var whole = broken with { Series = [broken.Series[0] with { Y = [.. broken.Series[0].Y.Select(y => double.IsNaN(y) ? 0 : y)] }] };
        Assert.Equal(AccentPaths(whole) + 1, AccentPaths(broken));

        static int AccentPaths(Plot plot) => XDocument.Parse(PlotDrawing.Svg(plot, new PlotStyle())).Root!.Descendants(Svg + "path")
            .Count(p => string.Equals(p.Attribute("stroke")?.Value, "#1B3A8A", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Every_pixel_of_text_has_enough_contrast_with_its_ground()
    {
        // WCAG 2.2, success criterion 1.4.3: at least 4.5 to 1 for text.
        foreach (var ink in new[] { Ink.Light, Ink.Dark })
        {
            foreach (var colour in new[] { ink.Line, ink.Quiet, ink.Accent }) Assert.True(Contrast(colour, ink.Paper) >= 4.5);
        }
    }

    private static bool IsAccent(SKColor c) => c.Blue > c.Red + 60;

    private static double Contrast(SKColor a, SKColor b)
    {
        var (light, dark) = (Math.Max(Luminance(a), Luminance(b)), Math.Min(Luminance(a), Luminance(b)));
        return (light + 0.05) / (dark + 0.05);

        // WCAG 2.2, definition of relative luminance.
        static double Luminance(SKColor c) => (0.2126 * Linear(c.Red)) + (0.7152 * Linear(c.Green)) + (0.0722 * Linear(c.Blue));
        static double Linear(byte v) => v / 255.0 <= 0.04045 ? v / 255.0 / 12.92 : Math.Pow(((v / 255.0) + 0.055) / 1.055, 2.4);
    }

    // With SCRIBELINE_PICTURES set to a folder, the pictures are left there to be looked at.
    private static void LookAt(string name, Plot plot)
    {
        if (Environment.GetEnvironmentVariable("SCRIBELINE_PICTURES") is not { Length: > 0 } folder) return;
        foreach (var style in new[] { new PlotStyle(), new PlotStyle(Dark: true, Inch: true) })
        {
            var file = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{name}-{(style.Dark ? "dark" : "light")}"));
            File.WriteAllBytes(file + ".png", PlotDrawing.Png(plot, style, 1));
            File.WriteAllText(file + ".svg", PlotDrawing.Svg(plot, style));
        }
    }
}
