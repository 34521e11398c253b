using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Store.Logbooks;
using YamlDotNet.Core;

namespace Scribeline.Store;

/// <summary>A design file as read.</summary>
public sealed class DesignReading
{
    private readonly IReadOnlyDictionary<string, (string? File, Mark Mark)> places;

    internal DesignReading(RocketDesign? design, IEnumerable<Problem> problems, string text, string? path, IReadOnlyDictionary<string, (string? File, Mark Mark)> places, ValueList<NamedFile> named)
    {
        (Design, Text, Path, this.places, Named) = (design, text, path, places, named);
        Problems = problems.Select(Place).OrderBy(p => p.File is null ? 0 : 1).ThenBy(p => p.Line ?? 0).ThenBy(p => p.Column ?? 0).Take(MostProblems).ToValueList();
    }

    /// <summary>Most problems reported at once.</summary>
    public const int MostProblems = 100;

    /// <summary>The design; null unless every value in the file could be read. It may still contradict itself, as <see cref="Problems"/> tells.</summary>
    public RocketDesign? Design { get; }

    /// <summary>All problems, by line.</summary>
    public ValueList<Problem> Problems { get; }

    /// <summary>Text of the design file; empty if it could not be opened.</summary>
    public string Text { get; }

    /// <summary>The file; null when read from text.</summary>
    public string? Path { get; }

    /// <summary>The files it names, as far as they may be read, there or not.</summary>
    public ValueList<NamedFile> Named { get; }

    /// <summary>All files read, the design file first.</summary>
    public ValueList<string> Files => Path is null ? [] : [Path, .. Named.Select(n => n.Path)];

    /// <summary>The files it names with their texts, by their names from the design's folder; those that cannot be read are left out.</summary>
    public ValueList<KeptFile> Kept => Path is null ? [] : Named.Where(n => n.Text is not null).DistinctBy(n => n.Path).Select(n => new KeptFile(NameOf(n.Path, Path), n.Text!)).ToValueList();

    /// <summary>Whether there is a design without problems.</summary>
    public bool Good => Design is not null && Problems.Count == 0;

    /// <summary>Fills in line and column of a problem by its path, or by the nearest path above it.</summary>
    public Problem Place(Problem problem)
    {
        if (problem.Line is not null || problem.File is not null) return problem;
        for (var at = problem.At; at.Length > 0; at = Above(at))
        {
            if (places.TryGetValue(at, out var place)) return problem with { File = place.File, Line = (int)place.Mark.Line, Column = (int)place.Mark.Column };
        }

        return problem;
    }

    /// <summary>A file's name from the folder of a design.</summary>
    /// <param name="file">The file.</param>
    /// <param name="design">The design file.</param>
    public static string NameOf(string file, string design) =>
        System.IO.Path.GetRelativePath(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(design))!, System.IO.Path.GetFullPath(file)).Replace('\\', '/');

    private static string Above(string at) => at[..Math.Max(0, at.LastIndexOfAny(['.', '[']))];
}
