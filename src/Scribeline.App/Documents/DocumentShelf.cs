using System.Collections.Concurrent;
using System.Text;
using Scribeline.App.Commands;
using Scribeline.Engine.Quantities;
using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <summary>
/// The designs at hand: those open, and those that may be opened. A page names a design by its id; no path ever comes from a page.
/// </summary>
internal sealed class DocumentShelf : IDisposable
{
    private readonly Lock gate = new();
    private readonly ConcurrentDictionary<string, DesignDocument> open = new(StringComparer.Ordinal);
    private readonly ShelfOptions options;
    private readonly Timer look;

    public DocumentShelf(ShelfOptions options)
    {
        this.options = options;
        Recent = new(options.RecentFile);
        look = new(_ => Look(), null, options.LookEvery, options.LookEvery);
    }

    /// <summary>Designs opened before.</summary>
    public RecentDesigns Recent { get; }

    /// <summary>The folder worked in: new designs are made in it, and copies of examples.</summary>
    public string Folder => options.Folder;

    /// <summary>Designs in the folder worked in: its own, and one in each folder beneath it.</summary>
    public IReadOnlyList<string> InFolder => DesignsBeneath(Folder);

    /// <summary>The examples that came with the program.</summary>
    public IReadOnlyList<string> Examples => options.Examples is { } folder && Path.GetFullPath(folder) != Path.GetFullPath(Folder) ? DesignsBeneath(folder) : [];

    /// <summary>The open design with this id; null where there is none.</summary>
    public DesignDocument? Find(string id) => open.GetValueOrDefault(id);

    /// <summary>Opens a design, or finds it where it is open already.</summary>
    /// <param name="path">File or folder.</param>
    public (DesignDocument? Document, ValueList<Problem> Problems) Open(string path)
    {
        lock (gate)
        {
            var full = Path.GetFullPath(path);
            var held = open.Values.FirstOrDefault(d => d.Path == full || Path.GetDirectoryName(d.Path) == full);
            if (held is not null) return (held, []);
            var (document, problems) = DesignDocument.Open(IdFor(full), full, options.Cases, options.Rest);
            if (document is null) return (null, problems);
            open[document.Id] = document;
            Recent.Add(document.Path);
            return (document, []);
        }
    }

    /// <summary>Opens a copy of an example in the folder worked in, with the files it names. What is there already stays as it is.</summary>
    /// <param name="path">One of <see cref="Examples"/>.</param>
    public (DesignDocument? Document, ValueList<Problem> Problems) OpenCopy(string path)
    {
        if (!Examples.Contains(path)) return (null, [new("", "That is not one of the examples.", "")]);
        try
        {
            foreach (var file in DesignFile.Read(path).Files)
            {
                var copy = Path.Combine(Folder, Path.GetRelativePath(options.Examples!, file));
                Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
                if (!File.Exists(copy)) File.Copy(file, copy);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return (null, [new("", $"The copy cannot be written: {failure.Message.TrimEnd('.')}.", "Start the workbench in a folder that may be written.")]);
        }

        return Open(Path.Combine(Folder, Path.GetRelativePath(options.Examples!, path)));
    }

    /// <summary>Where a design with this name would go beside the folder of another, or in the folder worked in; null where the name has no letter.</summary>
    public string? PlaceFor(string name, DesignDocument? beside = null)
    {
        var folder = NewCommand.FolderName(name);
        var parent = beside is null ? Folder : Path.GetDirectoryName(Path.GetDirectoryName(beside.Path)!) ?? Folder;
        return folder.Length is 0 or > 100 ? null : Path.Combine(parent, folder, "rocket.yaml");
    }

    /// <summary>Makes a new design in the folder worked in. Nothing that is there is overwritten.</summary>
    /// <returns>Why it was not made; empty where it was.</returns>
    public ValueList<Problem> Begin(string name)
    {
        if (name.Any(char.IsControl) || PlaceFor(name) is not { } path) return [new("", "A rocket's name has at least one letter or digit.", "Type one, such as Night Heron.")];
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            file.Write(Encoding.UTF8.GetBytes(Starter.Text(name.Trim())));
            return [];
        }
        catch (IOException) when (File.Exists(path))
        {
            return [new("", $"{Path.GetFileName(Path.GetDirectoryName(path))} is there already and stays as it is.", "Type another name.")];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [new("", $"It cannot be written: {failure.Message.TrimEnd('.')}.", "Start the workbench in a folder that may be written.")];
        }
    }

    public void Dispose()
    {
        // A look that is under way ends first: what it looks into is closed next.
        using ManualResetEvent ended = new(false);
        if (look.Dispose(ended)) ended.WaitOne();
        foreach (var document in open.Values) document.Dispose();
    }

    private void Look()
    {
        foreach (var document in open.Values) document.Look();
    }

    private string IdFor(string path)
    {
        var named = File.Exists(path) && Path.GetFileName(path) != "rocket.yaml" ? Path.GetFileNameWithoutExtension(path) : Path.GetFileName(File.Exists(path) ? Path.GetDirectoryName(path)! : path);
        var name = NewCommand.FolderName(named);
        if (name.Length == 0) name = "design";
        var id = name;
        for (var i = 2; open.ContainsKey(id); i++) id = $"{name}-{i}";
        return id;
    }

    private static List<string> DesignsBeneath(string folder)
    {
        try
        {
            return [.. Directory.EnumerateDirectories(folder).Prepend(folder).Take(500).Select(f => Path.Combine(f, "rocket.yaml")).Where(File.Exists).Order(StringComparer.Ordinal)];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
