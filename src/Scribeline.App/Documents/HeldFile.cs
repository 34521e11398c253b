using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <summary>A file that a design names, while it is worked on with it: its text here, and as it was read or written last.</summary>
internal sealed class HeldFile
{
    private HeldFile(string path, string text) => (Path, Text, Saved, Disk) = (path, text, text, new(path));

    /// <summary>The file.</summary>
    public string Path { get; }

    /// <summary>Its text here.</summary>
    public string Text { get; set; }

    /// <summary>Its text as last read or written.</summary>
    public string Saved { get; private set; }

    /// <summary>The file as it was read or written last.</summary>
    public FileWatch Disk { get; private set; }

    /// <summary>Whether the text differs from the file as last read or written.</summary>
    public bool IsChanged => Text != Saved;

    /// <summary>Whether there is a text, here or on the disk.</summary>
    public bool IsThere => Text.Length > 0 || Disk.WasThere;

    /// <summary>A file that is not on the disk, to be given a text again.</summary>
    public static HeldFile Lost(string path) => new(path, "");

    /// <summary>A file as it is on the disk; null where it cannot be read.</summary>
    public static HeldFile? Open(string path) => DesignFile.TextOf(path).Text is { } text ? new(path, text) : null;

    /// <summary>Notes that the file holds a text now.</summary>
    public void Holds(string saved) => (Saved, Disk) = (saved, new(Path));
}
