using System.Text;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>The reference of every key of the design file, made from the same records that read it.</summary>
public static class DesignReference
{
    /// <summary>The reference as Markdown: one section for each map, one row for each key.</summary>
    public static string Text()
    {
        StringBuilder text = new();
        Queue<(string Title, Type Type)> waiting = new([("The file", typeof(RocketDesign))]);
        HashSet<Type> seen = [typeof(RocketDesign)];
        while (waiting.TryDequeue(out var next))
        {
            var shape = RecordShape.Of(next.Type);
            if (shape.Kinds is { } kinds)
            {
                foreach (var kind in kinds.Kinds) waiting.Enqueue(($"{next.Title}, {kinds.Key}: {RecordShape.KindWord(kind)}", kind));
                continue;
            }

            Section(text, next.Title, shape);
            foreach (var key in shape.Keys)
            {
                var value = key.Value.Form == ValueForm.File ? key.Value.Held! : key.Value;
                if ((value.Form == ValueForm.Record || value.RecordToo) && seen.Add(value.Type)) waiting.Enqueue(($"`{key.Word}`", value.Type));
            }
        }

        return text.ToString();
    }

    private static void Section(StringBuilder text, string title, RecordShape shape)
    {
        text.Append("### ").Append(title).Append("\n\n");
        if (shape.InOrder) text.Append("Typed as a list: [").AppendJoin(", ", shape.Keys.Select(k => k.Word)).Append("].\n\n");
        text.Append("| key | holds | meaning |\n|---|---|---|\n");
        foreach (var key in shape.Keys)
        {
            text.Append("| ").Append(key.Key.Required ? $"**`{key.Word}`**" : $"`{key.Word}`").Append(" | ").Append(Holds(key)).Append(" | ").Append(key.Key.Says).Append(" |\n");
        }

        text.Append('\n');
    }

    private static string Holds(KeyShape key)
    {
        var one = One(key.Value, key.Word);
        var sign = key.Key.Sign switch { Sign.Above => ", above 0", Sign.NotBelow => ", 0 or more", _ => "" };
        return key.Many && key.Value.Form != ValueForm.Limits ? $"{one}{sign}; one or a list" : one + sign;
    }

    private static string One(ValueShape value, string word) => value.Form switch
    {
        ValueForm.Text => "text",
        ValueForm.Count => "whole number",
        ValueForm.YesNo => "yes or no",
        ValueForm.Word => string.Join(", ", RecordShape.Words(value.Type).Select(w => $"`{w.Word}`")),
        ValueForm.Measure => Bare(value.Dimension!),
        ValueForm.Readable => (value.Quantity is null ? "such as " : $"{Bare(value.Dimension!)} or ") + string.Join(", ", value.Examples.Select(e => $"`{e}`")) + (value.RecordToo ? $", or a map, see `{word}`" : ""),
        ValueForm.File => $"a file's name, or {One(value.Held!, word)}",
        ValueForm.Limits => "map of limit to bound",
        ValueForm.Thrust => "list of [time, thrust]",
        _ => $"map, see {(value.Type == typeof(PartDesign) ? "the kinds of part" : $"`{word}`")}",
    };

    private static string Bare(Dimension dimension) => dimension.Name[(dimension.Name.IndexOf(' ', StringComparison.Ordinal) + 1)..];
}
