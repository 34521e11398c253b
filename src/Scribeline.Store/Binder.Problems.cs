using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <content>What is said of what cannot be read, and what was probably meant.</content>
internal sealed partial class Binder
{
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
