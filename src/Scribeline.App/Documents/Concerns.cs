using System.Text.RegularExpressions;
using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <summary>
/// Which values of a design each question rests on, to edit them beside the answer and to find the answers from a part. The table is not
/// thought out but measured: each value of the examples was moved by itself and every question asked again. A test repeats a part of that.
/// </summary>
internal static partial class Concerns
{
    private static readonly ILookup<string, Concern> ByQuestion = Read().ToLookup(c => c.Question);

    private static readonly ILookup<string, Concern> ByPattern = Read().ToLookup(c => c.Pattern);

    /// <summary>All of the table.</summary>
    public static IEnumerable<Concern> All => ByQuestion.SelectMany(q => q);

    /// <summary>A path without the numbers of its lists: what it is, wherever it stands.</summary>
    public static string PatternOf(string path) => Indices().Replace(path, "");

    /// <summary>The values a question rests on, those typed and those that must be; those that move it most come first.</summary>
    public static IEnumerable<(OutlineField Field, ConcernWeight Weight)> FieldsOf(string question, OutlineMap root)
    {
        var wanted = ByQuestion[question].ToDictionary(c => c.Pattern, c => c.Weight, StringComparer.Ordinal);
        return root.All.SelectMany(m => m.Fields).Where(f => f.Typed is not null || f.Required)
            .Select(f => (Field: f, Weight: wanted.TryGetValue(PatternOf(f.Path), out var weight) ? weight : (ConcernWeight?)null))
            .Where(f => f.Weight is not null).Select(f => (f.Field, f.Weight!.Value)).OrderByDescending(f => f.Value);
    }

    /// <summary>The questions that rest on a thing or anything within it, those it moves most first.</summary>
    /// <param name="path">Path of the thing; empty for what belongs to the whole design.</param>
    /// <param name="root">Outline of the design.</param>
    public static IEnumerable<string> QuestionsOf(string path, OutlineMap root)
    {
        var maps = path.Length == 0 ? [root] : root.Find(path)?.All ?? [];
        var fields = maps.SelectMany(m => m.Fields).Where(f => f.Typed is not null).Select(f => PatternOf(f.Path));
        return fields.Concat(path == "motor" ? ["motor.thrust"] : []).Distinct().SelectMany(p => ByPattern[p]).GroupBy(c => c.Question).OrderByDescending(q => q.Max(c => c.Weight)).Select(q => q.Key);
    }

    private static IEnumerable<Concern> Read()
    {
        using var reader = new StreamReader(typeof(Concerns).Assembly.GetManifestResourceStream("concerns.csv")!);
        List<Concern> rows = [];
        while (reader.ReadLine() is { } line)
        {
            if (line.Split(',') is [var question, var pattern, var weight] && Enum.TryParse<ConcernWeight>(weight, ignoreCase: true, out var much)) rows.Add(new(question, pattern, much));
        }

        return rows;
    }

    [GeneratedRegex(@"\[\d*\]")]
    private static partial Regex Indices();
}
