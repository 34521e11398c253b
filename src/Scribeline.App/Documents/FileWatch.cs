namespace Scribeline.App.Documents;

/// <summary>A file as it was when last read or written, to notice when another program changes it.</summary>
public sealed class FileWatch(string path)
{
    private readonly (DateTime Time, long Length) then = Stamp(path);

    /// <summary>Whether there was a file then.</summary>
    public bool WasThere => then.Length >= 0;

    /// <summary>Whether it is another now.</summary>
    public bool HasChanged => Stamp(path) != then;

    /// <summary>Whether the person has been told.</summary>
    public bool Told { get; set; }

    private static (DateTime Time, long Length) Stamp(string path)
    {
        var file = new FileInfo(path);
        return file.Exists ? (file.LastWriteTimeUtc, file.Length) : (default, -1);
    }
}
