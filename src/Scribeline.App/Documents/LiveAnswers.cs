using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store.Logs;

namespace Scribeline.App.Documents;

/// <summary>
/// Asks every question of a design again after each change, apart from the thread that types: as typed at once, and over the tolerances
/// when typing rests. A newer version ends the work on an older one.
/// </summary>
internal sealed class LiveAnswers : IDisposable
{
    /// <summary>Seed of the drawn cases, that of the terminal.</summary>
    public const ulong Seed = 1;

    // Answers that come sooner need no sign that they are on their way.
    private static readonly TimeSpan Late = TimeSpan.FromMilliseconds(150);

    // Longer than a page takes to draw, where one shows the design.
    private static readonly TimeSpan Drawing = TimeSpan.FromMilliseconds(60);

    // Few flights soon, many in the end: with the first, none seen astray already means fewer than one in a hundred.
    private static readonly int[] FirstFlights = [400, Enquiry.UsualFlights];
    private const int MostFlights = 10_000;

    private readonly Lock gate = new();
    private readonly ResultCache cache = new(depth: 24);
    private readonly QuestionCosts costs = new();
    private readonly int cases;
    private readonly TimeSpan rest;
    private readonly Action changed;
    private CancellationTokenSource current = new();
    private Task work = Task.CompletedTask;
    private AnswerSheet sheet = AnswerSheet.Nothing;
    private (int Version, TaskCompletionSource Told) drawn = (-1, new());

    /// <param name="cases">Cases to draw from the tolerances; 0 for none.</param>
    /// <param name="rest">How long typing must rest before they are drawn.</param>
    /// <param name="changed">Told of every new sheet, from any thread.</param>
    public LiveAnswers(int cases, TimeSpan rest, Action changed) => (this.cases, this.rest, this.changed) = (cases, rest, changed);

    /// <summary>The newest answers.</summary>
    public AnswerSheet Sheet => Volatile.Read(ref sheet);

    /// <summary>Asks anew; returns at once.</summary>
    public void Ask(RocketDesign design, int version, ValueList<Confirmation> confirmed, FlownFlights recorded)
    {
        lock (gate)
        {
            current.Cancel();
            current.Dispose();
            current = new();
            var cancel = current.Token;
            var before = work;
            work = Task.Run(async () =>
            {
                await before.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
                await Work(design, version, confirmed, recorded, cancel).ConfigureAwait(false);
            }, CancellationToken.None);
        }
    }

    /// <summary>A page has drawn the answers to this version: the slow questions may have the processor.</summary>
    public void Showed(int version)
    {
        lock (gate)
        {
            if (version >= drawn.Version) drawn.Told.TrySetResult();
        }
    }

    /// <summary>Ends the work that is under way.</summary>
    public void Rest()
    {
        lock (gate) current.Cancel();
    }

    /// <summary>Done when nothing is under way; for tests.</summary>
    public async Task Settle()
    {
        for (var known = Task.CompletedTask; ;)
        {
            lock (gate)
            {
                // Whatever was asked for meanwhile counts too.
                if (known == work && work.IsCompleted) return;
                known = work;
            }

            await known.ConfigureAwait(false);
        }
    }

    public void Dispose()
    {
        lock (gate)
        {
            current.Cancel();
            current.Dispose();
        }
    }

    private async Task Work(RocketDesign design, int version, ValueList<Confirmation> confirmed, FlownFlights recorded, CancellationToken cancel)
    {
        try
        {
            cancel.ThrowIfCancellationRequested();
            _ = TellLate(version, cancel);
            var studies = Studies.Of(design, Seed, cache, confirmed, recorded.Flights, recorded.Asked);
            if (studies is not { Problems.Count: 0, Nominal: { } study })
            {
                Publish(Sheet with { Problems = studies.Problems, Share = null, IsLate = true });
                return;
            }

            Task told;
            lock (gate)
            {
                drawn = (version, new(TaskCreationOptions.RunContinuationsAsynchronously));
                told = drawn.Told.Task;
            }

            new AnswerRound(costs, Publish, () => told.Wait((int)Drawing.TotalMilliseconds, cancel)).Ask(study, version, Sheet, drawing: cases > 0, cancel);
            if (cases == 0) return;

            await Task.Delay(rest, cancel).ConfigureAwait(false);
            foreach (var flights in FirstFlights) Land(Questionnaire.Landing, study, flights, cancel);
            var shown = 0.0;
            var spread = Enquiry.Ask(Questionnaire.All, study, studies.Case, cases, share => Tell(share, cancel, ref shown), cancel);
            Publish(new(version, study, spread, cases, null));
            Land([Questionnaire.Landing[0]], study, MostFlights, cancel);
        }
        catch (OperationCanceledException)
        {
            // A newer version is asked instead.
        }
    }

    private async Task TellLate(int version, CancellationToken cancel)
    {
        await Task.Delay(Late, cancel).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        lock (gate)
        {
            if (cancel.IsCancellationRequested || Sheet.Version >= version) return;
            Volatile.Write(ref sheet, Sheet with { IsLate = true });
        }

        changed();
    }

    /// <summary>Answers again what flies the rocket many times over; last of all, and with more flights each time.</summary>
    private void Land(IReadOnlyList<Question> questions, Study study, int flights, CancellationToken cancel)
    {
        var many = study.Flying(flights, null, cancel);
        foreach (var question in questions)
        {
            cancel.ThrowIfCancellationRequested();
            var answer = question.Ask(many);
            cancel.ThrowIfCancellationRequested();
            Publish(Sheet with { Answers = [.. Sheet.Answers.Select(a => a.Question.Id == question.Id ? answer : a)] });
        }
    }

    // Every tenth is enough for a bar to move.
    private void Tell(double share, CancellationToken cancel, ref double shown)
    {
        lock (gate)
        {
            if (cancel.IsCancellationRequested || share < shown + 0.1 || share >= 1) return;
            shown = share;
        }

        Publish(Sheet with { Share = share });
    }

    private void Publish(AnswerSheet next)
    {
        lock (gate) Volatile.Write(ref sheet, next);
        changed();
    }
}
