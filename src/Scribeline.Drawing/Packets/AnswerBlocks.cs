using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Questions;

namespace Scribeline.Drawing.Packets;

/// <summary>An answer as blocks: question and verdict, values, notes, tables, pictures, working.</summary>
/// <param name="inch">Whether inch and pound units are shown.</param>
/// <param name="width">Of the text, mm.</param>
internal sealed class AnswerBlocks(bool inch, double width)
{
    private const double PlotHeight = 0.37;

    /// <summary>All of it.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="depth">Of its bookmark.</param>
    public IEnumerable<Block> Of(Answer answer, int depth = 1)
    {
        yield return new QuestionHeading(answer) { Above = 6, KeepWithNext = true, Bookmark = new(answer.Question.Text, 0, depth) };
        foreach (var missing in answer.Missing) yield return new Words(missing, Lettering.Body, null, VerdictSign.Room, "missing:") { Above = 0.6 };
        foreach (var block in Findings(answer)) yield return block;
        foreach (var note in answer.Notes) yield return new Words(note, Lettering.Small, Ink.Light.Quiet) { Above = 0.8 };
        foreach (var block in answer.Tables.SelectMany(Table)) yield return block;
        foreach (var plot in answer.Plots) yield return Drawn(plot);
        foreach (var map in answer.Maps) yield return Drawn(map);
        foreach (var block in Working(answer.Working)) yield return block;
    }

    /// <summary>A schedule or list of an answer.</summary>
    public IEnumerable<Block> Table(AnswerTable table)
    {
        yield return new Words(table.Title, Lettering.Strong) { Above = 3, KeepWithNext = true };
        if (table.Rows.Count == 0) yield return new Words("nothing in it", Lettering.Small, Ink.Light.Quiet);
        GridColumn[] columns = [.. table.Columns.Select((c, i) => new GridColumn(c.Name, c.Unit is not null, c.Unit is null ? Share(table, i) : 0))];
        var rows = table.Rows.Select(r => new GridRow([.. r.Cells.Zip(table.Columns, (cell, column) => cell.Shown(column, inch))], r.Verdict)).ToList();
        foreach (var block in Grid.Rows(columns, rows, width, ruled: true)) yield return block;
    }

    // A column of long sentences gets more of the room than one of single words.
    private double Share(AnswerTable table, int column) =>
        Math.Sqrt(1 + table.Rows.Select(r => r.Cells[column].Shown(table.Columns[column], inch).Length).DefaultIfEmpty(0).Max());

    private IEnumerable<Block> Findings(Answer answer)
    {
        if (answer.Findings.Count == 0) return [];
        var limit = answer.Findings.Any(f => f.Limit is not null);
        var spread = answer.Findings.Any(f => f.Spread is not null);
        var meets = answer.Findings.Any(f => f.Spread?.Meets is not null);
        List<GridColumn> columns = [new("", Share: 1), new("", true)];
        if (limit) columns.Add(new("limit"));
        if (spread) columns.Add(new("9 cases in 10"));
        if (meets) columns.Add(new("meet it", true));
        return Grid.Rows(columns, [.. answer.Findings.Select(Row)], width, Lettering.Body);

        GridRow Row(Finding f)
        {
            List<string> cells = [f.Name, Shown.Text(f.Value, f.Unit, inch)];
            if (limit) cells.Add(f.Limit is { } l ? AnswerText.Limit(l, f.Unit, inch) : "");
            if (spread) cells.Add(f.Spread is { } s ? AnswerText.Spread(s, f, inch) : "");
            if (meets) cells.Add(f.Spread?.Meets is { } share ? AnswerText.Share(share) : "");
            return new(cells, f.Limit is null && f.Verdict == Verdict.Clear ? null : f.Verdict, 1);
        }
    }

    private Picture Drawn(Plot plot) => new(width * PlotHeight, (pen, x, y, wide) =>
    {
        const int Pixels = 900;
        var scale = wide / Pixels;
        pen.Within(x, y, wide, wide * PlotHeight, x, y, () =>
        {
            pen.Canvas.Scale((float)scale);
            new PlotSheet(plot, new PlotStyle(Inch: inch, Width: Pixels, Height: (int)(Pixels * PlotHeight)), Ink.Print).Draw(pen.Canvas);
        });
    })
    { Above = 3 };

    private Picture Drawn(GroundMap map) => new(width, (pen, x, y, wide) =>
    {
        const int Pixels = 800;
        pen.Within(x, y, wide, wide, x, y, () =>
        {
            pen.Canvas.Scale((float)(wide / Pixels));
            new MapSheet(map, new PlotStyle(Inch: inch, Width: Pixels, Height: Pixels), Ink.Print).DrawOn(pen.Canvas);
        });
    })
    { Above = 3 };

    private IEnumerable<Block> Working(Working working)
    {
        if (working.Steps.Count == 0) yield break;
        yield return new Words("Working, in SI units", Lettering.SmallStrong) { Above = 2.5, KeepWithNext = true };
        GridColumn[] columns = [new("step", Share: 1.15), new("what it is; where it comes from", Share: 1)];
        foreach (var block in Grid.Rows(columns, [.. working.Steps.Select(s => new GridRow([WorkingText.Equation(s), $"{s.Meaning}; {s.Source}"]))], width)) yield return block;
    }

    // Verdict and question, the id and what it rests on beneath.
    private sealed class QuestionHeading(Answer answer) : Block
    {
        private const double Indent = 17;

        private IReadOnlyList<string> Lines(double width) => Lettering.Heading.Wrap(answer.Question.Text, width - Indent);

        public override double Height(double width) => (Lines(width).Count * Lettering.Heading.Leading) + Lettering.Small.Leading + 1.5;

        public override void Draw(Pen pen, double x, double y, double width)
        {
            pen.Line(x, y, x + width, y, Stroke.Faint);
            y += 1.5;
            VerdictSign.Draw(pen, answer.Verdict, x + 0.3, y + Lettering.Heading.Size, 3);
            pen.Words(AnswerText.Word(answer.Verdict), x + VerdictSign.Room + 0.4, y + Lettering.Heading.Size, Lettering.Strong);
            var lines = Lines(width);
            for (var i = 0; i < lines.Count; i++) pen.Words(lines[i], x + Indent, y + Lettering.Heading.Size + (i * Lettering.Heading.Leading), Lettering.Heading);
            pen.Words(
                $"{answer.Question.Place}: {answer.Question.Id}; {AnswerText.Basis(answer)}", x + Indent, y + (lines.Count * Lettering.Heading.Leading) + Lettering.Small.Size,
                Lettering.Small, Ink.Light.Quiet);
        }
    }
}
