using System.Text.RegularExpressions;
using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <summary>Which values of a design each question rests on first of all, to edit them beside the answer and to find the answers from a part.</summary>
internal static partial class Concerns
{
    private static readonly string[] Body = ["parts[].length", "parts[].outside", "parts[].mass", "parts[].balance", "parts[].masses", "motor"];

    private static readonly Dictionary<string, string[]> ByQuestion = new(StringComparer.Ordinal)
    {
        ["weight"] = [.. Body, "stowed[]", "records"],
        ["engagement"] = ["parts[].shoulder", "parts[].coupler", "parts[].inside", "joints[].fit"],
        ["stack"] = ["parts[].length", "parts[].shoulder", "parts[].coupler", "parts[].motor mount", "stowed[].*.packed length", "motor"],
        ["packs"] = ["stowed[]", "parts[].inside"],
        ["thrust-to-weight"] = ["motor", "parts[].mass", "rail"],
        ["rail-exit"] = ["rail", "motor", "parts[].rail guides", "parts[].mass", "weather"],
        ["stable"] = [.. Body, "parts[].fins"],
        ["settles"] = [.. Body, "parts[].fins"],
        ["how-high"] = ["motor", "parts[].mass", "parts[].outside", "parts[].fins", "surface", "drag scale", "rail", "weather", "site"],
        ["how-fast"] = ["motor", "parts[].mass", "parts[].outside", "parts[].fins", "surface", "drag scale"],
        ["flutter"] = ["parts[].fins"],
        ["delay"] = ["motor", "firing[].motor delay"],
        ["descends"] = ["stowed[].canopy", "firing[].descending through"],
        ["lands-soft"] = ["stowed[].canopy", "parts[].mass"],
        ["opens"] = ["stowed[].canopy", "firing[].apogee", "firing[].descending through"],
        ["load-path"] = ["stowed[].canopy", "stowed[].cord", "stowed[].link", "parts[].plates", "parts[].rods"],
        ["cords"] = ["stowed[].cord", "charges[].mass"],
        ["if-it-fails"] = ["firing[]", "stowed[].canopy"],
        ["stays-together"] = ["joints[].pins", "joints[].fit", "parts[].vents"],
        ["holds-through-drogue"] = ["joints[].pins", "joints[].fit", "stowed[].cord", "stowed[].canopy"],
        ["lets-go"] = ["charges[]", "joints[].pins", "joints[].fit", "stowed[].cord"],
        ["bursts-nothing"] = ["charges[]", "parts[].inside", "parts[].plates", "parts[].rods", "joints[].screws"],
        ["breathes"] = ["parts[].ports", "parts[].switch", "parts[].filled", "firing[].mach lockout"],
        ["bays-vent"] = ["parts[].vents", "joints[].pins", "joints[].fit"],
        ["sequence"] = ["firing[]", "charges[]"],
        ["fires"] = ["firing[].supply", "firing[].match", "firing[].lead resistance"],
        ["holes-clear"] = ["joints[].pins", "joints[].screws", "parts[].ports", "parts[].vents", "parts[].rail guides", "parts[].switch"],
        ["plates-clear"] = ["parts[].plates", "parts[].rods"],
        ["bonds"] = ["joints[].bond", "parts[].fins", "parts[].motor mount"],
        ["today"] = ["weather", "site", "rail"],
    };

    /// <summary>The values a question rests on, those typed and those that must be.</summary>
    public static IEnumerable<OutlineField> FieldsOf(string question, OutlineMap root) =>
        ByQuestion.TryGetValue(question, out var patterns)
            ? root.All.SelectMany(m => m.Fields).Where(f => (f.Typed is not null || f.Required) && patterns.Any(p => Touches(p, f.Path)))
            : [];

    /// <summary>The questions that rest on a thing.</summary>
    public static IEnumerable<string> QuestionsOf(string path) => ByQuestion.Where(q => q.Value.Any(p => Touches(p, path) || Touches(path, p))).Select(q => q.Key);

    // A pattern covers what lies beneath it.
    private static bool Touches(string pattern, string path)
    {
        var (of, plain) = (Indices().Replace(pattern, "[]"), Indices().Replace(path, "[]"));
        if (!of.Contains('*', StringComparison.Ordinal)) return plain == of || plain.StartsWith(of + ".", StringComparison.Ordinal) || plain.StartsWith(of + "[", StringComparison.Ordinal);
        return Regex.IsMatch(plain, "^" + Regex.Escape(of).Replace("\\*", "[^.]+", StringComparison.Ordinal) + "($|[.\\[])");
    }

    [GeneratedRegex(@"\[\d*\]")]
    private static partial Regex Indices();
}
