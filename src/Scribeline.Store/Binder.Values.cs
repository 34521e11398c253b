using System.Globalization;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <content>How a single value is read.</content>
internal sealed partial class Binder
{
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
}
