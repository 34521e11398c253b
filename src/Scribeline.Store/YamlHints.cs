using System.Text.RegularExpressions;
using Scribeline.Engine.Quantities;
using YamlDotNet.Core;

namespace Scribeline.Store;

/// <summary>A likely slip found in the text itself.</summary>
/// <param name="Problem">What to say.</param>
/// <param name="Certain">Whether it is wrong even where the file can be read.</param>
internal sealed record YamlHint(Problem Problem, bool Certain);

/// <summary>Finds slips that a parser reports badly or not at all: screw names read as comments, tabs.</summary>
internal static partial class YamlHints
{
    private const int Most = 20;

    internal static IReadOnlyList<YamlHint> In(string text)
    {
        List<YamlHint> hints = [];
        var number = 0;
        foreach (var range in text.AsSpan().Split('\n'))
        {
            number++;
            var line = text.AsSpan(range).TrimEnd('\r');
            if (hints.Count >= Most) break;
            if (Screw().IsMatch(line)) AddScrew(hints, line.ToString(), number);
            var indent = line[..^line.TrimStart().Length];
            if (indent.Contains('\t') && indent.Length < line.Length)
                hints.Add(new(new("", "The line is indented with a tab.", "Use spaces: two for each level.", number, indent.IndexOf('\t') + 1), Certain: false));
        }

        return hints;
    }

    /// <summary>The parser's own complaint in plain words.</summary>
    internal static Problem Explain(YamlException wrong)
    {
        var said = wrong.Message;
        var place = said.IndexOf("): ", StringComparison.Ordinal);
        if (said.StartsWith('(') && place > 0) said = said[(place + 3)..];
        var suggestion = said switch
        {
            _ when said.Contains("flow", StringComparison.OrdinalIgnoreCase) => "Check the commas and the closing bracket or brace.",
            _ when said.Contains("mapping values", StringComparison.OrdinalIgnoreCase) || said.Contains("invalid mapping", StringComparison.OrdinalIgnoreCase) => "A text that holds a colon and a space needs quotes; otherwise check the indentation.",
            _ when said.Contains("block", StringComparison.OrdinalIgnoreCase) => "Check the indentation: keys of one map begin in one column.",
            _ when said.Contains("quoted", StringComparison.OrdinalIgnoreCase) => "Check the closing quote.",
            _ => "Check the indentation, colons, quotes and brackets near here.",
        };
        return new("", $"This cannot be read as YAML: {said.TrimEnd('.')}.", suggestion, (int)wrong.Start.Line, (int)wrong.Start.Column);
    }

    private static void AddScrew(List<YamlHint> hints, string line, int number)
    {
        var match = Screw().Match(line);
        var name = match.Groups["name"].Value;
        hints.Add(new(
            new("", $"{name} is read as a comment, because everything after # is one.", $"Put it in quotes: \"{name}\".", number, match.Groups["name"].Index + 1), Certain: true));
    }

    // Where a value is due, a number sign and a number: "screw: #2-56".
    [GeneratedRegex("""^[^#"']*[:\[,-][ \t]+(?<name>#\d+\s*-\s*\d+(?: [a-z]+)?)""")]
    private static partial Regex Screw();
}
