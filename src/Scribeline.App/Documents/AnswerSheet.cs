using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Documents;

/// <summary>What the questions of one version of a design were answered with, as far as they are.</summary>
/// <param name="Version">Version of the text that is asked; -1 before the first.</param>
/// <param name="Study">The nominal study; null before the first.</param>
/// <param name="Answers">In the order of the questions; empty before the first.</param>
/// <param name="Cases">Cases drawn from the tolerances that the answers tell of; 0 as typed.</param>
/// <param name="Share">Share of the cases drawn so far, 0 to 1, while more are.</param>
public sealed record AnswerSheet(int Version, Study? Study, IReadOnlyList<Answer> Answers, int Cases, double? Share)
{
    /// <summary>What kept a newer version from being answered.</summary>
    public ValueList<Problem> Problems { get; init; } = [];

    /// <summary>Ids of questions whose answer is still that of an older version, or not there yet.</summary>
    public IReadOnlySet<string> Waiting { get; init; } = new HashSet<string>();

    /// <summary>Whether a newer version is being answered for so long that a reader should know.</summary>
    public bool IsLate { get; init; }

    /// <summary>Before anything was asked.</summary>
    public static AnswerSheet Nothing { get; } = new(-1, null, [], 0, null);

    /// <summary>Whether every question of this version is answered.</summary>
    public bool IsWhole => Version >= 0 && Waiting.Count == 0;

    /// <summary>What stops, is open or needs watching before the flight, gravest first: as many as the counts of verdicts tell of.</summary>
    public IEnumerable<Answer> Grave => Answers.Where(a => a.Verdict != Verdict.Clear && !a.AwaitsFlight).OrderByDescending(a => a.Verdict);

    /// <summary>The answer to a question; null where there is none.</summary>
    public Answer? Of(string id) => Answers.FirstOrDefault(a => a.Question.Id == id);
}
