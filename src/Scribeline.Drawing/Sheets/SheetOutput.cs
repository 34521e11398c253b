using System.Globalization;
using System.Text;
using SkiaSharp;

namespace Scribeline.Drawing.Sheets;

/// <summary>Sheets as files. The same sheets and facts give the same bytes.</summary>
internal static class SheetOutput
{
    private const float PointsPerMillimetre = 72 / 25.4f;

    // At this setting the page has the true size of the paper, to a thousandth of a point.
    private const float RasterDpi = 1270;

    // Nothing of the day the file is made may be in it.
    private static readonly DateTime Epoch = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>All sheets as one PDF, with bookmarks.</summary>
    public static byte[] Pdf(IReadOnlyList<Sheet> sheets, SheetFacts facts, string title)
    {
        using var stream = new MemoryStream();
        List<OutlineEntry> entries = [];
        var metadata = new SKDocumentPdfMetadata(RasterDpi)
        {
            Title = title,
            Subject = $"design {facts.Fingerprint}",
            Creator = $"scribeline {facts.Version}",
            Producer = $"scribeline {facts.Version}",
            Creation = Epoch,
            Modified = Epoch,
        };
        using (var document = SKDocument.CreatePdf(stream, metadata))
        {
            for (var i = 0; i < sheets.Count; i++)
            {
                var sheet = sheets[i];
                var canvas = document.BeginPage((float)(sheet.Paper.Width * PointsPerMillimetre), (float)(sheet.Paper.Height * PointsPerMillimetre));
                canvas.Scale(PointsPerMillimetre);
                foreach (var mark in sheet.Bookmarks)
                {
                    var name = string.Create(CultureInfo.InvariantCulture, $"b{entries.Count}");
                    canvas.DrawNamedDestinationAnnotation(new SKPoint(0, (float)mark.Y), name);
                    entries.Add(new(mark.Name, name, mark.Depth));
                }

                DrawOn(canvas, sheet, facts, i + 1, sheets.Count);
                document.EndPage();
            }

            document.Close();
        }

        return PdfOutline.AddTo(stream.ToArray(), entries);
    }

    /// <summary>One sheet as SVG of its true size; letters are outlines.</summary>
    public static string Svg(Sheet sheet, SheetFacts facts)
    {
        using var stream = new MemoryStream();
        using (var canvas = SKSvgCanvas.Create(new SKRect(0, 0, (float)sheet.Paper.Width, (float)sheet.Paper.Height), stream))
        {
            DrawOn(canvas, sheet, facts, null, 1);
        }

        return OutlinedSvg.InMillimetres(Encoding.UTF8.GetString(stream.ToArray()), sheet.Title, $"{facts.Design}: {sheet.Title}", sheet.Paper.Width, sheet.Paper.Height);
    }

    /// <summary>One sheet as PNG on pale paper.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="facts">At its foot.</param>
    /// <param name="dotsPerInch">Pixels per inch of paper.</param>
    public static byte[] Png(Sheet sheet, SheetFacts facts, double dotsPerInch = 200)
    {
        var scale = dotsPerInch / 25.4;
        using var surface = SKSurface.Create(new SKImageInfo((int)Math.Round(sheet.Paper.Width * scale), (int)Math.Round(sheet.Paper.Height * scale)));
        surface.Canvas.Clear(Ink.Light.Paper);
        surface.Canvas.Scale((float)scale);
        DrawOn(surface.Canvas, sheet, facts, null, 1);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private static void DrawOn(SKCanvas canvas, Sheet sheet, SheetFacts facts, int? page, int pages)
    {
        var pen = new Pen(canvas);
        sheet.Draw(pen);
        TitleStrip.Draw(pen, sheet, facts, page, pages);
    }
}
