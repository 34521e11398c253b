namespace Scribeline.Engine.Questions;

/// <summary>
/// What flights taught may make an answer worse, and truer; it never turns a stop into clear. A limit that is not met without it is at best a watch
/// with it, however many flights there are: their number and spread do not bound what the next one does.
/// </summary>
public static class Taught
{
    /// <summary>An answer kept from being milder than what flights taught allows.</summary>
    /// <param name="answer">With what was accepted.</param>
    /// <param name="before">The same without it.</param>
    public static Answer Kept(Answer answer, Answer before)
    {
        var kept = new List<string>();
        var findings = answer.Findings.Select(finding =>
        {
            var stopped = before.Findings.Any(f => f.Name == finding.Name && f.Verdict == Verdict.Stop);
            if (!stopped || finding.Verdict is Verdict.Stop or Verdict.Open) return finding;
            kept.Add(finding.Name);
            return finding with { Verdict = Verdict.Watch, Mildest = Verdict.Watch };
        }).ToArray();
        return kept.Count == 0 ? answer : answer with
        {
            Findings = [.. findings],
            Notes = [.. answer.Notes.Where(n => !n.StartsWith(Begins, StringComparison.Ordinal)), $"{Begins} {string.Join(", ", kept)}. Flights alone do not clear it: keep to the limit without them."],
        };
    }

    private const string Begins = "Stop without what flights taught:";
}
