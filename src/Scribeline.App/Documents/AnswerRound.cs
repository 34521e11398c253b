using System.Collections.Concurrent;
using System.Diagnostics;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Documents;

/// <summary>Asks every question of one study, the quick ones first, and hands over what is answered as it comes.</summary>
/// <param name="costs">What each question cost last, ms; kept from round to round.</param>
/// <param name="publish">Takes each new sheet.</param>
internal sealed class AnswerRound(ConcurrentDictionary<string, double> costs, Action<AnswerSheet> publish)
{
    // Often enough to look immediate, seldom enough that drawing does not cost more than answering.
    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(30);

    private readonly Lock gate = new();

    /// <summary>Asks.</summary>
    /// <param name="study">The nominal study.</param>
    /// <param name="version">Version of the text.</param>
    /// <param name="before">The sheet to go on from.</param>
    /// <param name="drawing">Whether cases will be drawn afterwards.</param>
    /// <param name="cancel">Ends the round.</param>
    public void Ask(Study study, int version, AnswerSheet before, bool drawing, CancellationToken cancel)
    {
        var answers = Questionnaire.All.Select(q => before.Of(q.Id)).ToArray();
        HashSet<string> waiting = [.. Questionnaire.All.Select(q => q.Id)];
        var since = Stopwatch.StartNew();
        void Publish()
        {
            publish(new(version, study, [.. answers.OfType<Answer>()], 0, drawing ? 0 : null) { Waiting = new HashSet<string>(waiting) });
            since.Restart();
        }

        // The drawing needs no question and goes with the first answers: drawn by itself it would hold them up.
        _ = study.SideView;
        cancel.ThrowIfCancellationRequested();
        var order = Enumerable.Range(0, answers.Length).OrderBy(i => costs.GetValueOrDefault(Questionnaire.All[i].Id)).ToList();
        Parallel.ForEach(Partitioner.Create(order, EnumerablePartitionerOptions.NoBuffering), new() { CancellationToken = cancel }, i =>
        {
            var question = Questionnaire.All[i];
            var clock = Stopwatch.StartNew();
            var answer = question.Ask(study);
            costs[question.Id] = clock.Elapsed.TotalMilliseconds;
            lock (gate)
            {
                answers[i] = answer;
                waiting.Remove(question.Id);
                if (!cancel.IsCancellationRequested && (waiting.Count == 0 || since.Elapsed > Between)) Publish();
            }
        });
    }
}
