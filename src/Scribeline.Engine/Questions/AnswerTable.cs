using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>Rows of an answer to read, tick off or hand over: a schedule, a list of failures.</summary>
/// <param name="Title">In plain words, unique within the answer.</param>
/// <param name="Columns">From left to right.</param>
/// <param name="Rows">From top to bottom, each with a cell for every column.</param>
public sealed record AnswerTable(string Title, ValueList<TableColumn> Columns, ValueList<TableRow> Rows);

/// <summary>A column of a table.</summary>
/// <param name="Name">Plain words.</param>
/// <param name="Unit">What its values measure, which decides how a face shows them; null for a column of words.</param>
public sealed record TableColumn(string Name, Unit? Unit = null);

/// <summary>A row of a table.</summary>
/// <param name="Cells">One for every column.</param>
/// <param name="Verdict">Of what the row tells; null for one that is not judged.</param>
public sealed record TableRow(ValueList<TableCell> Cells, Verdict? Verdict = null)
{
    /// <summary>A row of cells, words or values.</summary>
    public static TableRow Of(Verdict? verdict, params ReadOnlySpan<TableCell> cells) => new(ValueList.Of(cells), verdict);
}

/// <summary>A cell: words, or a value in SI whose column names the unit; empty where neither is given.</summary>
/// <param name="Words">Words, also in a column of values where there is none to give.</param>
/// <param name="Value">SI, null for words.</param>
public readonly record struct TableCell(string? Words, double? Value)
{
    /// <summary>A cell with words.</summary>
    public static implicit operator TableCell(string? words) => new(words, null);

    /// <summary>A cell with a value, SI.</summary>
    public static implicit operator TableCell(double value) => new(null, value);

    /// <summary>A cell with a value, SI, or an empty one.</summary>
    public static implicit operator TableCell(double? value) => new(null, value);

    /// <summary>As a face shows it.</summary>
    /// <param name="column">The cell's column.</param>
    /// <param name="inch">True for inch and pound units.</param>
    public string Shown(TableColumn column, bool inch) => Words ?? (Value is { } value ? Questions.Shown.Text(value, column.Unit ?? Unit.Ratio, inch) : "");
}
