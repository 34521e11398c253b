using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Documents;

/// <summary>What the questions of one version of a design were answered with, as far as they are.</summary>
/// <param name="Version">Version of the text that was asked; -1 before the first.</param>
/// <param name="Study">The nominal study; null before the first.</param>
/// <param name="Answers">One for each question, in order; empty before the first.</param>
/// <param name="Cases">Cases drawn from the tolerances that the answers tell of; 0 as typed.</param>
/// <param name="Share">Share of the cases drawn so far, 0 to 1, while more are.</param>
public sealed record AnswerSheet(int Version, Study? Study, IReadOnlyList<Answer> Answers, int Cases, double? Share)
{
    /// <summary>What kept a newer version from being answered.</summary>
    public ValueList<Problem> Problems { get; init; } = [];

    /// <summary>Before anything was asked.</summary>
    public static AnswerSheet Nothing { get; } = new(-1, null, [], 0, null);

    /// <summary>The answer to a question; null where it was not asked.</summary>
    public Answer? Of(string id) => Answers.FirstOrDefault(a => a.Question.Id == id);
}
