using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <summary>Files that a design may name: those in its folder and in the folders beside it.</summary>
internal static class NearFiles
{
    private const int Most = 200;

    // A key that only files of that sort hold at the left margin.
    private static readonly Dictionary<string, string> Signs = new(StringComparer.Ordinal)
    {
        ["motor"] = "thrust:",
        ["site"] = "latitude:",
        ["weather"] = "wind",
    };

    /// <summary>Names of the files for a key, as they are typed; empty where the key takes no file.</summary>
    public static IReadOnlyList<string> For(string key, string designFile)
    {
        if (!Signs.TryGetValue(key, out var sign) || Path.GetDirectoryName(designFile) is not { } own || Path.GetDirectoryName(own) is not { } parent) return [];
        try
        {
            return [.. Directory.EnumerateDirectories(parent).Take(Most).SelectMany(f => Directory.EnumerateFiles(f, "*.yaml").Take(Most))
                .Where(f => Path.GetFileName(f) != "rocket.yaml" && Holds(f, sign))
                .Select(f => Path.GetRelativePath(own, f).Replace('\\', '/')).Order(StringComparer.Ordinal).Take(Most)];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>The folders of other designs nearby that name a file too.</summary>
    public static IReadOnlyList<string> DesignsNaming(string file, string designFile)
    {
        if (Path.GetDirectoryName(Path.GetDirectoryName(designFile)) is not { } parent) return [];
        try
        {
            return [.. Directory.EnumerateDirectories(parent).Take(Most).Select(f => Path.Combine(f, "rocket.yaml")).Where(f => f != designFile && File.Exists(f) && Names(f, file))
                .Select(f => Path.GetFileName(Path.GetDirectoryName(f)!)).Order(StringComparer.Ordinal)];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static bool Names(string design, string file) => DesignFile.Read(design).Named.Any(n => n.Path == file);

    private static bool Holds(string file, string sign) => new FileInfo(file).Length < 100_000 && File.ReadLines(file).Any(l => l.StartsWith(sign, StringComparison.Ordinal));
}
