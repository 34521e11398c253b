using System.Collections.Concurrent;
using System.Diagnostics;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Documents;

/// <summary>
/// Asks every question of one study: first those that answer within a frame or two, which are shown together; then, once they are drawn, the
/// rest, shown as they come.
/// </summary>
/// <param name="costs">What each question cost lately; kept from round to round.</param>
/// <param name="publish">Takes each new sheet.</param>
/// <param name="drawn">Waits until the sheet published last is drawn, or for as long as it is worth to wait.</param>
internal sealed class AnswerRound(QuestionCosts costs, Action<AnswerSheet> publish, Action drawn)
{
    // Dearer ones, ms, wait for the page: it needs the same processor.
    private const double Quick = 5;

    // Often enough to look immediate, seldom enough that drawing does not cost more than answering.
    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(40);

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

        // The drawing needs no question and goes with the first answers; so does the flight, which most of them share.
        _ = study.SideView;
        var last = Enumerable.Range(0, answers.Length).ToLookup(i => Questionnaire.All[i].TellsOfAll);
        var quick = last[false].ToLookup(i => Cost(i) < Quick);
        Some([.. quick[true]]);
        Publish();
        drawn();
        Some([.. quick[false].OrderBy(Cost)]);
        Some([.. last[true]]);
        Publish();

        // A record is worked out when it is first asked about, which takes longer than all else together.
        double Cost(int i) => costs.Of(Questionnaire.All[i].Id) ?? (Questionnaire.All[i].Place == Place.Log && study.Recorded is not null ? double.MaxValue : 0);

        void Some(IList<int> which) => Parallel.ForEach(
            Partitioner.Create(which, loadBalance: true), new() { CancellationToken = cancel }, i =>
            {
                var question = Questionnaire.All[i];
                var clock = Stopwatch.StartNew();
                var answer = question.Ask(study);
                costs.Note(question.Id, clock.Elapsed.TotalMilliseconds);
                lock (gate)
                {
                    answers[i] = answer;
                    waiting.Remove(question.Id);
                    if (waiting.Count > 0 && since.Elapsed > Between && !cancel.IsCancellationRequested) Publish();
                }
            });

        void Publish()
        {
            cancel.ThrowIfCancellationRequested();
            publish(new(version, study, [.. answers.OfType<Answer>()], 0, drawing ? 0 : null) { Waiting = new HashSet<string>(waiting) });
            since.Restart();
        }
    }
}
