using Scribeline.Drawing.Sheets;

namespace Scribeline.Drawing.Templates;

/// <summary>How a template that is larger than a sheet is cut into windows that overlap.</summary>
/// <param name="Width">Of a window, mm.</param>
/// <param name="Height">Of a window, mm.</param>
/// <param name="Columns">Windows side by side.</param>
/// <param name="Rows">Windows one beneath the other.</param>
internal sealed record Tiling(double Width, double Height, int Columns, int Rows)
{
    /// <summary>Paper that neighbours share, mm.</summary>
    public const double Overlap = 1000 * Engine.Shop.Sheet.Overlap;

    // Half of a cross with its letter, and a little room, mm.
    private const double Reach = 4.5;

    /// <summary>How many windows.</summary>
    public int Count => Columns * Rows;

    /// <summary>Least number of windows: ceil((L - o)/(w - o)) each way.</summary>
    public static Tiling Of(double length, double height, double windowWidth, double windowHeight) =>
        new(windowWidth, windowHeight, Steps(length, windowWidth), Steps(height, windowHeight));

    /// <summary>Left edge of a column in the template, mm.</summary>
    public double Left(int column) => column * (Width - Overlap);

    /// <summary>Upper edge of a row in the template, mm.</summary>
    public double Top(int row) => row * (Height - Overlap);

    /// <summary>
    /// Crosses in the overlaps, at the same place of the template on both sheets that share them: two to a seam, as far apart as there is paper
    /// that is not written on, or one where there is hardly any.
    /// </summary>
    /// <param name="template">What is cut into windows.</param>
    public IEnumerable<(string Name, double X, double Y)> Crosses(Template template)
    {
        List<(double X, double Y)> found = [];
        for (var row = 0; row < Rows; row++)
        {
            double top = Top(row), bottom = Math.Min(template.Height, top + Height);
            for (var column = 1; column < Columns; column++)
            {
                var x = Left(column) + (Overlap / 2);
                found.AddRange(Ends(top, bottom, y => IsFree(template, x, y)).Select(y => (x, y)));
            }
        }

        for (var row = 1; row < Rows; row++)
        {
            var y = Top(row) + (Overlap / 2);
            for (var column = 0; column < Columns; column++)
            {
                double left = Left(column), right = Math.Min(template.Width, left + Width);
                found.AddRange(Ends(left, right, x => IsFree(template, x, y)).Select(x => (x, y)));
            }
        }

        return found.Select((f, i) => (Name(i), f.X, f.Y));
    }

    // From either end inwards to the first free place; at the customary one where none is free. Where the paper between is written on, one
    // cross stands alone, and the edges of what is cut align the rest.
    private static IEnumerable<double> Ends(double from, double to, Func<double, bool> free)
    {
        double inset = Math.Min(14, (to - from) / 5), step = Math.Max((to - from) / 40, 0.5);
        var places = Enumerable.Range(0, (int)((to - from - (2 * inset)) / step) + 1).Select(i => from + inset + (i * step)).Where(free).ToList();
        if (places.Count == 0) yield return from + inset;
        else yield return places[0];
        if (places.Count > 0 && places[^1] - places[0] > 2 * Reach) yield return places[^1];
    }

    private static bool IsFree(Template template, double x, double y)
    {
        return !template.Words.Any(w =>
        {
            var letters = w.Strong ? Lettering.SmallStrong : Lettering.Small;
            double wide = letters.Width(w.Words), tall = letters.Size;
            var (left, top, right, bottom) = w.Turn == 0 ? (w.X, w.Y - tall, w.X + wide, w.Y) : (w.X - tall, w.Y - wide, w.X, w.Y);
            return x + Reach > left && x - Reach < right && y + Reach > top && y - Reach < bottom;
        }) && !template.Lines.OfType<RoundLine>().Any(c => Math.Abs(c.X - x) < c.Radius + Reach && Math.Abs(c.Y - y) < c.Radius + Reach);
    }

    private static string Name(int number) => ((char)('a' + (number % 26))).ToString();

    private static int Steps(double length, double window) => length <= window ? 1 : (int)Math.Ceiling((length - Overlap) / (window - Overlap) - 1e-9);
}
