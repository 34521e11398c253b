using Scribeline.App.Commands;
using Scribeline.Engine.Quantities;
using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <content>The files the design names: motor, thrust table, field and weather. They are typed in like the design itself.</content>
public sealed partial class DesignDocument
{
    private readonly Dictionary<string, HeldFile> others = new(StringComparer.Ordinal);
    private ValueList<NamedFile> named = [];

    /// <summary>The files the design names, there or not; while its text cannot be read, as they were last.</summary>
    public ValueList<NamedFile> Named
    {
        get
        {
            lock (gate) return named;
        }
    }

    /// <summary>Points of the thrust table as they stand in their text; empty where there is none.</summary>
    public ValueList<ThrustRow> ThrustRows
    {
        get
        {
            lock (gate) return ThrustPlace() is { } place && TextOf(place.File) is { } text ? ThrustText.Rows(text, place.At) : [];
        }
    }

    /// <summary>Whether the thrust table stands in a file of its own, where only seconds and newtons are kept.</summary>
    public bool ThrustInColumns
    {
        get
        {
            lock (gate) return ThrustPlace() is { At: null };
        }
    }

    /// <summary>The text here of the design, or of a file it names; null where that is not open.</summary>
    /// <param name="file">The file; empty for the design's own.</param>
    public string? TextOf(string file)
    {
        lock (gate) return file.Length == 0 ? reading.Text : Held(file)?.Text;
    }

    /// <summary>A file's name from the design's folder.</summary>
    public string NameOf(string path) => DesignReading.NameOf(path, Path);

    /// <summary>Whether a file it names lies outside the design's own folder, where other designs may use it.</summary>
    public bool IsShared(NamedFile file) => !file.Path.StartsWith(Folder + System.IO.Path.DirectorySeparatorChar, StringComparison.Ordinal);

    /// <summary>Changes the thrust table.</summary>
    /// <param name="change">From its text, and its path in that text (null for a file of two columns).</param>
    /// <param name="key">What is undone together with it; null for nothing.</param>
    public Problem? ChangeThrust(Func<string, string?, TextChange> change, string? key = null)
    {
        (string File, string? At)? place;
        lock (gate) place = ThrustPlace();
        return place is { } there
            ? ChangeIn(there.File, text => change(text, there.At), "motor.thrust", key)
            : new("motor.thrust", "There is no thrust table that can be read.", "Name another under thrust.");
    }

    /// <summary>
    /// Copies a named file into the design's folder, as it stands here, and names the copy. The file it was copied from goes back to what it was
    /// when it was read or saved last.
    /// </summary>
    /// <param name="key"><c>motor</c>, <c>site</c> or <c>weather</c>.</param>
    /// <param name="name">Name of the copy.</param>
    /// <returns>Why not; null where it was made.</returns>
    public Problem? CopyBeside(string key, string name)
    {
        lock (gate)
        {
            if (named.FirstOrDefault(n => n.Key == key) is not { } file || Held(file.Path) is not { } from) return new(key, "There is no file to copy.", "");
            if (PlaceBeside(name) is not { } stem) return Nameless(key);
            var table = key == "motor" && named.FirstOrDefault(n => n.Key == "motor.thrust") is { } thrust ? Held(thrust.Path) : null;
            if (Taken(stem, table is null ? [".yaml"] : [".yaml", ".csv"]) is { } there) return there;
            var text = from.Text;
            if (table is not null) text = DesignText.Replace(text, "thrust", System.IO.Path.GetFileName(stem) + ".csv").Text;
            if (key == "site" && reading.Design?.Site?.Value?.Boundary?.File is { } boundary)
                text = DesignText.Replace(text, "boundary", NameOf(System.IO.Path.GetFullPath(System.IO.Path.Combine(System.IO.Path.GetDirectoryName(file.Path)!, boundary)))).Text;
            var design = DesignText.Replace(reading.Text, key, System.IO.Path.GetFileName(stem) + ".yaml");
            if (design.Problem is { } refused) return refused;
            if ((table is null ? null : WriteText(stem + ".csv", table.Text)) is { } first) return first;
            if (WriteText(stem + ".yaml", text) is { } second) return second;
            List<FileEdit> edits = [new("", TextEdit.Between(reading.Text, design.Text))];
            foreach (var held in new[] { from, table }.OfType<HeldFile>())
            {
                edits.Add(new(held.Path, TextEdit.Between(held.Text, held.Saved)));
                held.Text = held.Saved;
            }

            history.Did(edits);
            Became(Read("", design.Text));
        }

        Changed?.Invoke();
        return null;
    }

    /// <summary>Begins a file in the design's folder with figures to replace, and names it.</summary>
    /// <param name="key"><c>motor</c>, <c>site</c> or <c>weather</c>.</param>
    /// <param name="name">Name of the file.</param>
    /// <returns>Why not; null where it was made.</returns>
    public Problem? BeginFile(string key, string name)
    {
        if (PlaceBeside(name) is not { } stem) return Nameless(key);
        if (Taken(stem, [".yaml"]) is { } there) return there;
        if (WriteText(stem + ".yaml", Starter.FileFor(key)) is { } problem) return problem;
        return Change(text => DesignText.Replace(text, key, System.IO.Path.GetFileName(stem) + ".yaml"), key);
    }

    private string Folder => System.IO.Path.GetDirectoryName(Path)!;

    // A name never leads out of the design's folder: it is letters, digits and hyphens.
    private string? PlaceBeside(string name) =>
        NewCommand.FolderName(name) is { Length: > 0 and <= 80 } stem && stem != "rocket" ? System.IO.Path.Combine(Folder, stem) : null;

    private static Problem Nameless(string key) => new(key, "A file's name has at least one letter or digit, and is not rocket.", "Type one, such as my-" + key + ".");

    private static Problem? Taken(string stem, string[] endings) => endings.Select(e => stem + e).FirstOrDefault(File.Exists) is { } there
        ? new("", $"{System.IO.Path.GetFileName(there)} is there already and stays as it is.", "Type another name.")
        : null;

    // Where a path of the design stands: the file, and the path in it; no file where that cannot be read.
    private (string? File, string At) Holder(string path)
    {
        lock (gate)
        {
            var dot = path.IndexOf('.', StringComparison.Ordinal);
            return dot > 0 && named.FirstOrDefault(n => n.Key == path[..dot]) is { } file
                ? (Held(file.Path)?.Path, path[(dot + 1)..])
                : ("", path);
        }
    }

    private (string File, string? At)? ThrustPlace()
    {
        if (named.FirstOrDefault(n => n.Key == "motor.thrust") is { } table) return Held(table.Path) is null ? null : (table.Path, null);
        return Holder("motor.thrust") is { File: { } file, At: { } at } ? (file, at) : null;
    }

    // Reads the design with another text in place of one.
    private DesignReading Read(string file, string text)
    {
        var texts = others.Where(o => o.Value.IsThere).ToDictionary(o => o.Key, o => o.Value.Text, StringComparer.Ordinal);
        if (file.Length > 0) texts[file] = text;
        return DesignFile.ReadText(file.Length == 0 ? text : reading.Text, Path, texts);
    }

    // Opens what is named now. A text that cannot be read names nothing; it is not taken for one that has dropped its files.
    private void Hold()
    {
        if (reading.Named.Count > 0 || reading.Design is not null) named = reading.Named;
        Open(named.Select(n => n.Path));
    }

    private void Open(IEnumerable<string> files)
    {
        foreach (var file in files.Where(f => Held(f) is null))
        {
            if (File.Exists(file) && HeldFile.Open(file) is { } held) others[file] = held;
        }
    }

    // A file that is open here; null where it is not, or is gone.
    private HeldFile? Held(string path) => others.GetValueOrDefault(path) is { IsThere: true } held ? held : null;

    // The same, or one to be given its text again where there is none on the disk.
    private HeldFile? HeldOrLost(string path)
    {
        if (others.TryGetValue(path, out var held)) return held;
        return File.Exists(path) ? null : others[path] = HeldFile.Lost(path);
    }

    // A kept name leads nowhere else than what is typed in a design may lead.
    private string? PathOf(string name) => DesignFile.Near(name, Path).File;

    private Dictionary<string, string> NamedTexts() =>
        named.Where(n => Held(n.Path) is not null && !n.Key.Contains('.', StringComparison.Ordinal)).DistinctBy(n => n.Key).ToDictionary(n => n.Key, n => others[n.Path].Text, StringComparer.Ordinal);

    // What was typed into a file is not lost when the design names another in its place.
    private IEnumerable<HeldFile> Changes() => others.Values.Where(h => h.IsChanged);

    private List<(string File, string Text, string Basis)> Unwritten() => [.. Changes().Select(h => (NameOf(h.Path), h.Text, h.Saved))];
}
