using System.Collections.Concurrent;
using Scribeline.Engine.Design;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Documents;

/// <summary>
/// Asks every question of a design again after each change, apart from the thread that types: as typed at once, and over the tolerances
/// when typing rests. A newer version ends the work on an older one.
/// </summary>
internal sealed class LiveAnswers : IDisposable
{
    /// <summary>Seed of the drawn cases, that of the terminal.</summary>
    public const ulong Seed = 1;

    private readonly Lock gate = new();
    private readonly ResultCache cache = new(depth: 24);
    private readonly ConcurrentDictionary<string, double> costs = new(StringComparer.Ordinal);
    private readonly int cases;
    private readonly TimeSpan rest;
    private readonly Action changed;
    private CancellationTokenSource current = new();
    private Task work = Task.CompletedTask;
    private AnswerSheet sheet = AnswerSheet.Nothing;

    /// <param name="cases">Cases to draw from the tolerances; 0 for none.</param>
    /// <param name="rest">How long typing must rest before they are drawn.</param>
    /// <param name="changed">Told of every new sheet, from any thread.</param>
    public LiveAnswers(int cases, TimeSpan rest, Action changed) => (this.cases, this.rest, this.changed) = (cases, rest, changed);

    /// <summary>The newest answers.</summary>
    public AnswerSheet Sheet => Volatile.Read(ref sheet);

    /// <summary>Asks anew; returns at once.</summary>
    public void Ask(RocketDesign design, int version)
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
                await Work(design, version, cancel).ConfigureAwait(false);
            }, CancellationToken.None);
        }
    }

    /// <summary>Ends the work that is under way.</summary>
    public void Rest()
    {
        lock (gate) current.Cancel();
    }

    /// <summary>Done when nothing is under way; for tests.</summary>
    public Task Settled
    {
        get
        {
            lock (gate) return work;
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

    private async Task Work(RocketDesign design, int version, CancellationToken cancel)
    {
        try
        {
            cancel.ThrowIfCancellationRequested();
            var studies = Studies.Of(design, Seed, cache);
            if (studies is not { Problems.Count: 0, Nominal: { } study })
            {
                Publish(Sheet with { Problems = studies.Problems, Share = null });
                return;
            }

            new AnswerRound(costs, Publish).Ask(study, version, Sheet, drawing: cases > 0, cancel);
            if (cases == 0) return;

            await Task.Delay(rest, cancel).ConfigureAwait(false);
            var shown = 0.0;
            var spread = Enquiry.Ask(Questionnaire.All, study, studies.Case, cases, share => Tell(share, cancel, ref shown), cancel);
            Publish(new(version, study, spread, cases, null));
        }
        catch (OperationCanceledException)
        {
            // A newer version is asked instead.
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
        Volatile.Write(ref sheet, next);
        changed();
    }
}
