using System.Globalization;
using Scribeline.Drawing.Sheets;

namespace Scribeline.Drawing.Templates;

/// <summary>Puts templates on sheets at true size: several small ones on one, a large one over several that overlap.</summary>
internal sealed class TemplateSheets
{
    private const double Side = 10, Top = 10, HeadingRoom = 8, Gap = 8;

    private readonly Paper paper;
    private readonly List<Sheet> sheets = [];

    private TemplateSheets(Paper paper) => this.paper = paper;

    /// <summary>Greatest width of a template that fits the paper upright, mm.</summary>
    public static double Widest(Paper paper) => paper.Width - (2 * Side);

    /// <summary>Sheets for templates.</summary>
    /// <param name="templates">In order.</param>
    /// <param name="paper">Size of paper, upright.</param>
    public static IReadOnlyList<Sheet> Of(IEnumerable<Template> templates, Paper paper)
    {
        var set = new TemplateSheets(paper);
        List<Template> small = [];
        List<Piece> lying = [], upright = [];
        foreach (var template in templates)
        {
            if (template.Width <= Widest(paper) / 2 && template.Height <= 110) small.Add(template);
            else if (Tiled(template, paper) is { Count: 1 } whole) upright.AddRange(Pieces(template, whole));
            else if (Tiled(template, paper.Turned()) is { Rows: 1 } row) lying.AddRange(Pieces(template, row));
            else set.Large(template);
        }

        set.Stacked(lying, paper.Turned());
        set.Stacked(upright, paper);
        set.Small(small);
        return set.sheets;
    }

    // A sheet the size of the template, for files of its own.
    public static Sheet Alone(Template template)
    {
        double width = Math.Max(template.Width + (2 * Side), 190), foot = TitleStrip.Height + ScaleBars.Room;
        var facts = FactLines(template, width - (2 * Side));
        var height = Math.Max(Top + HeadingRoom + template.Height + Gap + (facts.Count * Lettering.Small.Leading) + foot, 150);
        Paper own = new("sheet of its own", Math.Ceiling(width), Math.Ceiling(height));
        return new(own, template.Title, pen =>
        {
            Heading(pen, template.Title, own);
            pen.Within(Side - 1, Top + HeadingRoom - 1, template.Width + 2, template.Height + 2, Side, Top + HeadingRoom, () => TemplatePainter.Draw(pen, template));
            Facts(pen, facts, Side, Top + HeadingRoom + template.Height + Gap);
            ScaleBars.Draw(pen, own);
        });
    }

    // A page for each window.
    private void Large(Template template)
    {
        var upright = Tiled(template, paper);
        var lying = Tiled(template, paper.Turned());
        var (on, tiling) = lying.Count < upright.Count || (lying.Count == upright.Count && template.Width > template.Height) ? (paper.Turned(), lying) : (paper, upright);
        foreach (var piece in Pieces(template, tiling)) Stacked([piece], on);
    }

    private static IEnumerable<Piece> Pieces(Template template, Tiling tiling)
    {
        for (var row = 0; row < tiling.Rows; row++)
        {
            for (var column = 0; column < tiling.Columns; column++)
            {
                var number = (row * tiling.Columns) + column + 1;
                double left = tiling.Left(column), top = tiling.Top(row);
                yield return new(
                    template, tiling, number, left, top, Math.Min(tiling.Width, template.Width - left), Math.Min(tiling.Height, template.Height - top));
            }
        }
    }

    // One beneath the other while there is room for each with what is said of it.
    private void Stacked(IEnumerable<Piece> pieces, Paper on)
    {
        var rest = new Queue<Piece>(pieces);
        while (rest.Count > 0)
        {
            List<(Piece Piece, double Y, IReadOnlyList<string> Facts, double Column)> placed = [];
            double y = Top, bottom = on.Height - TitleStrip.Height - ScaleBars.Room, width = on.Width - (2 * Side);
            while (rest.TryPeek(out var piece))
            {
                // A few lines run across; more stand in two columns.
                var abreast = FactLines(piece.Template, width).Count > 3 ? 2 : 1;
                double column = abreast == 2 ? (width / 2) + 2 : 0, set = abreast == 2 ? column - 6 : width, rows = 0;
                if (piece.IsLast) rows = Math.Ceiling((double)FactLines(piece.Template, set).Count / abreast);
                var needed = HeadingRoom + piece.Height + 5 + (rows * Lettering.Small.Leading);
                if (placed.Count > 0 && y + needed > bottom) break;
                var room = bottom - y - HeadingRoom - piece.Height - 5;
                placed.Add((rest.Dequeue(), y, piece.IsLast ? Fitting(piece.Template, set, abreast * room) : [], column));
                y += needed + 4;
            }

            sheets.Add(new(on, string.Join("; ", placed.Select(p => p.Piece.Title)), pen =>
            {
                foreach (var (piece, top, facts, column) in placed)
                {
                    pen.Words(Lettering.Heading.Cut(piece.Title, width), Side, top + 2.5, Lettering.Heading);
                    piece.Draw(pen, Side, top + HeadingRoom);
                    Facts(pen, facts, Side, top + HeadingRoom + piece.Height + 5, column);
                }

                ScaleBars.Draw(pen, on);
            })
            {
                Bookmarks = [.. placed.Where(p => p.Piece.Number == 1).Select(p => new Bookmark(p.Piece.Template.Title, p.Y, 1))],
            });
        }
    }

    private static Tiling Tiled(Template template, Paper on) =>
        Tiling.Of(template.Width, template.Height, on.Width - (2 * Side), on.Height - Top - HeadingRoom - TitleStrip.Height - ScaleBars.Room);

    // Shelves: left to right, then a new shelf beneath, then a new sheet.
    private void Small(List<Template> templates)
    {
        var rest = new Queue<Template>(templates);
        while (rest.Count > 0)
        {
            List<(Template Template, double X, double Y, IReadOnlyList<string> Facts)> placed = [];
            double y = Top + HeadingRoom, bottom = paper.Height - TitleStrip.Height - ScaleBars.Room;
            while (rest.Count > 0)
            {
                var shelf = Shelf(rest, out var tall);
                if (placed.Count > 0 && y + tall > bottom) break;
                double x = Side, column = (paper.Width - (2 * Side)) / 2;
                foreach (var template in shelf)
                {
                    rest.Dequeue();
                    placed.Add((template, x, y, Fitting(template, column - 6, bottom - y - 6 - template.Height)));
                    x += column;
                }

                y += tall + Gap;
            }

            var title = string.Join(", ", placed.Select(p => p.Template.Title));
            sheets.Add(new(paper, title, pen =>
            {
                Heading(pen, "Plates and rings", paper);
                foreach (var (template, x, top, facts) in placed)
                {
                    pen.Words(Lettering.Strong.Cut(template.Title, ((paper.Width - (2 * Side)) / 2) - 4), x, top + 3, Lettering.Strong);
                    pen.Within(x - 1, top + 4, template.Width + 2, template.Height + 2, x, top + 5, () => TemplatePainter.Draw(pen, template));
                    Facts(pen, facts, x, top + 5 + template.Height + 4);
                }

                ScaleBars.Draw(pen, paper);
            })
            {
                Bookmarks = [.. placed.Select(p => new Bookmark(p.Template.Title, p.Y, 1))],
            });
        }
    }

    private List<Template> Shelf(Queue<Template> rest, out double tall)
    {
        List<Template> shelf = [.. rest.Take(2)];
        var width = ((paper.Width - (2 * Side)) / 2) - 6;
        tall = shelf.Max(t => 5 + t.Height + 4 + (FactLines(t, width).Count * Lettering.Small.Leading));
        return shelf;
    }

    private static void Heading(Pen pen, string title, Paper on) => pen.Words(Lettering.Heading.Cut(title, on.Width - (2 * Side)), Side, Top + 2.5, Lettering.Heading);

    private static List<string> FactLines(Template template, double width) => [.. template.Facts.SelectMany(f => Lettering.Small.Wrap(f, width))];

    private static IReadOnlyList<string> Fitting(Template template, double width, double room)
    {
        var lines = FactLines(template, width);
        var fit = Math.Max(0, (int)(room / Lettering.Small.Leading));
        return lines.Count <= fit ? lines : fit < 2 ? [] : [.. lines.Take(fit - 1), "more in the hole schedule"];
    }

    private static void Facts(Pen pen, IReadOnlyList<string> facts, double x, double y, double column = 0)
    {
        var rows = column > 0 ? (facts.Count + 1) / 2 : facts.Count;
        for (var i = 0; i < facts.Count; i++) pen.Words(facts[i], x + (i < rows ? 0 : column), y + (i % Math.Max(rows, 1) * Lettering.Small.Leading), Lettering.Small);
    }

    // A template, or the part of one that a window shows.
    private sealed record Piece(Template Template, Tiling Tiling, int Number, double Left, double Top, double Width, double Height)
    {
        public bool IsLast => Number == Tiling.Count;

        public string Title => Tiling.Count == 1 ? Template.Title : string.Create(CultureInfo.InvariantCulture, $"{Template.Title}, part {Number} of {Tiling.Count}");

        public void Draw(Pen pen, double x, double y) => pen.Within(x - 1, y - 1, Width + 2, Height + 2, x - Left, y - Top, () =>
        {
            TemplatePainter.Draw(pen, Template);
            foreach (var cross in Tiling.Crosses(Template)) Register(pen, cross);
        });

        private static void Register(Pen pen, (string Name, double X, double Y) cross)
        {
            pen.Line(cross.X - 3, cross.Y, cross.X + 3, cross.Y, Stroke.Thin);
            pen.Line(cross.X, cross.Y - 3, cross.X, cross.Y + 3, Stroke.Thin);
            pen.Circle(cross.X, cross.Y, 1.6, Stroke.Thin);
            pen.Words(cross.Name, cross.X + 1.6, cross.Y - 1.2, Lettering.Small);
        }
    }
}
