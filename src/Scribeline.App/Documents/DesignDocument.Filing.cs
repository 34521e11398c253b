using Scribeline.Engine.Quantities;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Documents;

/// <content>How a design goes to its file and comes from it: saving, what another program wrote there, unsaved work and revisions.</content>
public sealed partial class DesignDocument
{
    /// <summary>The design file as it was read or written last.</summary>
    public FileWatch Disk { get; private set; }

    /// <summary>Whether its text, or that of a file it names or named, differs from the file as last read or written.</summary>
    public bool IsChanged
    {
        get
        {
            lock (gate) return IsOwnChanged || Changes().Any();
        }
    }

    /// <summary>Unsaved work of an earlier sitting, until it is taken up or dropped; null where there is none.</summary>
    public UnsavedWork? Unsaved { get; private set; }

    /// <summary>Why unsaved work is not kept; null where it is.</summary>
    public Problem? Unkept => journal.Problem;

    /// <summary>Saved revisions, newest first.</summary>
    public ValueList<Revision> Revisions => journal.Revisions;

    /// <summary>What changed since a revision, in the design and in the files it named then; null where the logbook does not have its text.</summary>
    internal ValueList<ChangedFile>? Since(Revision revision)
    {
        if (journal.TextOf(revision) is not { } text) return null;
        return
        [
            new(System.IO.Path.GetFileName(Path), LineDifference.Between(text, Reading.Text)),
            .. journal.FilesOf(revision).Select(f => new ChangedFile(f.Name, PathOf(f.Name) is { } path && TextOf(path) is { } now ? LineDifference.Between(f.Text, now) : null)),
        ];
    }

    /// <summary>
    /// Puts the design and the files it named back to what they were with a revision, as one change that can be undone. A file that is gone comes
    /// back, and is written with the next saving.
    /// </summary>
    /// <returns>Names of the files that have another text now, the design's own first.</returns>
    public ValueList<string> TakeUp(Revision revision)
    {
        List<FileEdit> changed = [];
        lock (gate)
        {
            if (journal.TextOf(revision) is not { } text) return [];
            List<FileEdit> edits = [new("", TextEdit.Between(reading.Text, text))];
            Open(Read("", text).Named.Select(n => n.Path));
            foreach (var file in journal.FilesOf(revision))
            {
                if (PathOf(file.Name) is not { } path || HeldOrLost(path) is not { } held) continue;
                edits.Add(new(path, TextEdit.Between(held.Text, file.Text)));
                held.Text = file.Text;
            }

            changed = [.. edits.Where(e => !e.Edit.IsNothing)];
            history.Did(changed);
            Became(Read("", text));
        }

        Changed?.Invoke();
        return changed.Select(e => e.File.Length == 0 ? System.IO.Path.GetFileName(Path) : NameOf(e.File)).ToValueList();
    }

    /// <summary>Files that another program changed while they were typed in here, by name.</summary>
    public ValueList<string> Told
    {
        get
        {
            lock (gate) return Watched().Where(w => w.Disk.Told && w.Disk.HasChanged).Select(w => NameOf(w.Path)).ToValueList();
        }
    }

    /// <summary>Writes what was changed to its files, and keeps the revision; what it replaces is one too.</summary>
    /// <param name="over">Whether it may replace what another program wrote there meanwhile.</param>
    /// <returns>Why it was not written; null where it was.</returns>
    public Problem? Save(bool over = false)
    {
        lock (gate)
        {
            if (!over && Watched().FirstOrDefault(w => w.Changed && w.Disk.HasChanged) is { Path: { } other })
                return new("", $"{NameOf(other)} was changed by another program.", "Take over its text, or keep yours and save again.");
            var (text, files) = OnDisk();
            foreach (var held in Changes().ToList())
            {
                if (Written(held) is { } problem) return problem;
            }

            if (Write(Path) is { } refused) return refused;
            journal.Save(text, files, Revision.Replaced);
            journal.Save(saved, reading.Kept);
        }

        Changed?.Invoke();
        return null;
    }

    /// <summary>Writes the text to a file that is not there yet, with copies of the files beside the design, and works on that one from then on.</summary>
    /// <returns>Why it was not written; null where it was.</returns>
    public Problem? SaveAs(string path)
    {
        if (File.Exists(path)) return new("", $"{System.IO.Path.GetFileName(System.IO.Path.GetDirectoryName(path))} is there already and stays as it is.", "Type another name.");
        lock (gate)
        {
            var own = Folder;
            if (Write(path) is { } refused) return refused;
            foreach (var held in named.Select(n => Held(n.Path)).OfType<HeldFile>().Where(h => h.Path.StartsWith(own + System.IO.Path.DirectorySeparatorChar, StringComparison.Ordinal)).ToList())
            {
                var copy = System.IO.Path.Combine(Folder, System.IO.Path.GetRelativePath(own, held.Path));
                if (!File.Exists(copy) && WriteText(copy, held.Text) is { } problem) return problem;
            }

            Became(Read("", reading.Text));
            journal.Save(saved, reading.Kept);
        }

        Changed?.Invoke();
        return null;
    }

    /// <summary>Takes over the text of every file that another program changed, as changes that can be undone.</summary>
    public void TakeFile()
    {
        lock (gate)
        {
            foreach (var changed in Watched().Where(w => w.Disk.HasChanged).ToList()) TakeOver(changed.Path);
        }

        Changed?.Invoke();
    }

    /// <summary>
    /// Looks whether another program changed the files or the logbook: takes over a text where nothing was typed here, otherwise tells; what
    /// was measured counts at once.
    /// </summary>
    public void Look()
    {
        LookAtTheDay();
        var found = false;
        lock (gate)
        {
            foreach (var (path, disk, changed) in Watched().Where(w => w.Disk is { HasChanged: true, Told: false }).ToList())
            {
                found = true;
                if (changed) disk.Told = true;
                else TakeOver(path);
            }

            // A file that was missing has come.
            if (named.Any(n => Held(n.Path) is null && File.Exists(n.Path)))
            {
                found = true;
                Became(Read("", reading.Text));
            }

            found |= LookIntoLogbook();
        }

        if (found) Changed?.Invoke();
    }

    /// <summary>Keeps what was typed here although files changed; the next saving replaces them.</summary>
    public void KeepMine()
    {
        lock (gate)
        {
            foreach (var changed in Watched().Where(w => w.Disk.HasChanged).ToList())
            {
                var text = DesignFile.TextOf(changed.Path).Text ?? "";
                if (changed.Path == Path) (Disk, saved) = (new(Path), text);
                else others[changed.Path].Holds(text);
            }
        }

        Changed?.Invoke();
    }

    /// <summary>Takes up unsaved work of an earlier sitting as changes that can be undone.</summary>
    public void TakeUp()
    {
        if (Unsaved is null) return;
        lock (gate)
        {
            var (own, files) = (journal.Unsaved, journal.UnsavedFiles);
            Unsaved = null;
            if (own is not null) Take("", own.Text, null);
            foreach (var (file, work) in files)
            {
                if (PathOf(file) is { } near && HeldOrLost(near) is not null) Take(near, work.Text, null);
            }
        }

        Changed?.Invoke();
    }

    /// <summary>Drops unsaved work of an earlier sitting.</summary>
    public void DropUnsaved()
    {
        Unsaved = null;
        journal.Drop();
        Changed?.Invoke();
    }

    private bool IsOwnChanged => reading.Text != saved;

    // What an earlier sitting left unsaved, of the design or of a file it names.
    private UnsavedWork? Kept()
    {
        if (journal.Unsaved is { } own && own.Text != reading.Text) return own;
        Open(journal.UnsavedFiles.Select(u => PathOf(u.File)).OfType<string>());
        return journal.UnsavedFiles.FirstOrDefault(u => PathOf(u.File) is { } file && (Held(file) is { } held ? held.Text != u.Work.Text : !File.Exists(file)))?.Work;
    }

    private IEnumerable<(string Path, FileWatch Disk, bool Changed)> Watched() =>
        named.Select(n => others.GetValueOrDefault(n.Path)).OfType<HeldFile>().Union(Changes()).Select(h => (h.Path, h.Disk, h.IsChanged)).Prepend((Path, Disk, IsOwnChanged));

    // What a saving is about to replace, whoever wrote it.
    private (string Text, ValueList<KeptFile> Files) OnDisk() => (
        DesignFile.TextOf(Path).Text ?? saved,
        reading.Kept.Concat(Changes().Select(h => new KeptFile(NameOf(h.Path), h.Text))).DistinctBy(f => f.Name)
            .Select(f => PathOf(f.Name) is { } path && others.TryGetValue(path, out var held) && held.IsChanged ? f with { Text = DesignFile.TextOf(path).Text ?? held.Saved } : f)
            .Where(f => f.Text.Length > 0).ToValueList());

    private void TakeOver(string path)
    {
        var text = DesignFile.TextOf(path).Text;
        if (path == Path)
        {
            // A file that is gone, or no text any more: what is here stays.
            Disk = new(Path);
            if (text is null) return;
            saved = text;
            Take("", text, null);
        }
        else if (text is null)
        {
            others.Remove(path);
            Became(Read("", reading.Text));
        }
        else
        {
            others[path].Holds(text);
            Take(path, text, null);
        }
    }

    private Problem? Write(string path)
    {
        if (path == Path && !IsOwnChanged) return null;
        if (WriteText(path, reading.Text) is { } problem) return problem;
        if (path != Path)
        {
            journal.Dispose();
            journal = new(path);
            (measured, shots, flights, drawn) = (null, null, null, (-1, null));

            // What was measured on, confirmed of or fired from the one rocket says nothing of the other.
            Ask();
        }

        (Path, saved, Disk, Unsaved) = (path, reading.Text, new(path), null);
        return null;
    }

    // Asked again at the last moment: a folder may have become a link meanwhile.
    private Problem? Written(HeldFile held)
    {
        if (DesignFile.Near(NameOf(held.Path), Path) is { File: null, Problem: { } outside }) return outside;
        if (WriteText(held.Path, held.Text) is { } problem) return problem;
        held.Holds(held.Text);
        return null;
    }

    private static Problem? WriteText(string path, string text)
    {
        try
        {
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
            SafeWriting.Write(path, text);
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return new("", $"{System.IO.Path.GetFileName(path)} cannot be written: {failure.Message.TrimEnd('.')}.", "Look who may write there.");
        }
    }
}
