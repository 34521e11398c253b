namespace Scribeline.Store;

/// <summary>Adds and takes out whole things: a part, a joint, a set of fins.</summary>
public static partial class DesignText
{
    /// <summary>Adds something under a key that is not there yet.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="path">Path of the key, such as <c>parts[3].motor mount</c>.</param>
    /// <param name="yaml">What it holds, on one line, such as <c>{inside: 54 mm}</c>.</param>
    public static TextChange Put(string text, string path, string yaml)
    {
        if (Root(text) is not { } root) return Refused(text, path, "The file cannot be read.", "Mend it first.");
        var found = YamlPath.Find(root, path);
        if (found.Node is YamlText old) return Stands(text, string.Concat(text.AsSpan(0, (int)old.Start.Index), Gap(text, old), yaml, text.AsSpan((int)old.End.Index)), path);
        return found.Node is null && found.Holder is YamlMap holder && found.Rest.IndexOf('[', StringComparison.Ordinal) < 0
            ? Stands(text, Added(text, holder, found.Rest, yaml), path)
            : Refused(text, path, $"There is a '{path}' already, or nothing that could hold it.", "");
    }

    /// <summary>Adds an item to a list, which is made if it is not there, or made of the one thing that stands there without a list.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="path">Path of the list, such as <c>parts</c>.</param>
    /// <param name="yaml">The item, on one line.</param>
    /// <param name="index">Before which item it goes; null for the end.</param>
    public static TextChange Insert(string text, string path, string yaml, int? index = null)
    {
        if (Root(text) is not { } root) return Refused(text, path, "The file cannot be read.", "Mend it first.");
        var found = YamlPath.Find(root, path);
        if (found.Node is null or YamlText { Empty: true }) return Put(text, path, $"[{yaml}]");
        if (found.Node is not YamlList list)
        {
            var listed = Listed(text, found.Node);
            return Root(listed) is { } again && YamlPath.Find(again, path).Node is YamlList { Items.Count: 1 }
                ? Insert(listed, path, yaml, index)
                : Refused(text, path, $"'{path}' is not a list.", "Change the text by hand.");
        }

        var at = Math.Clamp(index ?? list.Items.Count, 0, list.Items.Count);
        var after = list.Flow ? InBrackets(text, list, at, yaml) : InLines(text, list, at, yaml);
        return Root(after) is { } read && YamlPath.Find(read, path).Node is YamlList { } more && more.Items.Count == list.Items.Count + 1
            ? new(after, null)
            : Refused(text, path, $"Nothing can be added to '{path}' here.", "Change the text by hand.");
    }

    /// <summary>Takes an item out of a list; the key goes with the last one.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="path">Path of the item, such as <c>parts[2]</c>.</param>
    public static TextChange TakeOut(string text, string path)
    {
        if (Root(text) is not { } root) return Refused(text, path, "The file cannot be read.", "Mend it first.");
        var found = YamlPath.Find(root, path);
        if (found.Holder is not YamlList list || found.Node is null) return Remove(text, path);
        if (list.Items.Count == 1) return Remove(text, path[..path.LastIndexOf('[')]);
        var index = list.Items.FindIndex(i => ReferenceEquals(i, found.Node));
        var after = list.Flow ? OutOfBrackets(text, list, index) : text.Remove(LineOf(text, list.Items[index]), NextLine(text, YamlPath.End(list.Items[index])) - LineOf(text, list.Items[index]));
        return Root(after) is { } read && YamlPath.Find(read, path[..path.LastIndexOf('[')]).Node is YamlList { } fewer && fewer.Items.Count == list.Items.Count - 1
            ? new(after, null)
            : Refused(text, path, $"'{path}' cannot be taken out by itself.", "Change the text by hand.");
    }

    /// <summary>Puts a list in place of another.</summary>
    internal static TextChange SwapList(string text, string path, string yaml)
    {
        if (Root(text) is not { } root) return Refused(text, path, "The file cannot be read.", "Mend it first.");
        if (YamlPath.Find(root, path).Node is not YamlList list) return Refused(text, path, $"'{path}' is not a list.", "Change the text by hand.");
        return Stands(text, string.Concat(text.AsSpan(0, (int)list.Start.Index), yaml, text.AsSpan(YamlPath.End(list))), path);
    }

    private static string InBrackets(string text, YamlList list, int index, string yaml)
    {
        if (list.Items.Count == 0) return text.Insert((int)list.Start.Index + 1, yaml);
        return index == list.Items.Count
            ? text.Insert(YamlPath.End(list.Items[^1]), $", {yaml}")
            : text.Insert((int)list.Items[index].Start.Index, $"{yaml}, ");
    }

    private static string OutOfBrackets(string text, YamlList list, int index)
    {
        var (from, to) = index + 1 < list.Items.Count
            ? ((int)list.Items[index].Start.Index, (int)list.Items[index + 1].Start.Index)
            : (YamlPath.End(list.Items[index - 1]), YamlPath.End(list.Items[index]));
        return text.Remove(from, to - from);
    }

    private static string InLines(string text, YamlList list, int index, string yaml)
    {
        var line = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var dash = text.LastIndexOf('-', (int)list.Items[0].Start.Index - 1);
        var item = new string(' ', dash - (text.LastIndexOf('\n', dash) + 1)) + "- " + yaml;
        if (index < list.Items.Count) return text.Insert(LineOf(text, list.Items[index]), item + line);
        var end = NextLine(text, YamlPath.End(list.Items[^1]));
        return end > 0 && text[end - 1] == '\n' ? text.Insert(end, item + line) : text.Insert(end, line + item);
    }

    // One thing typed without a list, as a list of one.
    private static string Listed(string text, YamlNode one)
    {
        var (start, end) = ((int)one.Start.Index, YamlPath.End(one));
        if (one is not YamlMap { Flow: false }) return $"{text[..start]}[{text[start..end]}]{text[end..]}";
        var body = text[start..end].Replace("\n", "\n  ", StringComparison.Ordinal);
        return string.Concat(text.AsSpan(0, start), "- ", body, text.AsSpan(end));
    }

    private static string Gap(string text, YamlText old) => old.Start.Index > 0 && text[(int)old.Start.Index - 1] == ':' ? " " : "";

    private static int LineOf(string text, YamlNode node) => text.LastIndexOf('\n', Math.Max(0, (int)node.Start.Index - 1)) + 1;

    private static int NextLine(string text, int from)
    {
        var end = text.IndexOf('\n', from);
        return end < 0 ? text.Length : end + 1;
    }

    private static TextChange Stands(string before, string after, string path) =>
        Root(after) is { } root && YamlPath.Find(root, path).Node is not null
            ? new(after, null)
            : Refused(before, path, $"Nothing can be put at '{path}' here.", "Change the text by hand.");
}
