using Scribeline.Engine.Questions;
using Spectre.Console;

namespace Scribeline.App.Terminal;

/// <summary>A table of an answer, fitted to the page: columns of values as wide as they need, columns of words share the rest.</summary>
/// <param name="page">Where it is written.</param>
/// <param name="inch">Whether inch and pound units are shown.</param>
internal sealed class TablePage(Page page, bool inch)
{
    private const int Indent = 3;

    /// <summary>Writes its title, heads and rows.</summary>
    public void Write(AnswerTable table)
    {
        page.Gap();
        page.Paragraph(table.Title, Indent, Page.Bold);
        var judged = table.Rows.Any(r => r.Verdict is not null);
        var shown = new Table { Border = TableBorder.None, Expand = false };
        shown.AddColumn(new Spectre.Console.TableColumn(new Text("")) { Width = 1, Padding = new Padding(judged ? 0 : Indent - 1, 0, judged ? 2 : 0, 0) });
        foreach (var column in table.Columns)
        {
            shown.AddColumn(new Spectre.Console.TableColumn(new Text(column.Name, Page.Quiet))
            {
                Alignment = column.Unit is null ? Justify.Left : Justify.Right,
                Padding = new Padding(0, 0, 2, 0),
            });
        }

        foreach (var row in table.Rows)
        {
            shown.AddRow((Text[])
            [
                row.Verdict is { } verdict ? new Text(VerdictMark.Shape(verdict), VerdictMark.Style(verdict)) : new Text(""),
                .. row.Cells.Zip(table.Columns, (cell, column) => new Text(cell.Shown(column, inch))),
            ]);
        }

        page.Write(shown);
    }
}
