using Scribeline.Engine.Questions;

namespace Scribeline.Drawing.Packets;

/// <summary>The figures a range safety officer asks for, taken from the answers: of each question those that come nearest to their limits.</summary>
internal static class KeyFigures
{
    // Most of each question, in the order they are asked at check-in.
    private static readonly (string Id, int Most)[] Asked =
    [
        ("weight", 2), ("keep-back", 1), ("thrust-to-weight", 1), ("rail-exit", 2), ("stable", 2), ("how-high", 1), ("how-fast", 2), ("flutter", 1), ("stays-together", 1),
        ("holds-through-drogue", 1), ("lets-go", 1), ("breathes", 1), ("opens", 1), ("load-path", 1), ("descends", 2), ("lands-soft", 1), ("lands-inside", 1),
    ];

    /// <summary>Each figure with its answer, worst first among equals; an answer without figures stands as open.</summary>
    public static IEnumerable<(Answer Answer, Finding? Finding)> Of(IReadOnlyList<Answer> answers)
    {
        foreach (var (id, most) in Asked)
        {
            if (answers.FirstOrDefault(a => a.Question.Id == id) is not { } answer) continue;
            if (answer.Findings.Count == 0)
            {
                yield return (answer, null);
                continue;
            }

            var judged = answer.Findings.Any(f => f.Limit is not null)
                ? answer.Findings.Where(f => f.Limit is not null).OrderByDescending(f => f.Verdict).ThenBy(Room)
                : answer.Findings.AsEnumerable();
            foreach (var finding in judged.Take(most).OrderBy(f => IndexOf(answer, f))) yield return (answer, finding);
        }
    }

    private static double Room(Finding finding) => finding.Limit!.Value == 0 ? 0 : finding.Limit.Room(finding.Value) / Math.Abs(finding.Limit.Value);

    private static int IndexOf(Answer answer, Finding finding) => answer.Findings.TakeWhile(f => f != finding).Count();
}
