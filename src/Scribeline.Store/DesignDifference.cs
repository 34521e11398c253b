using System.Globalization;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>
/// What changed between two texts of a design, in its builder's words: things are known by their names, so that order, comments and spacing do
/// not count.
/// </summary>
public static class DesignDifference
{
    /// <summary>Every change, in the order of the new text, what is gone last; null where one of the texts is no map of keys and values.</summary>
    /// <param name="before">The old text.</param>
    /// <param name="after">The new text.</param>
    public static ValueList<DesignChange>? Between(string before, string after)
    {
        if (Typed(before) is not { } old || Typed(after) is not { } now) return null;
        HashSet<string> things = [.. old.Select(o => o.Of)], nowThings = [.. now.Select(n => n.Of)];
        var was = old.ToLookup(o => o.Label, o => o.Text);
        var stays = now.Select(n => n.Label).ToHashSet();
        List<DesignChange> changes = [];
        foreach (var value in now)
        {
            if (!things.Contains(value.Of)) changes.Add(new(value.Of, null, ""));
            else if (!was[value.Label].Any()) changes.Add(new(value.Label, null, value.Text));
            else if (was[value.Label].First() is var past && past != value.Text) changes.Add(new(value.Label, past, value.Text));
        }

        foreach (var gone in old.Where(o => !stays.Contains(o.Label)))
            changes.Add(nowThings.Contains(gone.Of) ? new(gone.Label, gone.Text, null) : new(gone.Of, "", null));
        return changes.Distinct().ToValueList();
    }

    private static List<Value>? Typed(string text)
    {
        List<Problem> problems = [];
        if (YamlTree.Read(text.TrimStart('\uFEFF'), problems) is not YamlMap root) return null;
        List<Value> values = [];
        foreach (var (key, value) in root.Entries) Collect(value, "", key.Value.Trim(), values);
        return values;
    }

    private readonly record struct Value(string Of, string What, string Text)
    {
        public string Label => $"{Of} {What}".Trim();
    }

    private static void Collect(YamlNode node, string of, string keys, List<Value> values)
    {
        switch (node)
        {
            case YamlText text:
                values.Add(new(of, keys, text.Value.Trim()));
                break;
            case YamlMap map when map["value"] is YamlText value && map.Entries.TrueForAll(e => e.Key.Value is "value" or "known"):
                values.Add(new(of, keys, $"{value.Value.Trim()}{((map["known"] as YamlText)?.Value is { } known ? $" ({known})" : "")}"));
                break;
            case YamlMap map:
                foreach (var (key, value) in map.Entries.Where(e => e.Key.Value is not ("name" or "altimeter" or "between")))
                    Below(value, of, keys, key.Value.Trim(), values);
                break;
            case YamlList { Items: var items } when items.TrueForAll(i => i is YamlText):
                values.Add(new(of, keys, string.Join(", ", items.Select(i => ((YamlText)i).Value.Trim()))));
                break;
            case YamlList { Items: var items }:
                for (var i = 0; i < items.Count; i++)
                {
                    var numbered = items.Count == 1 ? keys : string.Create(CultureInfo.InvariantCulture, $"{keys} {i + 1}");
                    if (NameOf(items[i]) is { } name) Thing(items[i], name, values);
                    else Collect(items[i], of, numbered, values);
                }

                break;
        }
    }

    private static void Below(YamlNode value, string of, string keys, string key, List<Value> values)
    {
        if (value is YamlMap && NameOf(value) is { } name) Thing(value, name, values);
        else Collect(value, of, keys.Length == 0 ? key : $"{keys} {key}", values);
    }

    // A thing without values of its own still is or is not there.
    private static void Thing(YamlNode node, string name, List<Value> values)
    {
        values.Add(new(name, "", ""));
        Collect(node, name, "", values);
    }

    // Its own name; the two parts of a joint; or the name of what a place in a bay holds.
    private static string? NameOf(YamlNode node) => node is not YamlMap map ? null
        : map["name"] is YamlText { Empty: false } name ? name.Value.Trim()
        : map["altimeter"] is YamlText { Empty: false } altimeter ? altimeter.Value.Trim()
        : map["between"] is YamlList { Items: [YamlText ahead, YamlText behind] } ? $"{ahead.Value.Trim()} to {behind.Value.Trim()}"
        : map["in"] is YamlText ? map.Entries.Select(e => e.Value is YamlMap held ? NameOf(held) : null).FirstOrDefault(n => n is not null)
        : null;
}
