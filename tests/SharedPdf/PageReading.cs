using System.Globalization;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Scribeline.Tests;

/// <summary>What stands on a page of a PDF, read back in millimetres from its upper left corner.</summary>
internal static class PageReading
{
    private const double Point = 25.4 / 72;

    /// <summary>Circles: outlines of one subpath made of curves alone, as wide as high.</summary>
    public static List<(double X, double Y, double Diameter)> Circles(Page page) =>
    [
        .. Subpaths(page).Where(s => s.Commands.Any(c => c is PdfSubpath.CubicBezierCurve) && !s.Commands.Any(c => c is PdfSubpath.Line))
            .Select(s => Bounds(page, s)).Where(b => Math.Abs(b.Right - b.Left - (b.Bottom - b.Top)) < 0.02)
            .Select(b => ((b.Left + b.Right) / 2, (b.Top + b.Bottom) / 2, b.Right - b.Left)),
    ];

    /// <summary>Straight lines from one point to another.</summary>
    public static List<(double X1, double Y1, double X2, double Y2)> Lines(Page page) =>
        [.. Subpaths(page).SelectMany(s => s.Commands.OfType<PdfSubpath.Line>()).Select(l => (X(l.From), Y(page, l.From), X(l.To), Y(page, l.To)))];

    /// <summary>Letters that cover letters of other lines, or stand off the page.</summary>
    public static List<string> Faults(Page page)
    {
        List<string> faults = [];
        var letters = page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).Select(l => (l.Value, Box: Box(page, l))).ToList();
        double wide = page.Width * Point, high = page.Height * Point;
        foreach (var (value, box) in letters.Where(l => l.Box.Left < 3 || l.Box.Top < 3 || l.Box.Right > wide - 3 || l.Box.Bottom > high - 3))
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"page {page.Number}: '{value}' at {box.Left:0.0}, {box.Top:0.0} mm is off the page"));

        // Sorted downwards, each letter needs comparing only with those that begin before it ends.
        var sorted = letters.OrderBy(l => l.Box.Top).ToList();
        for (var i = 0; i < sorted.Count; i++)
        {
            var a = sorted[i];
            for (var k = i + 1; k < sorted.Count && sorted[k].Box.Top < a.Box.Bottom; k++)
            {
                var b = sorted[k];
                var across = Math.Min(a.Box.Right, b.Box.Right) - Math.Max(a.Box.Left, b.Box.Left);
                var down = Math.Min(a.Box.Bottom, b.Box.Bottom) - Math.Max(a.Box.Top, b.Box.Top);
                if (across > 0.25 && down > 0.25)
                    faults.Add(string.Create(CultureInfo.InvariantCulture, $"page {page.Number}: '{a.Value}' and '{b.Value}' share {a.Box.Left:0.0}, {a.Box.Top:0.0} mm"));
            }
        }

        return faults;
    }

    // From the base line to the height of a lower-case letter and a little: enough to tell lines that run into one another.
    private static (double Left, double Top, double Right, double Bottom) Box(Page page, Letter letter)
    {
        PdfPoint from = letter.StartBaseLine, to = letter.EndBaseLine;
        double dx = (to.X - from.X) * Point, dy = -(to.Y - from.Y) * Point, length = Math.Max(Math.Sqrt((dx * dx) + (dy * dy)), 1e-9);
        double rise = letter.PointSize * Point * 0.6, upX = dy / length * rise, upY = -dx / length * rise;
        double x = X(from), y = Y(page, from);
        double[] xs = [x, x + dx, x + upX, x + dx + upX], ys = [y, y + dy, y + upY, y + dy + upY];
        return (xs.Min(), ys.Min(), xs.Max(), ys.Max());
    }

    private static IEnumerable<PdfSubpath> Subpaths(Page page) => page.Paths.Where(p => !p.IsClipping).SelectMany(p => p);

    private static (double Left, double Top, double Right, double Bottom) Bounds(Page page, PdfSubpath path)
    {
        var box = path.GetBoundingRectangle()!.Value;
        return (box.Left * Point, (page.Height - box.Top) * Point, box.Right * Point, (page.Height - box.Bottom) * Point);
    }

    private static double X(PdfPoint point) => point.X * Point;

    private static double Y(Page page, PdfPoint point) => (page.Height - point.Y) * Point;
}
