using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Documents;

/// <summary>
/// Keeps a design's unsaved work and its revisions in the logbook beside it, apart from the thread that types. The logbook is begun with the
/// first change or save, not by looking.
/// </summary>
internal sealed class DesignJournal : IDisposable
{
    private readonly Lock gate = new();
    private readonly string path;
    private Logbook? logbook;
    private (string Text, string Basis)? waiting;
    private Task work = Task.CompletedTask;

    public DesignJournal(string path)
    {
        this.path = path;
        if (File.Exists(Path.Combine(Path.GetDirectoryName(path)!, Logbook.FileName))) Open();
    }

    /// <summary>Why nothing can be kept; null where it can.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>Done when everything handed over is on the disk; for tests.</summary>
    public Task Settled
    {
        get
        {
            lock (gate) return work;
        }
    }

    /// <summary>Unsaved work of an earlier sitting; null where there is none.</summary>
    public UnsavedWork? Unsaved => logbook?.Unsaved().Value;

    /// <summary>Saved revisions, newest first.</summary>
    public ValueList<Revision> Revisions => logbook?.Revisions().Value ?? [];

    /// <summary>Text of a revision; null where the logbook does not have it.</summary>
    public string? TextOf(Revision revision) => logbook?.TextOf(revision).Value;

    /// <summary>What is ticked off; empty where there is no logbook yet.</summary>
    public Logged<ValueList<StepTick>> Ticks => logbook?.Progress() ?? new([]);

    /// <summary>What was measured; empty where there is no logbook yet.</summary>
    public Logged<ValueList<MeasuredValue>> Measured => logbook?.Measured() ?? new([]);

    /// <summary>Writes into the logbook, which is begun where there is none.</summary>
    /// <returns>Why it cannot be written; empty where it was.</returns>
    public ValueList<Problem> Enter(Action<Logbook, List<Problem>> what)
    {
        if (logbook is null) Open();
        if (logbook is not { } book) return Problem is { } closed ? [closed] : [];
        List<Problem> problems = [];
        what(book, problems);
        return problems.ToValueList();
    }

    /// <summary>Keeps the text on the screen; returns at once. Of several waiting only the newest is written.</summary>
    public void Keep(string text, string saved)
    {
        lock (gate)
        {
            var idle = waiting is null;
            waiting = (text, saved);
            if (idle) work = work.ContinueWith(_ => Write(), CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Default);
        }
    }

    /// <summary>Keeps a revision, and drops unsaved work.</summary>
    public void Save(string text) => Do(book => book.Save(text, "", DateTimeOffset.UtcNow).Problem);

    /// <summary>Drops unsaved work.</summary>
    public void Drop() => Do(book => book.Drop().Problem);

    public void Dispose()
    {
        work.Wait(TimeSpan.FromSeconds(2));
        logbook?.Dispose();
    }

    private void Write()
    {
        (string Text, string Basis)? next;
        lock (gate) (next, waiting) = (waiting, null);
        if (next is not { } now) return;
        if (now.Text == now.Basis) Drop();
        else Do(book => book.Keep(now.Text, Logbook.HashOf(now.Basis), DateTimeOffset.UtcNow).Problem);
    }

    private void Do(Func<Logbook, Problem?> what)
    {
        if (logbook is null) Open();
        if (logbook is { } book) Problem = what(book);
    }

    private void Open()
    {
        lock (gate)
        {
            if (logbook is not null) return;
            var opened = Logbook.Open(path);
            (logbook, Problem) = (opened.Value, opened.Problem);
        }
    }
}
