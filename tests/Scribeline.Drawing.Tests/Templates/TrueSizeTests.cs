using System.Globalization;
using System.Xml.Linq;
using Scribeline.Drawing.Sheets;
using Scribeline.Drawing.Templates;
using Scribeline.Tests;
using SkiaSharp;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Scribeline.Drawing.Tests.Templates;

/// <summary>What is printed is as large as it says: read back from the files, against the strip's own geometry π (D + t).</summary>
public class TrueSizeTests
{
    public static TheoryData<string> Papers => ["a4", "letter"];

    [Theory, MemberData(nameof(Papers))]
    public void A_page_has_the_true_size_of_its_paper(string name)
    {
        // ISO 216 and 8-1/2 by 11 inches; a lying sheet is turned. PDF counts 72 points to the inch of 25.4 mm.
        var (short_, long_) = name == "a4" ? (210.0, 297.0) : (215.9, 279.4);
        using var pdf = Open(WrapDrawing.Of(SampleStrips.Strip(), false), name);
        var page = pdf.GetPage(1);
        Assert.Equal(long_, page.Width * 25.4 / 72, 1e-3);
        Assert.Equal(short_, page.Height * 25.4 / 72, 1e-3);
    }

    [Theory, MemberData(nameof(Papers))]
    public void The_scale_bars_measure_what_they_say(string name)
    {
        using var pdf = Open(WrapDrawing.Of(SampleStrips.Strip(), false), name);
        var lines = PageReading.Lines(pdf.GetPage(1));

        // The bar across is the one horizontal line of 4 inches; its long millimetre ticks stand on it.
        var bar = lines.Single(l => Math.Abs(l.Y1 - l.Y2) < 1e-6 && Math.Abs(Math.Abs(l.X2 - l.X1) - 101.6) < 0.05);
        var ticks = lines.Where(l => Math.Abs(l.X1 - l.X2) < 1e-6 && Math.Abs(l.Y1 - bar.Y1) < 0.01 && l.Y2 < bar.Y1 - 3).Select(l => l.X1).Order().ToList();
        Assert.Equal(3, ticks.Count);
        Assert.Equal(50, ticks[1] - ticks[0], 1e-3);
        Assert.Equal(100, ticks[2] - ticks[0], 1e-3);
        var upright = lines.Where(l => Math.Abs(l.X1 - l.X2) < 1e-6 && Math.Abs(l.X1 - 6.5) < 0.01).Max(l => Math.Abs(l.Y2 - l.Y1));
        Assert.Equal(100, upright, 1e-3);
    }

    [Fact]
    public void Holes_lie_where_the_strip_puts_them_over_its_whole_length()
    {
        var strip = SampleStrips.Strip();
        using var pdf = Open(WrapDrawing.Of(strip, false), "a4");
        var circles = PageReading.Circles(pdf.GetPage(1)).Where(c => Math.Abs(c.Diameter - 2.4) < 0.01).OrderBy(c => c.X).ToList();

        // The hole on the scribe line shows at both ends of the strip: first and last circle are one turn of paper apart.
        Assert.Equal(5, circles.Count);
        Assert.Equal(Math.PI * (79.2 + 0.1), circles[^1].X - circles[0].X, 1e-3);
        var expected = new[] { (0, 20.0), (45, 25.5), (200, 20), (345, 40) };
        foreach (var ((degrees, down), circle) in expected.Zip(circles))
        {
            Assert.Equal(degrees / 360.0 * Math.PI * 79.3, circle.X - circles[0].X, 1e-3);
            Assert.Equal(down - 20, circle.Y - circles[0].Y, 1e-3);
        }
    }

    [Fact]
    public void Drawing_and_cutting_files_agree_with_the_print()
    {
        var template = WrapDrawing.Of(SampleStrips.Strip(), false);
        using var pdf = Open(template, "a4");
        var printed = PageReading.Circles(pdf.GetPage(1)).Where(c => Math.Abs(c.Diameter - 2.4) < 0.01).OrderBy(c => c.X).ThenBy(c => c.Y).ToList();
        var drawn = SvgCircles(TemplateOutput.Svg(template, SampleStrips.Facts)).OrderBy(c => c.X).ThenBy(c => c.Y).ToList();
        var cut = DxfCircles(DxfText.Of(template)).OrderBy(c => c.X).ThenBy(c => -c.Y).ToList();
        Assert.Equal(printed.Count, drawn.Count);
        Assert.Equal(printed.Count, cut.Count);
        for (var i = 0; i < printed.Count; i++)
        {
            Assert.Equal(printed[i].X - printed[0].X, drawn[i].X - drawn[0].X, 0.005);
            Assert.Equal(printed[i].Y - printed[0].Y, drawn[i].Y - drawn[0].Y, 0.005);
            Assert.Equal(printed[i].X - printed[0].X, cut[i].X - cut[0].X, 0.005);
            Assert.Equal(printed[i].Y - printed[0].Y, cut[0].Y - cut[i].Y, 0.005);
            Assert.Equal(2.4, drawn[i].Diameter, 0.005);
            Assert.Equal(2.4, cut[i].Diameter, 1e-6);
        }
    }

    [Fact]
    public void A_picture_of_the_sheet_measures_the_same()
    {
        // 600 dots to the inch: a pixel is 0.042 mm. The row just above the bar crosses its long ticks only at 0, 50 and 100.
        var sheet = TemplateSheets.Of([WrapDrawing.Of(SampleStrips.Strip(), false)], Paper.A4)[0];
        using var picture = SKBitmap.Decode(SheetOutput.Png(sheet, SampleStrips.Facts, 600));
        const double Pixel = 25.4 / 600;
        var row = (int)((sheet.Paper.Height - TitleStrip.Height - 7 - 2.8) / Pixel);
        var dark = Enumerable.Range((int)(11 / Pixel), (int)(105 / Pixel)).Where(x => picture.GetPixel(x, row).Green < 128).ToList();
        var (first, last) = (Middle(dark.TakeWhile((x, i) => x == dark[0] + i)), Middle(Enumerable.Reverse(dark).TakeWhile((x, i) => x == dark[^1] - i)));
        Assert.Equal(100, (last - first) * Pixel, 0.05);
        Assert.Equal(12, first * Pixel, 0.1);

        static double Middle(IEnumerable<int> pixels) => pixels.Average() + 0.5;
    }

    [Fact]
    public void Plates_keep_their_outline_and_holes()
    {
        var template = PlateDrawing.Of(SampleStrips.Plate, SampleStrips.PlateHoles, false);
        using var pdf = Open(template, "a4");
        var circles = PageReading.Circles(pdf.GetPage(1));
        var plate = circles.Single(c => Math.Abs(c.Diameter - 76) < 0.01);
        var holes = circles.Where(c => Math.Abs(c.Diameter - 7.1) < 0.01).OrderBy(c => c.X).ToList();

        // From the forward face with the scribe line up, clock angles run counter-clockwise: 90 degrees lies to the left.
        Assert.Equal(-22.2, holes[0].X - plate.X, 1e-3);
        Assert.Equal(22.2, holes[1].X - plate.X, 1e-3);
        Assert.Equal(0, holes[0].Y - plate.Y, 1e-3);
        var cup = circles.Single(c => Math.Abs(c.Diameter - 16) < 0.01);
        Assert.Equal((-12, -18), (cup.X - plate.X, cup.Y - plate.Y), (a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) < 2e-3);
    }

    // ceil((L - o)/(w - o)) with margins and overlap of 10 mm and a tab of 15 mm, worked by hand for A4 and Letter, lying and upright.
    [Theory]
    [InlineData(152, 297, 2)]
    [InlineData(152, 210, 3)]
    [InlineData(152, 279.4, 2)]
    [InlineData(152, 215.9, 3)]
    [InlineData(75, 297, 1)]
    [InlineData(75, 210, 2)]
    public void As_few_sheets_as_the_tube_needs(double tube, double paper, int sheets) =>
        Assert.Equal(sheets, Tiling.Of((Math.PI * tube) + 15, 50, paper - 20, 200).Columns);

    [Fact]
    public void Register_marks_lie_on_the_same_place_of_both_sheets()
    {
        var template = WrapDrawing.Of(SampleStrips.Strip(0.1565, 0.150), false);
        using var pdf = Open(template, "a4");
        Assert.Equal(2, pdf.NumberOfPages);
        var first = Registers(pdf.GetPage(1));
        var second = Registers(pdf.GetPage(2));
        Assert.Equal(2, first.Count);
        Assert.Equal(2, second.Count);

        // The second window begins one window less the overlap farther right: 277 - 10 mm.
        Assert.All(first.Zip(second), pair =>
        {
            Assert.Equal(pair.First.X - 267, pair.Second.X, 1e-3);
            Assert.Equal(pair.First.Y, pair.Second.Y, 1e-3);
        });
        Assert.True(Math.Abs(first[0].Y - first[1].Y) >= 100);

        static List<(double X, double Y, double Diameter)> Registers(Page page) => [.. PageReading.Circles(page).Where(c => Math.Abs(c.Diameter - 3.2) < 0.01).OrderBy(c => c.Y)];
    }

    [Theory, MemberData(nameof(Papers))]
    public void No_words_cover_one_another_or_leave_the_page(string name)
    {
        var templates = new[] { WrapDrawing.Of(SampleStrips.Strip(), true), WrapDrawing.Of(SampleStrips.Strip(0.1565, 0.3), true), PlateDrawing.Of(SampleStrips.Plate, SampleStrips.PlateHoles, true) };
        using var pdf = PdfDocument.Open(TemplateOutput.Pdf(templates, Paper.Named(name)!, SampleStrips.Facts));
        Assert.All(pdf.GetPages(), page => Assert.Empty(PageReading.Faults(page)));
    }

    [Fact]
    public void The_same_templates_give_the_same_bytes()
    {
        var template = WrapDrawing.Of(SampleStrips.Strip(), false);
        Assert.Equal(TemplateOutput.Pdf([template], Paper.A4, SampleStrips.Facts), TemplateOutput.Pdf([template], Paper.A4, SampleStrips.Facts));
        Assert.Equal(TemplateOutput.Svg(template, SampleStrips.Facts), TemplateOutput.Svg(template, SampleStrips.Facts));
        Assert.Equal(TemplateOutput.Png(template, SampleStrips.Facts), TemplateOutput.Png(template, SampleStrips.Facts));
    }

    private static PdfDocument Open(Template template, string paper) => PdfDocument.Open(TemplateOutput.Pdf([template], Paper.Named(paper)!, SampleStrips.Facts));

    private static IEnumerable<(double X, double Y, double Diameter)> SvgCircles(string svg)
    {
        var root = XDocument.Parse(svg).Root!;
        foreach (var circle in root.Descendants().Where(e => e.Name.LocalName is "circle" or "ellipse"))
        {
            var diameter = 2 * Number(circle.Attribute("r") ?? circle.Attribute("rx")!);
            if (Math.Abs(diameter - 2.4) > 0.01) continue;
            var (dx, dy) = Moved(circle);
            yield return (Number(circle.Attribute("cx")!) + dx, Number(circle.Attribute("cy")!) + dy, diameter);
        }

        static double Number(XAttribute attribute) => double.Parse(attribute.Value, CultureInfo.InvariantCulture);
    }

    private static (double X, double Y) Moved(XElement element)
    {
        if (element.Attribute("transform")?.Value is not { } text || !text.StartsWith("translate(", StringComparison.Ordinal)) return (0, 0);
        var numbers = text[10..text.IndexOf(')', StringComparison.Ordinal)].Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToList();
        return (numbers[0], numbers.Count > 1 ? numbers[1] : 0);
    }

    private static IEnumerable<(double X, double Y, double Diameter)> DxfCircles(string dxf)
    {
        var lines = dxf.Split('\n');
        for (var i = 0; i + 1 < lines.Length; i += 2)
        {
            if (lines[i].Trim() != "0" || lines[i + 1] != "CIRCLE") continue;
            Dictionary<string, double> codes = [];
            for (var k = i + 2; lines[k].Trim() != "0"; k += 2)
            {
                if (double.TryParse(lines[k + 1], CultureInfo.InvariantCulture, out var value)) codes[lines[k].Trim()] = value;
            }

            if (Math.Abs((2 * codes["40"]) - 2.4) < 0.01) yield return (codes["10"], codes["20"], 2 * codes["40"]);
        }
    }
}
