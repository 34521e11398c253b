using System.Text;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <summary>A shot as one line of text, which is an element of <c>records: shots</c> of a design file: <c>{charge: "Main A", powder: "1.4 g", happened: "parted"}</c>.</summary>
public static class ShotText
{
    /// <summary>The line for what was typed under each key; what is empty is left out.</summary>
    /// <param name="typed">Keys of a shot with what a person typed. <c>filmed</c> holds three values: <c>12 in, 8 frames, 240 Hz</c>.</param>
    public static string Of(IEnumerable<(string Key, string? Value)> typed)
    {
        var pairs = typed.Where(t => !string.IsNullOrWhiteSpace(t.Value)).Select(t => $"{t.Key}: {(t.Key == "filmed" ? Film(t.Value!) : Quoted(t.Value!.Trim()))}");
        return $"{{{string.Join(", ", pairs)}}}";
    }

    /// <summary>Reads such a line as the design file would be read.</summary>
    /// <param name="text">The line.</param>
    /// <param name="at">Where it stands, for problems; such as <c>shot 3</c>.</param>
    public static (ShotDesign? Shot, ValueList<Problem> Problems) Read(string text, string at)
    {
        List<Problem> problems = [];
        var root = YamlTree.Read(text, problems);
        if (problems.Count > 0) return (null, Placeless(problems));
        var (shot, whole) = new Binder(problems).Root<ShotDesign>(root, at);
        return (whole ? shot : null, Placeless(problems));
    }

    // What is typed in a form or at the terminal has no lines.
    private static ValueList<Problem> Placeless(IEnumerable<Problem> problems) => problems.Select(p => p with { Line = null, Column = null }).ToValueList();

    private static string Film(string typed)
    {
        var values = typed.Split(',', StringSplitOptions.TrimEntries);
        if (values.Length != 3) return Quoted(typed);
        var frames = values[1].Replace("frames", "", StringComparison.OrdinalIgnoreCase).Trim();
        var rate = values[2].Replace("fps", "Hz", StringComparison.OrdinalIgnoreCase);
        return $"{{distance: {Quoted(values[0])}, frames: {Quoted(frames)}, rate: {Quoted(rate)}}}";
    }

    private static string Quoted(string value)
    {
        StringBuilder text = new("\"");
        foreach (var letter in value)
        {
            // A line is one line: what would break it is a blank.
            if (char.IsControl(letter)) text.Append(' ');
            else if (letter is '"' or '\\') text.Append('\\').Append(letter);
            else text.Append(letter);
        }

        return text.Append('"').ToString();
    }
}
