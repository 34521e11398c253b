using System.Globalization;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Store;

/// <summary>
/// Every value that can be typed in a design, with what is typed now: made from the text and from the same records that read it, so that
/// forms need no list of their own. Works on a text with problems as long as it is YAML.
/// </summary>
public static class DesignOutline
{
    /// <summary>The outline of a text; null where it is no map of keys and values.</summary>
    /// <param name="text">Text of the design file.</param>
    /// <param name="named">Texts of the files it names under <c>motor</c>, <c>site</c> and <c>weather</c>, by that key; null for none.</param>
    public static OutlineMap? Of(string text, IReadOnlyDictionary<string, string>? named = null) => Tree(text) is { } root
        ? new OutlineWriter(root, (named ?? new Dictionary<string, string>()).Select(n => (n.Key, Map: Tree(n.Value))).Where(n => n.Map is not null).ToDictionary(n => n.Key, n => n.Map!))
            .Map(RecordShape.Of(typeof(RocketDesign)), root, "", "Design", "")
        : null;

    private static YamlMap? Tree(string text) => YamlTree.Read(text.TrimStart('\uFEFF'), []) as YamlMap;
}

/// <summary>Writes the outline of one text, with what the files it names hold.</summary>
internal sealed class OutlineWriter(YamlMap root, IReadOnlyDictionary<string, YamlMap> named)
{
    private readonly IReadOnlyList<string> parts = [.. Names(root["parts"], "name")];
    private readonly IReadOnlyList<string> plates = [.. Items(root["parts"]).SelectMany(p => Names((p as YamlMap)?["plates"], "name"))];
    private readonly IReadOnlyList<string> charges = [.. Names(root["charges"], "name")];
    private readonly IReadOnlyList<string> materials = [.. Names(root["materials"], "name")];

    internal OutlineMap Map(RecordShape shape, YamlMap map, string path, string title, string says)
    {
        var kind = title;
        if (shape.Kinds is { } kinds)
        {
            var word = (map[kinds.Key] as YamlText)?.Value.Trim();
            if (kinds.Kinds.FirstOrDefault(k => RecordShape.KindWord(k) == word) is { } chosen) (shape, kind) = (RecordShape.Of(chosen), word!);
        }

        List<OutlineField> fields = [];
        List<OutlineMap> maps = [];
        List<OutlineAddition> additions = [];
        foreach (var key in shape.Keys) Key(shape, key, map[key.Word], path.Length == 0 ? key.Word : $"{path}.{key.Word}", fields, maps, additions);
        return new(path, TitleOf(map) ?? Numbered(title, path), kind, says, fields.ToValueList(), maps.ToValueList(), additions.ToValueList());
    }

    private void Key(RecordShape shape, KeyShape key, YamlNode? node, string path, List<OutlineField> fields, List<OutlineMap> maps, List<OutlineAddition> additions)
    {
        switch (key.Value.Form)
        {
            case ValueForm.Limits:
                Limits(key, node as YamlMap, path, maps, additions);
                return;
            case ValueForm.File when node is YamlMap held:
                maps.Add(Map(RecordShape.Of(key.Value.Held!.Type), held, path, key.Word, key.Key.Says));
                return;
            case ValueForm.File when node is YamlText { Empty: false } && named.TryGetValue(path, out var there):
                maps.Add(Map(RecordShape.Of(key.Value.Held!.Type), there, path, key.Word, key.Key.Says));
                break;
            case ValueForm.File when key.Value.Held!.Form == ValueForm.Record && node is null or YamlText { Empty: true }:
                additions.Add(new(path, key.Word, key.Key.Says, false, [], Needs(RecordShape.Of(key.Value.Held!.Type))));
                break;
            case ValueForm.Record:
            case ValueForm.Readable when key.Value.RecordToo && node is YamlMap:
                Records(key, node, path, fields, maps, additions);
                return;
            case ValueForm.Readable when key.Value.RecordToo && node is null:
                Records(key, node, path, fields, maps, additions);
                break;
        }

        // A second value of a pair would be a third.
        if (key.Many && node is YamlList or YamlText { Empty: false } && key.Word is not ("between" or "ties"))
            additions.Add(new(path, key.Word, key.Key.Says, true, [], [new("", "", One(shape, key))]));
        if (key.Many && node is YamlList list)
        {
            for (var i = 0; i < list.Items.Count; i++) fields.Add(Field(shape, key, list.Items[i], Item(path, i), Item(path, i)));
            if (list.Items.Count == 0) fields.Add(Field(shape, key, null, path));
        }
        else if (node is not YamlList)
        {
            fields.Add(Field(shape, key, node, path));
        }
    }

    private static void Limits(KeyShape key, YamlMap? node, string path, List<OutlineMap> maps, List<OutlineAddition> additions)
    {
        ValueList<string> free = [.. LimitRow.All.Select(r => r.Id).Where(id => node?[id] is null)];
        OutlineAddition more = new(path, "limit", key.Key.Says, false, free, []);
        if (node is null)
        {
            additions.Add(more);
            return;
        }

        var fields = node.Entries.Select(e => new OutlineField($"{path}.{e.Key.Value}", e.Key.Value, SaysOf(e.Key.Value), OutlineKind.Phrase, (e.Value as YamlText)?.Value) { Line = (int)e.Key.Start.Line });
        maps.Add(new(path, key.Word, key.Word, key.Key.Says, fields.ToValueList(), [], [more]));
    }

    private static string SaysOf(string limit)
    {
        if (LimitRow.All.FirstOrDefault(r => r.Id == limit) is not { } row) return "No question has this limit.";
        var usual = MeasureText.Decimal(Math.Round(row.Value, 4)) + (row.Unit is "ratio" or "share" ? "" : $" {row.Unit}");
        return $"{(row.AtLeast ? "At least" : "At most")} this; usually {usual} ({row.Source}). Empty it to go back to that.";
    }

    private void Records(KeyShape key, YamlNode? node, string path, List<OutlineField> fields, List<OutlineMap> maps, List<OutlineAddition> additions)
    {
        var shape = RecordShape.Of(key.Value.Type);
        if (shape.InOrder)
        {
            for (var i = 0; i < Items(node).Count; i++) fields.AddRange(InOrder(shape, Items(node)[i], Item(path, i), i));
            additions.Add(new(path, key.Word, key.Key.Says, true, [], [new("", "", $"[{string.Join(", ", shape.Keys.Select(k => One(shape, k)))}]")]));
            return;
        }

        if (node is YamlMap one) maps.Add(Map(shape, one, path, key.Word, key.Key.Says));
        if (node is YamlList list && key.Many)
        {
            for (var i = 0; i < list.Items.Count; i++)
            {
                if (list.Items[i] is YamlMap item) maps.Add(Map(shape, item, Item(path, i), key.Word, key.Key.Says));
            }
        }

        if (key.Many || node is null or YamlText { Empty: true }) additions.Add(new(path, key.Word, key.Key.Says, key.Many, Kinds(shape), Needs(shape)));
    }

    private IEnumerable<OutlineField> InOrder(RecordShape shape, YamlNode node, string path, int number)
    {
        var values = Items(node);
        for (var i = 0; i < Math.Min(values.Count, shape.Keys.Count); i++)
        {
            var field = Field(shape, shape.Keys[i], values[i], Item(path, i), i == shape.Keys.Count - 1 ? path : null);
            yield return field with { Word = string.Create(CultureInfo.InvariantCulture, $"{field.Word} {number + 1}") };
        }
    }

    private OutlineField Field(RecordShape shape, KeyShape key, YamlNode? node, string path, string? leaves = null)
    {
        var held = node is YamlMap { } map ? map["value"] : node;
        var typed = (held as YamlText) is { Empty: false } text ? text.Value : null;
        return new(path, key.Word, key.Key.Says, Kind(key.Value.Form), typed)
        {
            Required = key.Key.Required,
            Names = key.Key.Names,
            Line = node is null ? null : (int)node.Start.Line,
            Words = Words(shape, key),
            Example = key.Key.Example ?? (key.Value.Form == ValueForm.File ? "" : key.Value.Examples is [var first, ..] ? first : ""),
            Other = Other(key.Value, typed),
            Known = key.Value.Form == ValueForm.Measure && typed is not null ? ((node as YamlMap)?["known"] as YamlText)?.Value ?? "" : null,
            Leaves = leaves,
        };
    }

    // One value of several, as it is added.
    private string One(RecordShape shape, KeyShape key) =>
        YamlWriting.Scalar(key.Key.Example ?? (Words(shape, key) is [var name, ..] ? name : key.Value.Examples is [var first, ..] ? first : key.Word));

    private static OutlineKind Kind(ValueForm form) => form switch
    {
        ValueForm.Count => OutlineKind.Count,
        ValueForm.YesNo => OutlineKind.YesNo,
        ValueForm.Word => OutlineKind.Word,
        ValueForm.Measure => OutlineKind.Quantity,
        ValueForm.Readable => OutlineKind.Phrase,
        _ => OutlineKind.Text,
    };

    // Names of other things where a value refers to them, the words of an enumeration, or examples.
    private ValueList<string> Words(RecordShape shape, KeyShape key) => (shape.Type.Name, key.Word) switch
    {
        (_, "between" or "in" or "into" or "parts") => [.. parts],
        (nameof(ChargeDesign), "on") => [.. plates, DesignChecks.Motor],
        (_, "ties") => [.. parts, .. plates, DesignChecks.Motor],
        (_, "charge") => [.. charges],
        (_, "material") => [.. materials, .. MaterialTable.All.Select(m => m.Name)],
        _ when key.Value.Form is ValueForm.Word or ValueForm.YesNo => key.Value.Examples.ToValueList(),
        _ when key.Value.Form == ValueForm.Readable => key.Value.Examples.ToValueList(),
        _ => [],
    };

    private static string Other(ValueShape shape, string? typed)
    {
        if (typed is null || shape.Read is not { } read) return "";
        var measure = read(typed, Basis.Estimated, "").Value switch { IMeasure plain => plain, IHoldsMeasure holder => holder.Held, _ => null };
        return measure is null ? "" : MeasureText.Other(measure, measure.Unit);
    }

    private static ValueList<string> Kinds(RecordShape shape) => shape.Kinds is { } kinds ? kinds.Kinds.Select(RecordShape.KindWord).ToValueList() : [];

    private static ValueList<OutlineNeed> Needs(RecordShape shape) => shape.Kinds is { } kinds
        ? kinds.Kinds.SelectMany(k => Needs(RecordShape.Of(k), RecordShape.KindWord(k))).ToValueList()
        : Needs(shape, "").ToValueList();

    private static IEnumerable<OutlineNeed> Needs(RecordShape shape, string kind) => shape.Keys.Where(k => k.Key.Required).Select(k =>
        new OutlineNeed(kind, k.Word, k.Value.Form == ValueForm.Record
            ? $"{{{string.Join(", ", Needs(RecordShape.Of(k.Value.Type), "").Select(n => $"{n.Word}: {n.Example}"))}}}"
            : YamlWriting.Scalar(k.Key.Example ?? (k.Value.Examples is [var first, ..] ? first : InWordsOf(k)))));

    private static string InWordsOf(KeyShape key) => key.Key.Names ? "New" : key.Word;

    private static string? TitleOf(YamlMap map)
    {
        foreach (var key in (string[])["name", "altimeter"])
        {
            if (map[key] is YamlText { Empty: false } name) return name.Value;
        }

        if (map["between"] is YamlList { Items: [YamlText one, YamlText other] }) return $"{one.Value} to {other.Value}";
        if (map["in"] is not YamlText) return null;
        return map.Entries.Select(e => e.Value).OfType<YamlMap>().Select(m => (m["name"] as YamlText)?.Value).FirstOrDefault(n => n is not null);
    }

    private static string Numbered(string title, string path) =>
        path.EndsWith(']') && int.TryParse(path[(path.LastIndexOf('[') + 1)..^1], CultureInfo.InvariantCulture, out var index) ? $"{title} {index + 1}" : title;

    private static string Item(string path, int index) => string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]");

    private static List<YamlNode> Items(YamlNode? node) => node is YamlList list ? list.Items : [];

    private static IEnumerable<string> Names(YamlNode? node, string key) =>
        (node is YamlMap one ? [one] : Items(node)).OfType<YamlMap>().Select(m => (m[key] as YamlText)?.Value).OfType<string>();
}
