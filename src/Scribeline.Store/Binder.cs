using System.Globalization;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using YamlDotNet.Core;

namespace Scribeline.Store;

/// <summary>Turns nodes into records, noting every problem. What cannot be read whole is left out, never filled in.</summary>
internal sealed class Binder(List<Problem> problems)
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

    private object? Value(YamlNode node, KeyShape key, ValueShape shape, string at)
    {
        Places.TryAdd(at, node.Start);
        if (node is YamlText { Empty: true })
        {
            // Said already, and better, where a screw's name was read as a comment.
            var said = problems.FindIndex(p => p.Line == node.Start.Line && p.Message.Contains("read as a comment", StringComparison.Ordinal));
            if (said >= 0)
            {
                problems[said] = problems[said] with { At = at };
                return null;
            }

            Add(node, at, $"Nothing is typed under '{key.Word}'.", shape.Examples is [var first, ..] ? $"Write something such as {Quoted(first)}, or remove the key." : "Write something, or remove the key.");
            return null;
        }

        switch (shape.Form)
        {
            case ValueForm.Record:
                return Record(node, shape.Type, at, key);
            case ValueForm.Thrust:
                return Thrust(node, key, at);
            case ValueForm.File:
                var inline = node is YamlText ? null : Value(node, key, shape.Held!, at);
                return node is not YamlText && inline is null ? null : Activator.CreateInstance(shape.Type, (node as YamlText)?.Value.Trim(), inline);
            case ValueForm.Readable when node is YamlMap && shape.RecordToo:
                return Record(node, shape.Type, at, key);
            case ValueForm.Measure when node is YamlMap map:
                return Known(map, key, shape, at);
        }

        if (node is not YamlText text)
        {
            Add(node, at, $"'{key.Word}' holds {Named(node)} where {What(shape)} belongs.", shape.Examples is [var first, ..] ? $"Write {key.Word}: {Quoted(first)}" : "");
            return null;
        }

        return shape.Form switch
        {
            ValueForm.Text => Text(text, key, at),
            ValueForm.Count => Count(text, key, at),
            ValueForm.YesNo => YesNo(text, key, at),
            ValueForm.Word => OneOf(text, key, shape, at),
            _ => ReadText(text, key, shape, key.Key.Known, at),
        };
    }

    private object? ReadText(YamlText text, KeyShape key, ValueShape shape, Basis known, string at)
    {
        var (value, problem) = shape.Read!(text.Value, known, at);
        if (problem is not null)
        {
            // Columns are exact for text typed on one line without escapes, which is how quantities are typed.
            var within = text.Start.Line == text.End.Line && text.Value.Length <= text.End.Index - text.Start.Index ? problem.Position + (text.Quoted ? 1 : 0) : 0;
            problems.Add(new(at, $"'{key.Word}': {problem.Message}", problem.Suggestion, (int)text.Start.Line, (int)text.Start.Column + within));
            return null;
        }

        var si = value is IMeasure measure ? measure.Si : value is IHoldsMeasure { Held: { } held } ? held.Si : (double?)null;
        return si is { } number && !SignFits(number, key, text, text.Value.Trim(), at) ? null : value;
    }

    private object? Known(YamlMap map, KeyShape key, ValueShape shape, string at)
    {
        foreach (var (word, _) in map.Entries.Where(e => e.Key.Value is not ("value" or "known")))
            Add(word, Path(at, word.Value), $"'{word.Value}' does not belong under '{key.Word}'.", "A measured value is written {value: 318 g ± 2 g, known: measured}.");
        foreach (var twice in map.Entries.GroupBy(e => e.Key.Value).Where(g => g.Count() > 1))
            Add(twice.Last().Key, Path(at, twice.Key), $"'{twice.Key}' is typed twice.", "Keep one of them.");
        var known = map["known"] is { } how ? OneOf(how, typeof(Basis), Path(at, "known"), "known") : key.Key.Known;
        if (map["value"] is not YamlText { Empty: false } text)
        {
            Add(map["value"] ?? map, at, $"'{key.Word}' has no value.", $"Write {key.Word}: {{value: {shape.Examples[0]}, known: measured}}");
            return null;
        }

        return known is null ? null : ReadText(text, key, shape, (Basis)known, at);
    }

    private string? Text(YamlText text, KeyShape key, string at)
    {
        var value = text.Value.Trim();
        if (value.Length is > 0 and <= 500) return value;
        Add(text, at, value.Length == 0 ? $"Nothing is typed under '{key.Word}'." : $"The text under '{key.Word}' is longer than 500 letters.", "");
        return null;
    }

    private object? Count(YamlText text, KeyShape key, string at)
    {
        if (int.TryParse(text.Value.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var count) && count <= 10_000)
            return SignFits(count, key, text, text.Value.Trim(), at) ? count : null;
        Add(text, at, $"'{key.Word}': '{text.Value.Trim()}' is not a count.", $"Write a whole number such as {key.Key.Example ?? "3"}.");
        return null;
    }

    private object? YesNo(YamlText text, KeyShape key, string at)
    {
        switch (text.Value.Trim().ToLowerInvariant())
        {
            case "yes" or "true": return true;
            case "no" or "false": return false;
            default:
                Add(text, at, $"'{key.Word}': '{text.Value.Trim()}' is neither yes nor no.", "Write yes or no.");
                return null;
        }
    }

    private object? OneOf(YamlNode node, KeyShape key, ValueShape shape, string at) => OneOf(node, shape.Type, at, key.Word);

    private object? OneOf(YamlNode node, Type words, string at, string key)
    {
        var known = RecordShape.Words(words);
        var typed = (node as YamlText)?.Value.Trim() ?? "";
        foreach (var (word, value) in known)
        {
            if (word == typed) return value;
        }

        Add(node, at, node is YamlText ? $"'{key}' cannot be '{typed}'." : $"'{key}' holds {Named(node)} where a word belongs.", Spelling.Suggest(typed, [.. known.Select(w => w.Word)]));
        return null;
    }

    private ValueList<LimitDesign> Limits(YamlNode node, string at)
    {
        if (node is YamlMap map)
        {
            foreach (var twice in map.Entries.GroupBy(e => e.Key.Value).Where(g => g.Count() > 1))
                Add(twice.Last().Key, Path(at, twice.Key), $"'{twice.Key}' is typed twice.", "Keep one of them.");
            List<LimitDesign> limits = [];
            foreach (var (key, value) in map.Entries)
            {
                var path = Path(at, key.Value);
                Places.TryAdd(path, value.Start);
                if (value is YamlText { Empty: false } text) limits.Add(new(key.Value, text.Value.Trim(), path));
                else Add(value, path, $"The limit '{key.Value}' has no value.", "Write the bound with its unit, such as stable.margin: 1.5");
            }

            return limits.ToValueList();
        }

        Add(node, at, $"'limits' holds {Named(node)} where a map belongs.", "Write one line for each limit, such as stable.margin: 1.5");
        return ValueList<LimitDesign>.Empty;
    }

    private ThrustTable? Thrust(YamlNode node, KeyShape key, string at)
    {
        if (node is not YamlList list)
        {
            Add(node, at, $"'{key.Word}' holds {Named(node)} where a list of points belongs.", "Write [[0 s, 0 N], [0.1 s, 80 N]] or the name of a CSV file.");
            return null;
        }

        if (list.Items.Count > MostItems)
        {
            Add(node, at, $"'{key.Word}' holds {list.Items.Count} points; {MostItems} is the most.", "");
            return null;
        }

        var points = list.Items.Select((item, i) => (ThrustPointDesign?)Record(item, typeof(ThrustPointDesign), $"{at}[{i}]", key)).ToList();
        return points.Contains(null) ? null : new(points.Select(p => p!).ToValueList());
    }

    private bool SignFits(double number, KeyShape key, YamlNode node, string typed, string at)
    {
        var fits = key.Key.Sign switch { Sign.Above => number > 0, Sign.NotBelow => number >= 0, _ => true };
        if (!fits) Add(node, at, $"'{key.Word}' cannot be {typed}.", key.Key.Sign == Sign.Above ? "Write a value above 0." : "Write 0 or more.");
        return fits;
    }

    // The key that was probably meant; null if nothing is near.
    private string? Unknown(YamlText key, string word, RecordShape shape, YamlMap map, string at)
    {
        var free = shape.Keys.Select(k => k.Word).Where(k => map[k] is null).ToList();
        var near = Spelling.Nearest(word, free);
        var elsewhere = typeof(PartDesign).IsAssignableFrom(shape.Type)
            ? RecordShape.Of(typeof(PartDesign)).Kinds!.Kinds.Where(k => RecordShape.Of(k).Keys.Any(other => other.Word == word)).Select(RecordShape.KindWord).ToList()
            : [];
        Add(key, Path(at, word), $"'{word}' is not known here.",
            near is not null ? $"Did you mean '{near}'?"
            : elsewhere.Count > 0 ? $"It belongs to a part of kind {List(elsewhere, "or")}."
            : free.Count == 0 ? "Remove it." : $"Known here: {List(free)}.");
        return near;
    }

    // Remembers the name of what could not be read, so that those who mention it are not blamed.
    private object? Lost(YamlMap map)
    {
        foreach (var key in (string[])["name", "altimeter"])
        {
            if (map[key] is YamlText { Empty: false } name) Unread.Add(name.Value.Trim());
        }

        foreach (var (_, value) in map.Entries) LostWithin(value);
        return null;
    }

    private void LostWithin(YamlNode node)
    {
        if (node is YamlMap map) Lost(map);
        else if (node is YamlList list) list.Items.ForEach(LostWithin);
    }

    private static bool Set(object record, KeyShape key, object value)
    {
        key.Property.SetValue(record, value);
        return true;
    }

    private static void SetAt(object record, string at) => typeof(Placed).GetProperty(nameof(Placed.At))!.SetValue(record, at);

    private static string Path(string at, string word) => at.Length == 0 ? word : $"{at}.{word}";

    private static string Named(YamlNode node) => node switch { YamlList => "a list", YamlMap => "a map", _ => $"'{((YamlText)node).Value.Trim()}'" };

    private static string What(ValueShape shape) => shape.Form switch
    {
        ValueForm.Measure => shape.Dimension!.Name,
        ValueForm.Count => "a whole number",
        ValueForm.YesNo => "yes or no",
        ValueForm.Text => "a text",
        _ => "a word",
    };

    private static string Quoted(string text) => text.StartsWith('#') ? $"\"{text}\"" : text;

    private static string Lower(string says) => says.Length > 1 && char.IsLower(says[1]) ? char.ToLowerInvariant(says[0]) + says[1..] : says;

    private static string List(IEnumerable<string> words, string last = "and")
    {
        var all = words.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} {last} {all[^1]}";
    }

    private void Add(YamlNode? node, string at, string message, string suggestion) =>
        problems.Add(new(at, message, suggestion, (int?)node?.Start.Line, (int?)node?.Start.Column));
}
