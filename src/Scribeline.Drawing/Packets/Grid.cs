using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Questions;
using SkiaSharp;

namespace Scribeline.Drawing.Packets;

/// <summary>A column of a table.</summary>
/// <param name="Name">At its head.</param>
/// <param name="Right">Whether its cells stand flush right, as figures do.</param>
/// <param name="Share">Share of the room that is over, for columns of words; 0 for a column as wide as its widest cell.</param>
internal sealed record GridColumn(string Name, bool Right = false, double Share = 0);

/// <summary>A row of a table: a verdict's shape, and cells.</summary>
/// <param name="Cells">One for each column.</param>
/// <param name="Sign">Shape before the row; null for none.</param>
/// <param name="Strong">Index of the column that stands out; -1 for none.</param>
internal sealed record GridRow(IReadOnlyList<string> Cells, Verdict? Sign = null, int Strong = -1);

/// <summary>A table whose columns of figures are as wide as they need and whose columns of words share the rest; it breaks between rows.</summary>
internal static class Grid
{
    private const double Between = 3.5, Padding = 0.55;

    /// <summary>The rows as blocks, heads repeated on every page.</summary>
    /// <param name="columns">Columns.</param>
    /// <param name="rows">Rows.</param>
    /// <param name="width">Of the page, mm.</param>
    /// <param name="lettering">null for small.</param>
    /// <param name="ruled">Whether a thin line stands beneath each row.</param>
    public static IEnumerable<Block> Rows(IReadOnlyList<GridColumn> columns, IReadOnlyList<GridRow> rows, double width, Lettering? lettering = null, bool ruled = false)
    {
        var letters = lettering ?? Lettering.Small;
        var signs = rows.Any(r => r.Sign is not null) ? VerdictSign.Room : 0;
        var widths = Widths(columns, rows, width - signs, letters);
        var named = columns.Any(c => c.Name.Length > 0);
        Line? heads = named ? new Line(columns, widths, signs, new([.. columns.Select(c => c.Name)]), letters, quiet: true, ruled: true) { KeepWithNext = true, Above = 0.8 } : null;
        if (heads is not null && rows.Count > 0) yield return heads;
        for (var i = 0; i < rows.Count; i++) yield return new Line(columns, widths, signs, rows[i], letters, quiet: false, ruled) { Heads = heads };
    }

    private static double[] Widths(IReadOnlyList<GridColumn> columns, IReadOnlyList<GridRow> rows, double width, Lettering letters)
    {
        var strong = letters with { SemiBold = true };
        var natural = columns.Select((c, i) => rows.Select(r => (r.Strong == i ? strong : letters).Width(r.Cells[i])).Append(letters.Width(c.Name)).Max() + 0.3).ToArray();
        var room = width - (Between * (columns.Count - 1));
        if (natural.Sum() <= room && columns.All(c => c.Share == 0)) return natural;
        var shares = columns.Sum(c => c.Share);
        var rest = room - natural.Where((_, i) => columns[i].Share == 0).Sum();
        if (shares == 0 || rest < 12 * columns.Count(c => c.Share > 0))
        {
            // Nothing to give way, or too little: every column gives way in proportion, none below a few letters.
            var total = natural.Sum(n => Math.Min(n, room / 2));
            return [.. natural.Select(n => Math.Min(n, room / 2) / total * room)];
        }

        // A column of words takes no more than it needs; what it leaves goes to the others.
        var widths = natural.ToArray();
        var open = Enumerable.Range(0, columns.Count).Where(i => columns[i].Share > 0).ToList();
        while (open.Count > 0)
        {
            var sum = open.Sum(i => columns[i].Share);
            var content = open.Where(i => natural[i] <= rest * columns[i].Share / sum).ToList();
            if (content.Count == 0)
            {
                foreach (var i in open) widths[i] = rest * columns[i].Share / sum;
                break;
            }

            foreach (var i in content) rest -= natural[i];
            open.RemoveAll(content.Contains);
        }

        return widths;
    }

    private sealed class Line(IReadOnlyList<GridColumn> columns, double[] widths, double signs, GridRow row, Lettering letters, bool quiet, bool ruled) : Block
    {
        private Lettering Of(int column) => row.Strong == column ? letters with { SemiBold = true } : letters;

        public override double Height(double width) =>
            (Enumerable.Range(0, columns.Count).Max(i => Of(i).Wrap(row.Cells[i], widths[i]).Count) * letters.Leading) + (2 * Padding);

        public override void Draw(Pen pen, double x, double y, double width)
        {
            var left = x + signs;
            if (row.Sign is { } verdict) VerdictSign.Draw(pen, verdict, x + 0.3, y + Padding + letters.Size, Math.Min(2.2, letters.Size * 0.85));
            for (var i = 0; i < columns.Count; i++)
            {
                var lines = Of(i).Wrap(row.Cells[i], widths[i]);
                for (var k = 0; k < lines.Count; k++)
                {
                    var (at, align) = columns[i].Right ? (left + widths[i], SKTextAlign.Right) : (left, SKTextAlign.Left);
                    pen.Words(lines[k], at, y + Padding + letters.Size + (k * letters.Leading), Of(i), quiet ? Ink.Light.Quiet : null, align);
                }

                left += widths[i] + Between;
            }

            if (ruled) pen.Line(x, y + Height(width), x + signs + widths.Sum() + (Between * (columns.Count - 1)), y + Height(width), Stroke.Faint);
        }
    }
}
