using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>The text of a file after one change, or why it cannot be made.</summary>
/// <param name="Text">The new text; the old one if the change cannot be made.</param>
/// <param name="Problem">Why not; null if it was made.</param>
public sealed record TextChange(string Text, Problem? Problem);

/// <summary>Changes single values in the text of a design, leaving every other letter as it is: comments, order, spacing, line ends.</summary>
public static partial class DesignText
{
    /// <summary>Replaces the value at a path, or adds the key if the map that should hold it is there.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="path">Path, such as <c>parts[2].fins.root</c>.</param>
    /// <param name="value">The new value, as a builder types it; quotes are added where needed.</param>
    public static TextChange Replace(string text, string path, string value)
    {
        if (Root(text) is not { } root) return Refused(text, path, "The file cannot be read.", "Mend it first.");
        var found = YamlPath.Find(root, path);
        if (found.Node is YamlMap map && map["value"] is YamlText inner) return Checked(text, Swap(text, inner, value), path + ".value", value);
        if (found.Node is YamlText old) return Checked(text, Swap(text, old, value), path, value);
        if (found.Node is not null) return Refused(text, path, $"'{path}' holds several values.", "Change one of them.");
        return found.Holder is YamlMap holder && found.Rest.IndexOf('[', StringComparison.Ordinal) < 0
            ? Checked(text, Added(text, holder, found.Rest, YamlWriting.Scalar(value)), path, value)
            : Refused(text, path, $"There is no '{path}' in the file.", "");
    }

    /// <summary>Writes a measured value at a path: <c>{value: 8.48 in ± 0.01 in, known: measured}</c> in place of what was planned there.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="path">Path of a quantity, typed or left out.</param>
    /// <param name="value">As typed.</param>
    public static TextChange Measured(string text, string path, string value) => Known(text, path, value, "measured");

    /// <summary>Writes a value that flights taught, in the same way: <c>{value: 1.06 ± 0.05, known: flown}</c>.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="path">Path of a quantity, typed or left out.</param>
    /// <param name="value">As typed.</param>
    public static TextChange Flown(string text, string path, string value) => Known(text, path, value, "flown");

    private static TextChange Known(string text, string path, string value, string word)
    {
        if (Root(text) is not { } root) return Refused(text, path, "The file cannot be read.", "Mend it first.");
        var written = $"{{value: {YamlWriting.Scalar(value)}, known: {word}}}";
        switch (YamlPath.Find(root, path))
        {
            case { Node: YamlMap map } when map["value"] is YamlText inner:
                var swapped = Checked(text, Swap(text, inner, value), path + ".value", value);
                return swapped.Problem is not null ? swapped : Replace(swapped.Text, path + ".known", word);
            case { Node: YamlText old }:
                return Checked(text, Swapped(text, old, written), path + ".value", value);
            case { Node: null, Holder: YamlMap holder } found when found.Rest.IndexOfAny(['[', '.']) < 0:
                return Checked(text, Added(text, holder, found.Rest, written), path + ".value", value);
            default:
                return Refused(text, path, $"There is no place for '{path}' in the file.", "Write it there by hand.");
        }
    }

    /// <summary>Removes a key with its value.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="path">Path of the key.</param>
    public static TextChange Remove(string text, string path)
    {
        if (Root(text) is not { } root) return Refused(text, path, "The file cannot be read.", "Mend it first.");
        var found = YamlPath.Find(root, path);
        if (found.Node is null || found.Holder is not YamlMap map) return Refused(text, path, $"There is no key '{path}' in the file.", "");
        var index = map.Entries.FindIndex(e => ReferenceEquals(e.Value, found.Node));

        // A key with nothing under it cannot be read: it goes with the last value it held.
        if (map is { Flow: false, Entries.Count: 1 } && path.Length > map.Entries[0].Key.Value.Length && path[..^(map.Entries[0].Key.Value.Length + 1)] is var above && !above.EndsWith(']')) return Remove(text, above);
        var without = map.Flow ? WithoutInBraces(text, map, index) : WithoutLines(text, map, index);
        if (without is null) return Refused(text, path, "The first key of a list's entry holds its dash.", "Remove the whole entry, or change the value.");
        return Root(without) is { } left && YamlPath.Find(left, path).Node is null
            ? new(without, null)
            : Refused(text, path, $"'{path}' cannot be removed by itself.", "Change the text by hand.");
    }

    private static string Swap(string text, YamlText old, string value) => Swapped(text, old, YamlWriting.Scalar(value));

    private static string Swapped(string text, YamlText old, string written)
    {
        var (start, end) = ((int)old.Start.Index, (int)old.End.Index);
        var gap = start == end && start > 0 && text[start - 1] == ':' ? " " : "";
        return text[..start] + gap + written + text[end..];
    }

    private static string Added(string text, YamlMap holder, string key, string yaml)
    {
        var entry = $"{YamlWriting.Scalar(key)}: {yaml}";
        if (holder.Entries.Count == 0) return text.Insert((int)holder.Start.Index + 1, entry);
        var end = YamlPath.End(holder.Entries[^1].Value);
        if (holder.Flow) return text.Insert(end, $", {entry}");
        var line = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var newline = text.IndexOf('\n', end);
        var at = newline < 0 ? text.Length : newline > 0 && text[newline - 1] == '\r' ? newline - 1 : newline;
        return text.Insert(at, line + new string(' ', (int)holder.Entries[0].Key.Start.Column - 1) + entry);
    }

    private static string WithoutInBraces(string text, YamlMap map, int index)
    {
        var (key, value) = map.Entries[index];
        if (index + 1 < map.Entries.Count) return text.Remove((int)key.Start.Index, (int)(map.Entries[index + 1].Key.Start.Index - key.Start.Index));
        var from = index > 0 ? YamlPath.End(map.Entries[index - 1].Value) : (int)key.Start.Index;
        return text.Remove(from, YamlPath.End(value) - from);
    }

    private static string? WithoutLines(string text, YamlMap map, int index)
    {
        var (key, value) = map.Entries[index];
        var start = text.LastIndexOf('\n', Math.Max(0, (int)key.Start.Index - 1)) + 1;
        if (!string.IsNullOrWhiteSpace(text[start..(int)key.Start.Index])) return null;
        var newline = text.IndexOf('\n', YamlPath.End(value));
        return text.Remove(start, (newline < 0 ? text.Length : newline + 1) - start);
    }

    // The new text must say what was asked, whatever stands around the value.
    private static TextChange Checked(string before, string after, string path, string value) =>
        Root(after) is { } root && YamlPath.Find(root, path).Node is YamlText read && read.Value == value.ReplaceLineEndings(" ").Trim()
            ? new(after, null)
            : Refused(before, path, $"'{value}' cannot be written at '{path}'.", "Change the text by hand.");

    private static YamlNode? Root(string text)
    {
        List<Problem> problems = [];
        var root = YamlTree.Read(text, problems);
        return problems.Count == 0 ? root : null;
    }

    private static TextChange Refused(string text, string path, string message, string suggestion) => new(text, new(path, message, suggestion));
}
