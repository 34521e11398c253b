namespace Scribeline.App.Documents;

/// <summary>Designs opened before, newest first, one path a line in a file of the person's own.</summary>
/// <param name="file">The file; null keeps nothing.</param>
internal sealed class RecentDesigns(string? file)
{
    private const int Most = 12;

    private readonly Lock gate = new();

    /// <summary>Where they are noted for a person on this machine; null where the machine keeps no data for a person.</summary>
    public static string? UsualFile =>
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } folder ? Path.Combine(folder, "scribeline", "recent") : null;

    /// <summary>Paths of design files that are still there, newest first.</summary>
    public IReadOnlyList<string> All
    {
        get
        {
            lock (gate) return [.. Read().Where(File.Exists)];
        }
    }

    /// <summary>Puts a design first.</summary>
    public void Add(string path)
    {
        if (file is null) return;
        lock (gate)
        {
            try
            {
                Directory.CreateDirectory(Path.GetDirectoryName(file)!);
                File.WriteAllLines(file, Read().Where(p => p != path).Prepend(path).Take(Most));
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                // A list of convenience: without a place to keep it there is none.
            }
        }
    }

    private string[] Read()
    {
        try
        {
            return file is not null && File.Exists(file) ? File.ReadAllLines(file) : [];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
