using System.Collections.Concurrent;

namespace Scribeline.App.Documents;

/// <summary>
/// What each question cost lately, as the middle of its last few times: once in a while one waits for what another makes, or finds it made.
/// Safe to use from several threads.
/// </summary>
internal sealed class QuestionCosts
{
    private const int Kept = 5;

    private readonly ConcurrentDictionary<string, double[]> last = new(StringComparer.Ordinal);

    /// <summary>What a question costs, ms; null for one that was never asked.</summary>
    public double? Of(string question) => last.TryGetValue(question, out var times) ? times.Order().ElementAt(times.Length / 2) : null;

    /// <summary>Takes note of what a question has cost, ms.</summary>
    public void Note(string question, double cost) => last.AddOrUpdate(question, _ => [cost], (_, times) => [.. times.TakeLast(Kept - 1), cost]);
}
