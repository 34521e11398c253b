using Scribeline.Engine.Questions;
using Spectre.Console;

namespace Scribeline.App.Terminal;

/// <summary>Answers as a person reads them at a terminal, by place.</summary>
/// <param name="page">Where they are written.</param>
/// <param name="inch">Whether inch and pound units are shown.</param>
/// <param name="showWorking">Whether the steps to each value are shown.</param>
/// <param name="showTables">Whether tables are shown; otherwise it is said where to find them.</param>
internal sealed class AnswerPage(Page page, bool inch, bool showWorking, bool showTables = false)
{
    private const int Indent = 3;
    private const int LeastNameWidth = 16;
    private const int LimitWidth = 13;
    private const int SpreadWidth = 16;
    private const int MeetsWidth = 7;

    /// <summary>Writes every answer and the count of verdicts.</summary>
    public void Write(IReadOnlyList<Answer> answers)
    {
        foreach (var group in answers.GroupBy(a => a.Question.Place))
        {
            page.Write(new Rule(group.Key.ToString()) { Justification = Justify.Left, Style = Page.Quiet });
            page.Gap();
            foreach (var answer in group) Write(answer);
        }

        page.Paragraph(AnswerText.Count(answers), style: Page.Bold);
    }

    private void Write(Answer answer)
    {
        var heading = new Grid { Expand = false };
        heading.AddColumn(new GridColumn { Padding = new Padding(0, 0, 2, 0), NoWrap = true, Width = 7 });
        heading.AddColumn(new GridColumn { Padding = new Padding(0, 0, 0, 0), Width = page.Width - 9 });
        heading.AddRow(new Text(VerdictMark.Of(answer.Verdict), VerdictMark.Style(answer.Verdict)), new Text(answer.Question.Text, Page.Bold));
        heading.AddRow(new Text(""), new Text($"{answer.Question.Id}; {AnswerText.Basis(answer)}", Page.Quiet));
        page.Write(heading);
        foreach (var missing in answer.Missing) page.Paragraph(missing, Indent, hanging: "missing: ");
        if (answer.Findings.Count > 0) page.Write(Findings(answer));
        foreach (var note in answer.Notes) page.Paragraph(note, Indent, Page.Quiet);
        if (showTables)
        {
            foreach (var table in answer.Tables) new TablePage(page, inch).Write(table);
        }
        else if (answer.Tables.Count > 0)
        {
            page.Paragraph(Elsewhere(answer), Indent, Page.Quiet);
        }

        if (showWorking) new WorkingPage(page).Write(answer.Working);
        page.Gap();
    }

    private static string Elsewhere(Answer answer) =>
        $"with --question {answer.Question.Id}: {string.Join(", ", answer.Tables.Select(t => $"{t.Title} ({t.Rows.Count} {(t.Rows.Count == 1 ? "row" : "rows")})"))}";

    private Table Findings(Answer answer)
    {
        var hasLimit = answer.Findings.Any(f => f.Limit is not null);
        var hasSpread = answer.Findings.Any(f => f.Spread is not null);
        var hasMeets = answer.Findings.Any(f => f.Spread?.Meets is not null);
        var valueWidth = answer.Findings.Max(f => Text(f.Value, f).Length);
        var nameWidth = page.Width - Indent - valueWidth - 2 - (hasLimit ? LimitWidth + 2 : 0);
        var spreadWidth = (hasSpread ? SpreadWidth + 2 : 0) + (hasMeets ? MeetsWidth + 2 : 0);

        // Where the page is too narrow for a column of spreads, each stands beneath its name.
        var beneath = hasSpread && nameWidth - spreadWidth < LeastNameWidth;
        if (beneath) (hasSpread, hasMeets) = (false, false);
        else nameWidth -= spreadWidth;

        var table = new Table { Border = TableBorder.None, ShowHeaders = hasSpread || hasLimit, Expand = false };
        Column(table, "", 1, 2);
        Column(table, "", nameWidth, 2);
        Column(table, "", valueWidth, hasLimit || hasSpread ? 2 : 0, Justify.Right);
        if (hasLimit) Column(table, "limit", LimitWidth, hasSpread ? 2 : 0);
        if (hasSpread) Column(table, "9 cases in 10", SpreadWidth, hasMeets ? 2 : 0);
        if (hasMeets) Column(table, "meet it", MeetsWidth, 0, Justify.Right);
        foreach (var finding in answer.Findings)
        {
            List<Text> cells =
            [
                finding.Limit is null && finding.Verdict == Verdict.Clear ? new("") : new(VerdictMark.Shape(finding.Verdict), VerdictMark.Style(finding.Verdict)),
                new(finding.Name),
                new(Text(finding.Value, finding), Page.Bold),
            ];
            if (hasLimit) cells.Add(new(finding.Limit is { } limit ? Limit(limit, finding) : ""));
            if (hasSpread) cells.Add(new(finding.Spread is { } spread ? Spread(spread, finding) : ""));
            if (hasMeets) cells.Add(new(finding.Spread?.Meets is { } share ? AnswerText.Share(share) : ""));
            table.AddRow(cells);
            if (beneath && finding.Spread is { } told) table.AddRow(new Text(""), new Text(Told(told, finding), Page.Quiet));
        }

        return table;
    }

    private string Told(Spread spread, Finding finding) =>
        $"{Spread(spread, finding)} in 9 of 10 cases" + (spread.Meets is { } share ? $"; {AnswerText.Share(share)} meet the limit" : "");

    private static void Column(Table table, string name, int width, int right, Justify justify = Justify.Left) =>
        table.AddColumn(new Spectre.Console.TableColumn(new Text(name, Page.Quiet)) { Width = width, Padding = new Padding(0, 0, right, 0), Alignment = justify });

    private string Text(double value, Finding finding) => Shown.Text(value, finding.Unit, inch);

    private string Limit(Limit limit, Finding finding) => AnswerText.Limit(limit, finding.Unit, inch);

    private string Spread(Spread spread, Finding finding) => AnswerText.Spread(spread, finding, inch);
}
