using System.Globalization;

namespace Scribeline.Engine.Questions;

/// <summary>How the numbers of an answer are worded, the same on every face.</summary>
public static class AnswerText
{
    /// <summary>A verdict in one word.</summary>
    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Clear => "clear",
        Verdict.Watch => "watch",
        Verdict.Stop => "stop",
        _ => "open",
    };

    /// <summary>How many answers got which verdict, gravest first.</summary>
    public static string Count(IReadOnlyList<Answer> answers) => string.Join(", ",
        Counts(answers).Select(v => string.Create(CultureInfo.InvariantCulture, $"{v.Count} {Word(v.Verdict)}")));

    /// <summary>The verdicts that occur, gravest first, with how often; answers that wait for the record of a flight count only among themselves.</summary>
    public static IEnumerable<(Verdict Verdict, int Count)> Counts(IReadOnlyList<Answer> answers)
    {
        var all = answers.All(a => a.AwaitsFlight);
        return new[] { Verdict.Stop, Verdict.Open, Verdict.Watch, Verdict.Clear }
            .Select(v => (v, answers.Count(a => a.Verdict == v && (all || !a.AwaitsFlight)))).Where(v => v.Item2 > 0);
    }

    /// <summary>What an answer rests on.</summary>
    public static string Basis(Answer answer) =>
        answer.Findings.Count == 0 ? "not answered" : $"rests on {answer.Basis.ToString().ToLowerInvariant()} values";

    /// <summary>A limit with its side.</summary>
    public static string Limit(Limit limit, Unit unit, bool inch) => (limit.Sense == Sense.AtLeast ? "≥ " : "≤ ") + Shown.Text(limit.Value, unit, inch);

    /// <summary>The range nine of ten cases stay in. The unit stands beside the value already, unless a value near a step of the units is shown in another.</summary>
    public static string Spread(Spread spread, Finding finding, bool inch)
    {
        var symbol = Shown.In(finding.Unit, inch, finding.Value).Symbol;
        var (low, high) = (Shown.Text(spread.Low, finding.Unit, inch), Shown.Text(spread.High, finding.Unit, inch));
        return symbol.Length > 0 && low.EndsWith(symbol, StringComparison.Ordinal) && high.EndsWith(symbol, StringComparison.Ordinal)
            ? $"{low[..^symbol.Length].TrimEnd()} to {high[..^symbol.Length].TrimEnd()}"
            : $"{low} to {high}";
    }

    /// <summary>A share of the cases, never rounded up to certainty.</summary>
    public static string Share(double share) => share switch
    {
        1 => "all",
        0 => "none",
        _ => string.Create(CultureInfo.InvariantCulture, $"{Math.Clamp(share * 100, 0.1, 99.9):F1} %"),
    };
}
