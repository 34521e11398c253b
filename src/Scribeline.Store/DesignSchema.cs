using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>JSON Schema of the design file, made from the same records that read it, for editors that complete and check while typing.</summary>
public static class DesignSchema
{
    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema of design files, draft 2020-12.</summary>
    public static string Text()
    {
        SortedDictionary<string, JsonNode> definitions = new(StringComparer.Ordinal);
        Define(typeof(RocketDesign), definitions);
        JsonObject root = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Scribeline design file",
            ["$ref"] = Reference(typeof(RocketDesign)),
            ["$defs"] = new JsonObject(definitions.Select(d => KeyValuePair.Create(d.Key, (JsonNode?)d.Value))),
        };
        return root.ToJsonString(Layout) + "\n";
    }

    private static string Name(Type type) => type.Name.Replace("Design", "", StringComparison.Ordinal) is { Length: > 0 } name ? PlainWords.Of(name).Replace(' ', '-') : "design";

    private static string Reference(Type type) => $"#/$defs/{Name(type)}";

    private static JsonObject Define(Type type, SortedDictionary<string, JsonNode> definitions)
    {
        if (definitions.ContainsKey(Name(type))) return new() { ["$ref"] = Reference(type) };
        definitions[Name(type)] = new JsonObject();
        var shape = RecordShape.Of(type);
        if (shape.Kinds is { } kinds)
        {
            // The word under "kind" chooses the rules for the rest.
            JsonArray rules = [];
            foreach (var kind in kinds.Kinds)
            {
                rules.Add(new JsonObject
                {
                    ["if"] = new JsonObject { ["properties"] = new JsonObject { [kinds.Key] = new JsonObject { ["const"] = RecordShape.KindWord(kind) } } },
                    ["then"] = Define(kind, definitions),
                });
            }

            definitions[Name(type)] = new JsonObject
            {
                ["type"] = "object",
                ["properties"] = new JsonObject { [kinds.Key] = new JsonObject { ["enum"] = Strings(kinds.Kinds.Select(RecordShape.KindWord)) } },
                ["required"] = Strings([kinds.Key]),
                ["allOf"] = rules,
            };
        }
        else
        {
            definitions[Name(type)] = shape.InOrder ? InOrder(shape, definitions) : Map(shape, definitions);
        }

        return new() { ["$ref"] = Reference(type) };
    }

    private static JsonObject Map(RecordShape shape, SortedDictionary<string, JsonNode> definitions)
    {
        JsonObject properties = [];
        var above = shape.Type.BaseType is { } parent ? RecordShape.Of(parent).Kinds : null;
        if (above is not null) properties[above.Key] = new JsonObject { ["const"] = RecordShape.KindWord(shape.Type) };
        foreach (var key in shape.Keys) properties[key.Word] = Property(key, definitions);
        JsonObject map = new() { ["type"] = "object", ["properties"] = properties, ["additionalProperties"] = false };
        var required = shape.Keys.Where(k => k.Key.Required).Select(k => k.Word).ToList();
        if (required.Count > 0) map["required"] = Strings(required);
        return map;
    }

    private static JsonObject InOrder(RecordShape shape, SortedDictionary<string, JsonNode> definitions) => new()
    {
        ["type"] = "array",
        ["prefixItems"] = new JsonArray([.. shape.Keys.Select(k => (JsonNode)Property(k, definitions))]),
        ["minItems"] = shape.Keys.Count,
        ["maxItems"] = shape.Keys.Count,
    };

    private static JsonObject Property(KeyShape key, SortedDictionary<string, JsonNode> definitions)
    {
        var one = Value(key.Value, definitions);
        var value = !key.Many || key.Value.Form == ValueForm.Limits
            ? one
            : new JsonObject { ["anyOf"] = new JsonArray(one, new JsonObject { ["type"] = "array", ["items"] = Value(key.Value, definitions) }) };
        JsonObject property = new() { ["description"] = key.Key.Says };
        foreach (var (word, node) in value.ToList())
        {
            value.Remove(word);
            property[word] = node;
        }

        return property;
    }

    private static JsonObject Value(ValueShape value, SortedDictionary<string, JsonNode> definitions) => value.Form switch
    {
        ValueForm.Text => new() { ["type"] = new JsonArray("string", "number") },
        ValueForm.Count => new() { ["type"] = "integer" },
        ValueForm.YesNo => new() { ["enum"] = new JsonArray(true, false, "yes", "no") },
        ValueForm.Word => new() { ["enum"] = Strings(RecordShape.Words(value.Type).Select(w => w.Word)) },
        ValueForm.Measure => Measured(value, definitions),
        ValueForm.Readable => Readable(value, definitions),
        ValueForm.File => new() { ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "string", ["description"] = "Name of a file." }, Value(value.Held!, definitions)) },
        ValueForm.Limits => new() { ["type"] = "object", ["additionalProperties"] = new JsonObject { ["type"] = new JsonArray("string", "number") } },
        ValueForm.Thrust => new() { ["type"] = "array", ["items"] = Define(typeof(ThrustPointDesign), definitions) },
        _ => Define(value.Type, definitions),
    };

    // Defined once for each kind of quantity.
    private static JsonObject Measured(ValueShape value, SortedDictionary<string, JsonNode> definitions)
    {
        var name = "quantity-" + value.Dimension!.Name[(value.Dimension.Name.IndexOf(' ', StringComparison.Ordinal) + 1)..].Replace(' ', '-');
        if (!definitions.ContainsKey(name)) definitions[name] = Measured(value);
        return new() { ["$ref"] = $"#/$defs/{name}" };
    }

    private static JsonObject Measured(ValueShape value)
    {
        JsonArray scalar = [Quantity(value.Dimension!), value.Dimension!.Plain ? new JsonObject { ["type"] = "number" } : new JsonObject { ["const"] = 0 }];
        return new()
        {
            ["anyOf"] = new JsonArray([.. scalar.Select(s => s!.DeepClone()), new JsonObject
            {
                ["type"] = "object",
                ["properties"] = new JsonObject
                {
                    ["value"] = new JsonObject { ["anyOf"] = scalar },
                    ["known"] = new JsonObject { ["enum"] = Strings(RecordShape.Words(typeof(Basis)).Select(w => w.Word)) },
                },
                ["required"] = Strings(["value"]),
                ["additionalProperties"] = false,
            }]),
        };
    }

    // A number first and a unit of the right kind somewhere after it; the program itself reads more closely.
    private static JsonObject Quantity(Dimension dimension)
    {
        var units = dimension.Units.SelectMany(u => u.Also.Prepend(u.Word)).Where(w => w.Length > 0).Distinct().OrderByDescending(w => w.Length).ThenBy(w => w, StringComparer.Ordinal);
        var unit = dimension.Plain ? "" : $"({string.Join('|', units.Select(Escaped))}).*";
        return new()
        {
            ["type"] = "string",
            ["pattern"] = $"^[-+−]?\\s*[0-9.¼½¾⅛⅜⅝⅞].*{unit}$",
            ["examples"] = dimension.Plain ? Strings(["0.75", "75 %"]) : Strings(dimension.Units.Take(4).Select(u => $"5{u.Gap}{u.Word}")),
        };
    }

    private static string Escaped(string word) => Regex.Replace(word, @"[.^$*+?()\[\]{}|\\/]", m => "\\" + m.Value);

    private static JsonObject Readable(ValueShape value, SortedDictionary<string, JsonNode> definitions)
    {
        JsonObject text = new() { ["type"] = new JsonArray("string", "number"), ["examples"] = Strings(value.Examples) };
        if (!value.RecordToo) return text;
        return new() { ["anyOf"] = new JsonArray(text, Define(value.Type, definitions)) };
    }

    private static JsonArray Strings(IEnumerable<string> texts) => [.. texts.Select(t => (JsonNode)t)];
}
