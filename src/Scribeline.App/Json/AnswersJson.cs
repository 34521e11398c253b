using Scribeline.App.Terminal;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Json;

/// <summary>The document of the answer command. docs/json.md describes it.</summary>
/// <param name="Format">Version of the format.</param>
/// <param name="Kind">Always "answers".</param>
/// <param name="Design">Name of the rocket.</param>
/// <param name="File">Design file as given.</param>
/// <param name="Samples">Cases drawn from the tolerances; 0 when none were.</param>
/// <param name="Seed">Of the draws.</param>
/// <param name="Verdict">Gravest of all answers.</param>
/// <param name="Answers">In the order of the questions.</param>
internal sealed record AnswersJson(
    int Format, string Kind, string Design, string File, int Samples, ulong Seed, string Verdict, IReadOnlyList<AnswerJson> Answers)
{
    /// <summary>The document for a set of answers.</summary>
    public static AnswersJson Of(string design, string file, int samples, ulong seed, IReadOnlyList<Answer> answers) => new(
        JsonText.Format, "answers", design, file, samples, seed, VerdictMark.Word(answers.Max(a => a.Verdict)), [.. answers.Select(AnswerJson.Of)]);
}

/// <summary>One answer.</summary>
internal sealed record AnswerJson(
    string Id,
    string Place,
    string Question,
    string Verdict,
    string Basis,
    IReadOnlyList<FindingJson> Findings,
    IReadOnlyList<StepJson> Working,
    IReadOnlyList<TableJson> Tables,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Missing)
{
    /// <summary>The part of the document for one answer.</summary>
    public static AnswerJson Of(Answer answer) => new(
        answer.Question.Id,
        Lower(answer.Question.Place),
        answer.Question.Text,
        VerdictMark.Word(answer.Verdict),
        Lower(answer.Basis),
        [.. answer.Findings.Select(FindingJson.Of)],
        [.. answer.Working.Steps.Select(s => new StepJson(Lower(s.Kind), s.Symbol, s.Kind == StepKind.Formula ? s.Formula : null, s.Value, s.Unit, s.Meaning, s.Source))],
        [.. answer.Tables.Select(TableJson.Of)],
        answer.Notes,
        answer.Missing);

    private static string Lower<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();
}

/// <summary>A schedule or list of an answer.</summary>
internal sealed record TableJson(string Title, IReadOnlyList<ColumnJson> Columns, IReadOnlyList<RowJson> Rows)
{
    /// <summary>The part of the document for one table.</summary>
    public static TableJson Of(AnswerTable table) => new(
        table.Title,
        [.. table.Columns.Select(c => new ColumnJson(c.Name, c.Unit is { } unit ? UnitSymbol.Of(unit) : null))],
        [.. table.Rows.Select(r => new RowJson(r.Verdict is { } verdict ? VerdictMark.Word(verdict) : null, [.. r.Cells.Select(c => (object?)c.Words ?? c.Value)]))]);
}

/// <summary>A column: its name, and the SI symbol of its values, null for words.</summary>
internal sealed record ColumnJson(string Name, string? Unit);

/// <summary>A row: its verdict or null, and a word, a number or null for every column.</summary>
internal sealed record RowJson(string? Verdict, IReadOnlyList<object?> Cells);

/// <summary>One value of an answer.</summary>
internal sealed record FindingJson(string Name, double Value, string Unit, string Verdict, LimitJson? Limit, SpreadJson? Spread)
{
    /// <summary>The part of the document for one finding.</summary>
    public static FindingJson Of(Finding finding) => new(
        finding.Name,
        finding.Value,
        UnitSymbol.Of(finding.Unit),
        VerdictMark.Word(finding.Verdict),
        finding.Limit is { } l ? new LimitJson(l.Id, l.Value, l.Sense == Sense.AtLeast ? "at least" : "at most", l.Guard, l.Must, l.Source) : null,
        finding.Spread is { } s ? new SpreadJson(s.Mean, s.Low, s.High, s.Meets, s.Samples) : null);
}

/// <summary>A bound.</summary>
internal sealed record LimitJson(string Id, double Value, string Sense, double Guard, bool Must, string Source);

/// <summary>What the tolerances do to a value.</summary>
internal sealed record SpreadJson(double Mean, double Low, double High, double? Meets, int Samples);

/// <summary>A step of a working.</summary>
internal sealed record StepJson(string Kind, string Symbol, string? Formula, double Value, string Unit, string Meaning, string Source);
