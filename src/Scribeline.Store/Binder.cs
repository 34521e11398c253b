using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using YamlDotNet.Core;

namespace Scribeline.Store;

/// <summary>Turns nodes into records, noting every problem. What cannot be read whole is left out, never filled in.</summary>
internal sealed partial class Binder(List<Problem> problems)
{
    /// <summary>Most elements of one list.</summary>
    private const int MostItems = 2000;

    /// <summary>Where each path begins.</summary>
    internal Dictionary<string, Mark> Places { get; } = [];

    /// <summary>Names of things that could not be read whole, so that what refers to them is not blamed.</summary>
    internal List<string> Unread { get; } = [];

    /// <summary>Reads a record from the root of a file.</summary>
    /// <returns>The record, and whether it is whole.</returns>
    internal (T Value, bool Whole) Root<T>(YamlNode? root, string at)
        where T : Placed
    {
        var before = problems.Count;
        object? value = null;
        if (root is YamlMap map) value = Fill(map, RecordShape.Of(typeof(T)), typeof(T), at, skip: null, keepPartial: true);
        else if (root is YamlText { Empty: true } or null) Add(root, at, "The file is empty.", "Begin with the starter: scribeline new.");
        else Add(root, at, "The file is not a map of keys and values.", "Write lines such as name: Night Heron.");
        return (value as T ?? Activator.CreateInstance<T>(), problems.Count == before);
    }

    private object? Record(YamlNode node, Type type, string at, KeyShape? key)
    {
        var shape = RecordShape.Of(type);
        if (shape.InOrder && node is YamlList list) return Ordered(list, shape, at);
        if (node is not YamlMap map)
        {
            Add(node, at, $"'{key?.Word ?? "This"}' holds {Named(node)} where {(shape.InOrder ? "a list" : "a map")} belongs.", shape.InOrder
                ? $"Write [{string.Join(", ", shape.Keys.Select(k => k.Word))}]."
                : $"Write keys under it: {List(shape.Keys.Where(k => k.Key.Required).DefaultIfEmpty(shape.Keys[0]).Select(k => k.Word))}.");
            return null;
        }

        if (shape.Kinds is not { } kinds) return Fill(map, shape, type, at, skip: null);
        var words = kinds.Kinds.Select(RecordShape.KindWord).ToList();
        if (map[kinds.Key] is not YamlText word)
        {
            Add(map, at, $"'{kinds.Key}' is missing.", $"It can be {List(words, "or")}.");
            return Lost(map);
        }

        var chosen = words.IndexOf(word.Value.Trim());
        if (chosen >= 0) return Fill(map, RecordShape.Of(kinds.Kinds[chosen]), kinds.Kinds[chosen], at, kinds.Key);
        Add(word, $"{at}.{kinds.Key}", $"'{word.Value}' is not a {kinds.Key} of part.", Spelling.Suggest(word.Value, words));
        return Lost(map);
    }

    private object? Ordered(YamlList list, RecordShape shape, string at)
    {
        Places.TryAdd(at, list.Start);
        if (list.Items.Count != shape.Keys.Count)
        {
            Add(list, at, $"{list.Items.Count} values stand where {shape.Keys.Count} belong.", $"Write [{string.Join(", ", shape.Keys.Select(k => k.Word))}].");
            return null;
        }

        var record = Activator.CreateInstance(shape.Type)!;
        SetAt(record, at);
        var whole = true;
        for (var i = 0; i < shape.Keys.Count; i++) whole &= Take(record, shape.Keys[i], list.Items[i], at);
        return whole ? record : null;
    }

    private object? Fill(YamlMap map, RecordShape shape, Type type, string at, string? skip, bool keepPartial = false)
    {
        Places.TryAdd(at, map.Start);
        var record = Activator.CreateInstance(type)!;
        SetAt(record, at);
        var whole = true;
        HashSet<string> seen = [], meant = [];
        foreach (var (key, value) in map.Entries)
        {
            var word = key.Value.Trim();
            var known = shape.Keys.FirstOrDefault(k => k.Word == word);
            if (!seen.Add(word)) Add(key, Path(at, word), $"'{word}' is typed twice.", "Keep one of them.");
            else if (word == skip) continue;
            else if (known is null) meant.Add(Unknown(key, word, shape, map, at) ?? "");
            else whole &= Take(record, known, value, at) || !known.Key.Required;
        }

        foreach (var missing in shape.Keys.Where(k => k.Key.Required && !seen.Contains(k.Word)))
        {
            whole = false;
            if (meant.Contains(missing.Word)) continue;
            var example = (missing.Key.Example ?? (missing.Value.Examples is [var some, ..] ? some : null)) is { } first ? $"{missing.Word}: {Quoted(first)}" : $"{missing.Word}:";
            Add(map, Path(at, missing.Word), $"'{missing.Word}' is missing: {Lower(missing.Key.Says)}", $"Add a line such as {example}");
        }

        return whole || keepPartial ? record : Lost(map);
    }

    // Reads one key into the record; false if it could not be read whole.
    private bool Take(object record, KeyShape key, YamlNode node, string at)
    {
        var path = Path(at, key.Word);
        Places.TryAdd(path, node.Start);
        if (key.Value.Form == ValueForm.Limits) return Set(record, key, Limits(node, path));
        if (!key.Many)
        {
            var value = Value(node, key, key.Value, path);
            return value is not null && Set(record, key, value);
        }

        if (node is YamlText { Empty: true })
        {
            Add(node, path, $"Nothing is typed under '{key.Word}'.", "Remove the key or write something under it.");
            return false;
        }

        // A list of one may be typed without the list. Records typed as lists of values need theirs.
        var items = node is YamlList list && !(RecordLike(key) && RecordShape.Of(key.Value.Type).InOrder && list.Items is [not YamlList, ..]) ? list.Items : [node];
        if (items.Count > MostItems)
        {
            Add(node, path, $"'{key.Word}' holds {items.Count} values; {MostItems} is the most.", "Check what was copied into it.");
            return false;
        }

        var values = items.Select((item, i) => Value(item, key, key.Value, node is YamlList ? $"{path}[{i}]" : path)).ToList();
        if (key.Key.Required && values.Count == 0) Add(node, path, $"'{key.Word}' is an empty list.", $"Write at least one: {Lower(key.Key.Says)}");
        var array = Array.CreateInstance(key.Value.Type, values.Count(v => v is not null));
        var next = 0;
        foreach (var value in values.Where(v => v is not null)) array.SetValue(value, next++);
        Set(record, key, typeof(ValueList).GetMethod(nameof(ValueList.ToValueList))!.MakeGenericMethod(key.Value.Type).Invoke(null, [array])!);
        return next == values.Count && (values.Count > 0 || !key.Key.Required);
    }

    private static bool RecordLike(KeyShape key) => key.Value.Form == ValueForm.Record;

    private static bool Set(object record, KeyShape key, object value)
    {
        key.Property.SetValue(record, value);
        return true;
    }

    private static void SetAt(object record, string at) => typeof(Placed).GetProperty(nameof(Placed.At))!.SetValue(record, at);

    private static string Path(string at, string word) => at.Length == 0 ? word : $"{at}.{word}";
}
