using Scribeline.App.Terminal;

namespace Scribeline.App.Documents;

/// <summary>Which verdicts changed from one sheet to another, in words short enough to be read out.</summary>
internal static class ChangedVerdicts
{
    private const int Most = 3;

    /// <summary>The gravest first, the rest as a number; empty where none changed.</summary>
    public static string Between(AnswerSheet before, AnswerSheet now)
    {
        var changed = now.Answers.Where(a => before.Of(a.Question.Id) is { } was && was.Verdict != a.Verdict).OrderByDescending(a => a.Verdict).ToList();
        var told = changed.Take(Most).Select(a => $"{a.Question.Text} Now {VerdictMark.Word(a.Verdict)}.");
        return string.Join(' ', changed.Count > Most ? [.. told, $"And {changed.Count - Most} more."] : told);
    }
}
