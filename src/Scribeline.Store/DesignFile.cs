using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using YamlDotNet.Core;

namespace Scribeline.Store;

/// <summary>Reads design files. Never throws for what a file holds; every problem of a file is told at once.</summary>
public static class DesignFile
{
    private static readonly Dictionary<string, (string? File, Mark Mark)> NoPlaces = [];
    private static readonly Dictionary<string, string> NoTexts = [];

    /// <summary>Reads a design file, or the design file in a folder: <c>rocket.yaml</c>, else the only <c>*.rocket.yaml</c>.</summary>
    /// <param name="path">File or folder.</param>
    public static DesignReading Read(string path)
    {
        List<Problem> problems = [];
        var file = Find(path, problems);
        var text = file is null ? null : SafeText.Read(file, problems);
        return text is null
            ? new(null, problems, "", file, NoPlaces, [])
            : Read(text, file, problems, NoTexts);
    }

    /// <summary>Reads a design from its text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">The file it is of, from which other files are found; null refuses other files.</param>
    /// <param name="held">Texts of other files that count in place of what is on the disk, by full name; null for none.</param>
    public static DesignReading ReadText(string text, string? path = null, IReadOnlyDictionary<string, string>? held = null)
    {
        List<Problem> problems = [];
        var whole = SafeText.Checked(text.TrimStart('\uFEFF'), "The text", problems);
        return whole is null ? new(null, problems, text, path, NoPlaces, []) : Read(whole, path, problems, held ?? NoTexts);
    }

    /// <summary>Reads the text of one file, as a design's reader would.</summary>
    /// <returns>The text without a byte-order mark; null with a problem where there is none to read.</returns>
    public static (string? Text, ValueList<Problem> Problems) TextOf(string file)
    {
        List<Problem> problems = [];
        return (SafeText.Read(file, problems), problems.ToValueList());
    }

    /// <summary>The full name of a file that a design may name, and that may be written for it.</summary>
    /// <param name="name">Relative to the design's folder.</param>
    /// <param name="design">The design file.</param>
    /// <returns>The file, there or not; null with the reason where the name leads elsewhere.</returns>
    public static (string? File, Problem? Problem) Near(string name, string design)
    {
        List<Problem> problems = [];
        return (OtherFiles.Resolve(name, design, problems), problems.FirstOrDefault());
    }

    private static DesignReading Read(string text, string? path, List<Problem> problems, IReadOnlyDictionary<string, string> held)
    {
        var root = YamlTree.Read(text, problems);
        var binder = new Binder(problems);
        if (root is null && problems.Count > 0) return new(null, problems, text, path, NoPlaces, []);
        var (design, _) = binder.Root<RocketDesign>(root, "");
        var places = binder.Places.ToDictionary(p => p.Key, p => ((string?)null, p.Value));
        OtherFiles others = new(path, held, problems);
        var whole = problems.Count == 0;
        if (root is YamlMap)
        {
            design = others.Join(design);
            foreach (var (at, place) in others.Places) places.TryAdd(at, place);
            whole = problems.Count == 0;

            // What stands around something unreadable looks incomplete only because of it.
            var unreadable = problems.ToList();
            problems.AddRange(DesignChecks.In(design, binder.Unread.ToValueList()).Where(c => !unreadable.Exists(p => Within(p.At, c.At))));
        }

        return new(whole ? design : null, problems, text, path, places, others.Files);
    }

    private static bool Within(string inner, string outer) =>
        outer.Length == 0 || (inner.StartsWith(outer, StringComparison.Ordinal) && (inner.Length == outer.Length || inner[outer.Length] is '.' or '['));

    /// <summary>The design file meant by a path.</summary>
    private static string? Find(string path, List<Problem> problems)
    {
        try
        {
            if (!Directory.Exists(path)) return Path.GetFullPath(path);
            var usual = Path.Combine(path, "rocket.yaml");
            if (File.Exists(usual)) return Path.GetFullPath(usual);
            var found = Directory.EnumerateFiles(path, "*.rocket.yaml").Order(StringComparer.Ordinal).Take(10).ToList();
            if (found.Count == 1) return Path.GetFullPath(found[0]);
            problems.Add(found.Count == 0
                ? new("", $"The folder {Path.GetFileName(Path.GetFullPath(path))} holds no design file.", "Name it rocket.yaml, or something.rocket.yaml.")
                : new("", $"The folder {Path.GetFileName(Path.GetFullPath(path))} holds {found.Count} design files.", $"Name one of them: {string.Join(", ", found.Select(Path.GetFileName))}."));
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            problems.Add(new("", "The path cannot be used.", "Check its letters and who may read the folder."));
        }

        return null;
    }
}
