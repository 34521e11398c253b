using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Store.Logbooks;
using Scribeline.Store.Logs;

namespace Scribeline.App.Documents;

/// <summary>
/// Keeps a design's unsaved work and its revisions in the logbook beside it, apart from the thread that types. The logbook is begun with the
/// first change or save, not by looking.
/// </summary>
internal sealed class DesignJournal : IDisposable
{
    private readonly Lock gate = new();
    private readonly Lock writing = new();
    private readonly string path;
    private Logbook? logbook;
    private (string Text, string Basis, IReadOnlyList<(string File, string Text, string Basis)> Files)? waiting;
    private Task work = Task.CompletedTask;
    private long? seen;
    private bool keptFiles;

    public DesignJournal(string path)
    {
        this.path = path;
        if (IsBegun) Open();
        seen = logbook?.ByOthers;
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

    /// <summary>Unsaved work of an earlier sitting on files that the design names.</summary>
    public ValueList<UnsavedFile> UnsavedFiles => logbook?.UnsavedFiles().Value ?? [];

    /// <summary>Saved revisions, newest first.</summary>
    public ValueList<Revision> Revisions => logbook?.Revisions().Value ?? [];

    /// <summary>Text of a revision; null where the logbook does not have it.</summary>
    public string? TextOf(Revision revision) => logbook?.TextOf(revision).Value;

    /// <summary>The files that a revision names, as they were with it; empty where none were kept.</summary>
    public ValueList<KeptFile> FilesOf(Revision revision) => logbook?.FilesOf(revision).Value ?? [];

    /// <summary>What is ticked off; empty where there is no logbook yet.</summary>
    public Logged<ValueList<StepTick>> Ticks => logbook?.Progress() ?? new([]);

    /// <summary>What was measured; empty where there is no logbook yet.</summary>
    public Logged<ValueList<MeasuredValue>> Measured => logbook?.Measured() ?? new([]);

    /// <summary>Recorded flights; none where there is no logbook yet.</summary>
    public Logged<FlownFlights> Flights => logbook is { } book ? FlownFlights.Of(book, path) : new(FlownFlights.None);

    /// <summary>Whether there is a logbook that can be read.</summary>
    public bool HasLogbook => logbook is not null;

    /// <summary>Reads from the logbook; null where there is none or it cannot be read.</summary>
    public T? Read<T>(Func<Logbook, Logged<T>> what)
        where T : class => logbook is { } book ? what(book).Value : null;

    /// <summary>What was fired on the ground; empty where there is no logbook yet.</summary>
    public Logged<ValueList<LoggedShot>> Shots => logbook?.Shots() ?? new([]);

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

    /// <summary>Whether another program has written into the logbook, or begun it, since this was asked last.</summary>
    public bool IsWrittenByOthers()
    {
        if (logbook is null && IsBegun) Open();
        if (logbook?.ByOthers is not { } now || now == seen) return false;
        seen = now;
        return true;
    }

    /// <summary>Keeps the texts on the screen; returns at once. Of several waiting only the newest is written.</summary>
    /// <param name="text">The design's own.</param>
    /// <param name="saved">What its file holds.</param>
    /// <param name="files">Name, text and saved text of the files it names that were changed.</param>
    public void Keep(string text, string saved, IReadOnlyList<(string File, string Text, string Basis)> files)
    {
        lock (gate)
        {
            var idle = waiting is null;
            waiting = (text, saved, files);
            if (idle) work = work.ContinueWith(_ => Write(), CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Default);
        }
    }

    /// <summary>Keeps a revision, and drops unsaved work.</summary>
    /// <param name="text">The design's own text.</param>
    /// <param name="files">The files it names.</param>
    /// <param name="words">Why; may be empty.</param>
    public void Save(string text, ValueList<KeptFile> files, string words = "") =>
        Settle(book => book.Save(text, files, words, DateTimeOffset.UtcNow).Problem);

    /// <summary>Drops unsaved work.</summary>
    public void Drop() => Settle(book => book.Drop().Problem);

    public void Dispose()
    {
        // However long it takes: the logbook itself gives up on what another program holds.
        work.Wait();
        logbook?.Dispose();
    }

    private bool IsBegun => File.Exists(Path.Combine(Path.GetDirectoryName(path)!, Logbook.FileName));

    private void Write()
    {
        lock (writing)
        {
            (string Text, string Basis, IReadOnlyList<(string File, string Text, string Basis)> Files)? next;
            lock (gate) (next, waiting) = (waiting, null);
            if (next is not { } now) return;
            KeepFiles(now.Files);
            if (now.Text == now.Basis) Do(book => book.Drop().Problem);
            else Do(book => book.Keep(now.Text, Logbook.HashOf(now.Basis), DateTimeOffset.UtcNow).Problem);
        }
    }

    // After it nothing is unsaved, also of what still waited to be written.
    private void Settle(Func<Logbook, Problem?> what)
    {
        lock (writing)
        {
            lock (gate) waiting = null;
            Do(what);
            KeepFiles([]);
        }
    }

    private void KeepFiles(IReadOnlyList<(string File, string Text, string Basis)> files)
    {
        if (files.Count + (keptFiles ? 1 : 0) == 0) return;
        Do(book => book.KeepFiles(files.Select(f => (f.File, f.Text, Logbook.HashOf(f.Basis))), DateTimeOffset.UtcNow).Problem);
        keptFiles = files.Count > 0;
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
            var others = IsBegun;
            var opened = Logbook.Open(path);
            (logbook, Problem) = (opened.Value, opened.Problem);
            keptFiles = UnsavedFiles.Count > 0;
            if (!others) seen = logbook?.ByOthers;
        }
    }
}
