using Scribeline.Engine.Quantities;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Documents;

/// <summary>
/// One design while it is worked on, shared by every window that shows it: its text, what was done to it, and its answers. The text is the
/// only truth; a change of a quantity is a change of the text in one place. Safe to use from several threads.
/// </summary>
public sealed partial class DesignDocument : IDisposable
{
    private readonly Lock gate = new();
    private readonly EditHistory history = new();
    private readonly LiveAnswers live;
    private DesignReading reading;
    private string saved;
    private DesignJournal journal;
    private (string Text, OutlineMap? Outline) outlined = ("", null);

    private DesignDocument(string id, DesignReading reading, int cases, TimeSpan rest)
    {
        (Id, Path, this.reading, saved) = (id, reading.Path!, reading, reading.Text);
        Disk = new(Path);
        journal = new(Path);
        Unsaved = journal.Unsaved is { } kept && kept.Text != reading.Text ? kept : null;
        live = new(cases, rest, () => Changed?.Invoke());
        Ask();
    }

    /// <summary>Name in addresses.</summary>
    public string Id { get; }

    /// <summary>The design file.</summary>
    public string Path { get; private set; }

    /// <summary>The file as it was read or written last.</summary>
    public FileWatch Disk { get; private set; }

    /// <summary>Told of every change of text, answers or file, from any thread.</summary>
    public event Action? Changed;

    /// <summary>Text and what was read from it.</summary>
    public DesignReading Reading
    {
        get
        {
            lock (gate) return reading;
        }
    }

    /// <summary>Every value that can be typed, with what is typed now; while the text is no YAML, as it was last.</summary>
    public OutlineMap? Outline
    {
        get
        {
            lock (gate)
            {
                if (outlined.Text != reading.Text) outlined = (reading.Text, DesignOutline.Of(reading.Text) ?? outlined.Outline);
                return outlined.Outline;
            }
        }
    }

    /// <summary>Number of the text's version.</summary>
    public int Version
    {
        get
        {
            lock (gate) return history.Version;
        }
    }

    /// <summary>The newest answers; those of an older version while the text has problems.</summary>
    public AnswerSheet Answers => live.Sheet;

    /// <summary>Everything wrong with the text, by line.</summary>
    public ValueList<Problem> Problems
    {
        get
        {
            lock (gate) return reading.Problems.Count > 0 ? reading.Problems : Answers.Problems.Select(reading.Place).ToValueList();
        }
    }

    /// <summary>Whether the text differs from the file as last read or written.</summary>
    public bool IsChanged
    {
        get
        {
            lock (gate) return reading.Text != saved;
        }
    }

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo
    {
        get
        {
            lock (gate) return history.CanUndo;
        }
    }

    /// <summary>Whether there is something to redo.</summary>
    public bool CanRedo
    {
        get
        {
            lock (gate) return history.CanRedo;
        }
    }

    /// <summary>Unsaved work of an earlier sitting, until it is taken up or dropped; null where there is none.</summary>
    public UnsavedWork? Unsaved { get; private set; }

    /// <summary>Why unsaved work is not kept; null where it is.</summary>
    public Problem? Unkept => journal.Problem;

    /// <summary>Saved revisions, newest first.</summary>
    public ValueList<Revision> Revisions => journal.Revisions;

    /// <summary>Text of a revision; null where the logbook does not have it.</summary>
    public string? TextOf(Revision revision) => journal.TextOf(revision);

    /// <summary>Opens a design file, or the one in a folder; null with problems where there is no file to open.</summary>
    /// <param name="id">Name in addresses.</param>
    /// <param name="path">File or folder.</param>
    /// <param name="cases">Cases drawn from the tolerances.</param>
    /// <param name="rest">How long typing must rest before they are drawn.</param>
    public static (DesignDocument? Document, ValueList<Problem> Problems) Open(string id, string path, int cases, TimeSpan rest)
    {
        var reading = DesignFile.Read(path);
        return reading.Path is null || !File.Exists(reading.Path) || (reading.Text.Length == 0 && reading.Problems.Count > 0)
            ? (null, reading.Problems)
            : (new(id, reading, cases, rest), reading.Problems);
    }

    /// <summary>Changes one value. Refused, with what to type instead, where the value cannot be read; the text stays as it was then.</summary>
    /// <param name="path">Path of the value, such as <c>parts[2].length</c>.</param>
    /// <param name="value">As typed; empty removes an optional value.</param>
    /// <param name="key">What is undone together with it; null for nothing.</param>
    public Problem? Change(string path, string value, string? key = null) =>
        Change(text => value.Trim().Length == 0 ? DesignText.Remove(text, path) : DesignText.Replace(text, path, value), path, key);

    /// <summary>Changes the text by a function. Refused where it says so, or where the design could be read before and no longer.</summary>
    /// <param name="change">From the text as it is now.</param>
    /// <param name="path">Where, to find the problem that tells why not.</param>
    /// <param name="key">What is undone together with it; null for nothing.</param>
    public Problem? Change(Func<string, TextChange> change, string path, string? key = null)
    {
        lock (gate)
        {
            var made = change(reading.Text);
            if (made.Problem is not null) return made.Problem;
            var next = DesignFile.ReadText(made.Text, Path);
            if (next.Design is null && Blame(next, path) is { } problem) return problem;
            Take(next, key);
        }

        Changed?.Invoke();
        return null;
    }

    /// <summary>Takes over a whole text that was typed from an earlier version, without losing what happened since.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="version">The version it was typed from.</param>
    /// <param name="key">What is undone together with it; null for nothing.</param>
    /// <returns>False where both changed the same letters: the text stays as it was.</returns>
    public bool Type(string text, int version, string? key = null)
    {
        lock (gate)
        {
            var edit = TextEdit.Between(history.TextOf(version, reading.Text), text.ReplaceLineEndings(NewLine(reading.Text)));
            if (history.Fit(edit, version) is not { } now) return false;
            Take(DesignFile.ReadText(now.In(reading.Text), Path), key);
        }

        Changed?.Invoke();
        return true;
    }

    /// <summary>Takes back the last change.</summary>
    public void Undo() => Step(history.Undo);

    /// <summary>Does again what was taken back last.</summary>
    public void Redo() => Step(history.Redo);

    /// <summary>Writes the text to its file.</summary>
    /// <param name="over">Whether it may replace what another program wrote there meanwhile.</param>
    /// <returns>Why it was not written; null where it was.</returns>
    public Problem? Save(bool over = false)
    {
        if (!over && Disk.HasChanged) return new("", "The file was changed by another program.", "Take over its text, or keep yours and save again.");
        return Write(Path);
    }

    /// <summary>Writes the text to a file that is not there yet, and works on that one from then on.</summary>
    /// <returns>Why it was not written; null where it was.</returns>
    public Problem? SaveAs(string path)
    {
        if (File.Exists(path)) return new("", $"{System.IO.Path.GetFileName(System.IO.Path.GetDirectoryName(path))} is there already and stays as it is.", "Type another name.");
        return Write(path);
    }

    /// <summary>Takes over the file's text as a change that can be undone.</summary>
    public void TakeFile()
    {
        var file = DesignFile.Read(Path);
        if (file.Path is null || (file.Text.Length == 0 && file.Problems.Count > 0)) return;
        lock (gate)
        {
            Disk = new(Path);
            saved = file.Text;
            Take(file, null);
        }

        Changed?.Invoke();
    }

    /// <summary>Looks whether another program changed the file: takes over its text where nothing was typed here, otherwise tells.</summary>
    public void Look()
    {
        if (!Disk.HasChanged || Disk.Told) return;
        if (IsChanged)
        {
            Disk.Told = true;
            Changed?.Invoke();
        }
        else
        {
            TakeFile();
        }
    }

    /// <summary>Keeps what was typed here although the file changed; the next saving replaces it.</summary>
    public void KeepMine()
    {
        lock (gate)
        {
            Disk = new(Path);
            saved = DesignFile.Read(Path).Text;
        }

        Changed?.Invoke();
    }

    /// <summary>Takes up unsaved work of an earlier sitting as a change that can be undone.</summary>
    public void TakeUp()
    {
        if (Unsaved is not { } kept) return;
        Unsaved = null;
        Become(kept.Text);
    }

    /// <summary>Drops unsaved work of an earlier sitting.</summary>
    public void DropUnsaved()
    {
        Unsaved = null;
        journal.Drop();
        Changed?.Invoke();
    }

    /// <summary>Puts another text in place of this one, such as that of an earlier revision, as a change that can be undone.</summary>
    public void Become(string text)
    {
        lock (gate) Take(DesignFile.ReadText(text, Path), null);
        Changed?.Invoke();
    }

    /// <summary>Done when the answers are up to date and unsaved work is kept; for tests.</summary>
    public Task Settled => Task.WhenAll(live.Settled, journal.Settled);

    public void Dispose()
    {
        live.Dispose();
        journal.Dispose();
    }

    private void Step(Func<string, string> step)
    {
        lock (gate)
        {
            var text = step(reading.Text);
            if (text == reading.Text) return;
            reading = DesignFile.ReadText(text, Path);
            journal.Keep(text, saved);
            Ask();
        }

        Changed?.Invoke();
    }

    private void Take(DesignReading next, string? key)
    {
        history.Did(TextEdit.Between(reading.Text, next.Text), reading.Text, key);
        reading = next;
        journal.Keep(next.Text, saved);
        Ask();
    }

    private void Ask()
    {
        if (reading.Good) live.Ask(AsBuilt(reading.Design!), history.Version);
        else live.Rest();
    }

    private Problem? Write(string path)
    {
        lock (gate)
        {
            try
            {
                Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
                SafeWriting.Write(path, reading.Text);
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
            {
                return new("", $"{System.IO.Path.GetFileName(path)} cannot be written: {failure.Message.TrimEnd('.')}.", "Look who may write there.");
            }

            if (path != Path)
            {
                journal.Dispose();
                journal = new(path);
                var counted = Measured.Count > 0;
                (measured, drawn) = (null, (-1, null));

                // What was measured on the one rocket says nothing of the other.
                if (counted || Measured.Count > 0) Ask();
            }

            (Path, saved, Disk, Unsaved) = (path, reading.Text, new(path), null);
            journal.Save(saved);
        }

        Changed?.Invoke();
        return null;
    }

    // What keeps the design from being read: at the changed value if it is to blame.
    private static Problem? Blame(DesignReading next, string path) =>
        next.Problems.FirstOrDefault(p => p.At == path || p.At == path + ".value")
        ?? next.Problems.FirstOrDefault(p => p.At.StartsWith(path, StringComparison.Ordinal));

    private static string NewLine(string text) => text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
}
