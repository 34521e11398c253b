using System.Globalization;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;
using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <summary>Adds things to a design and takes them out, with what must change around them so that the design stays whole.</summary>
internal static class NewThings
{
    // What a new thing starts with where its neighbours tell nothing: plain to see in the form, to be replaced by what is measured.
    private static readonly Dictionary<string, string> Plausible = new(StringComparer.Ordinal)
    {
        ["length"] = "12 in",
        ["thickness"] = "1/8 in",
        ["mass"] = "50 g",
        ["diameter"] = "1/8 in",
        ["count"] = "3",
        ["root"] = "6 in",
        ["tip"] = "3 in",
        ["span"] = "3 in",
        ["sweep"] = "3 in",
        ["height"] = "500 ft",
        ["time"] = "10 s",
        ["material"] = "glass epoxy",
        ["size"] = "\"1010\"",
        ["from forward end"] = "1 in",
        ["from aft end"] = "1 in",
        ["density"] = "1.85 g/cm³",
        ["value"] = "1",
        ["thrust"] = "[[0 s, 0 N], [0.05 s, 500 N], [2 s, 500 N], [2.5 s, 0 N]]",
        ["loaded mass"] = "1.4 kg",
        ["elevation"] = "0 m",
        ["voltage"] = "9 V",

        // So small that nothing lands within it until the real one is typed.
        ["corners"] = "[[-10 m, -10 m], [10 m, -10 m], [10 m, 10 m], [-10 m, 10 m]]",
    };

    /// <summary>The change that adds a thing, and where it will stand.</summary>
    /// <param name="root">Outline of the design.</param>
    /// <param name="addition">What to add.</param>
    /// <param name="kind">Its kind; empty where there is one.</param>
    public static (Func<string, string, TextChange> Change, string Path) Add(OutlineMap root, OutlineAddition addition, string kind)
    {
        if (addition.Path == "limits") return (Limit(kind, root.Find("limits") is null), $"limits.{kind}");
        var yaml = Yaml(root, addition, kind, out var name);
        if (!addition.Many) return ((text, at) => DesignText.Put(text, at, yaml), addition.Path);
        var count = Count(root, addition.Path);
        if (addition.Path != "parts" || name is null)
        {
            // A file that the design names knows the list by a shorter path.
            var item = Item(addition.Path, count);
            return ((text, at) => DesignText.Insert(text, addition.Path[(item.Length - at.Length)..], yaml), item);
        }

        // A part goes before the last one, which carries the fins; a nose goes first.
        var at = kind == "nose cone" ? 0 : Math.Max(0, count - 1);
        return ((text, _) => Then(DesignText.Insert(text, "parts", yaml, at), after => Join(after, Names(root), at, name)), Item("parts", at));
    }

    /// <summary>The change that takes a thing out.</summary>
    public static Func<string, string, TextChange> TakeOut(OutlineMap root, string path)
    {
        if (path.StartsWith("parts[", StringComparison.Ordinal) && path.IndexOf(']', StringComparison.Ordinal) == path.Length - 1)
        {
            var index = int.Parse(path[6..^1], CultureInfo.InvariantCulture);
            return (text, _) => Then(DesignText.TakeOut(text, path), after => Unjoin(after, Names(root), index, Count(root, "joints")));
        }

        return DesignText.TakeOut;
    }

    /// <summary>The change that gives a thing another name, everywhere it is mentioned.</summary>
    public static Func<string, TextChange> Rename(OutlineMap root, OutlineField field, string name)
    {
        var old = field.Typed ?? "";
        var mentions = old.Length == 0 ? [] : root.All.Where(m => !IsOfTheDay(m.Path)).SelectMany(m => m.Fields).Where(f => f.Path != field.Path && !f.Names && f.Path != "name").Select(f => (f.Path, New: Mention(f.Typed, old, name))).Where(m => m.New is not null).ToList();
        return text => mentions.Aggregate(DesignText.Replace(text, field.Path, name), (change, mention) => Then(change, after => DesignText.Replace(after, mention.Path, mention.New!)));
    }

    // Motors, fields and weathers mention nothing of the rocket.
    private static bool IsOfTheDay(string path) => path.Split('.', '[')[0] is "motor" or "site" or "weather";

    // The usual bound, to be replaced: typed so that it reads back.
    private static Func<string, string, TextChange> Limit(string id, bool first)
    {
        var row = LimitRow.All.First(r => r.Id == id);
        var bound = MeasureText.Decimal(Math.Round(row.Value, 4)) + (row.Unit is "ratio" or "share" or "calibre" ? "" : $" {row.Unit}");
        return (text, at) => first ? DesignText.Put(text, "limits", $"{{{id}: {bound}}}") : DesignText.Put(text, at, bound);
    }

    private static string? Mention(string? typed, string old, string name) =>
        typed is null ? null : typed == old ? name : typed.EndsWith(" of " + old, StringComparison.Ordinal) ? typed[..^old.Length] + name : null;

    private static TextChange Join(string text, List<string> parts, int at, string name)
    {
        if (parts.Count == 0) return new(text, null);
        if (at == 0) return DesignText.Insert(text, "joints", $"{{between: [{name}, {Quoted(parts[0])}], kind: sliding}}", 0);
        var joint = Item("joints", at - 1);
        return Then(DesignText.Replace(text, $"{joint}.between[1]", name), after => DesignText.Insert(after, "joints", $"{{between: [{name}, {Quoted(parts[at])}], kind: bonded}}", at));
    }

    private static TextChange Unjoin(string text, List<string> parts, int index, int joints)
    {
        if (joints == 0) return new(text, null);
        if (index == 0) return DesignText.TakeOut(text, "joints[0]");
        if (index >= joints) return DesignText.TakeOut(text, Item("joints", joints - 1));
        return Then(DesignText.Replace(text, $"{Item("joints", index - 1)}.between[1]", parts[index + 1]), after => DesignText.TakeOut(after, Item("joints", index)));
    }

    private static string Yaml(OutlineMap root, OutlineAddition addition, string kind, out string? name)
    {
        name = null;
        if (addition.Needs is [{ Word: "" } alone]) return alone.Example;
        List<string> entries = [];
        string? given = null;
        if (kind.Length > 0) entries.Add($"kind: {kind}");
        foreach (var need in addition.Needs.Where(n => n.Kind.Length == 0 || n.Kind == kind))
        {
            var value = Value(root, addition, kind, need);
            if (need.Word == "name") given = value;
            entries.Add($"{need.Word}: {value}");
        }

        // Every part is a tube or slides on one: its neighbours tell its bore.
        if (kind is "tube" or "coupler" && Typed(root, "inside") is { } bore && entries.TrueForAll(e => !e.StartsWith("inside", StringComparison.Ordinal)))
            entries.Add(kind == "tube" ? $"inside: {bore}" : "wall: 2 mm");
        if (kind == "nose cone") entries.Add("wall: 2 mm");
        if (addition.Path == "motor") entries.Add("propellant mass: 700 g");
        if (addition.Path == "weather") entries.Add("wind speed: 10 mph ± 3 mph");
        if (addition.Word == "supply") entries.AddRange(["chemistry: alkaline", "cells: 6", "voltage: 9 V", "internal resistance: 2 Ω"]);
        if (addition.Path == "stowed") entries.Add("other: {name: New, mass: 50 g}");
        if (addition.Path == "firing") entries.Add($"altimeter: {Unused(root, "Altimeter")}");
        if (addition.Path == "failures") entries.Add(root.All.SelectMany(m => m.Fields).FirstOrDefault(f => f.Word == "altimeter" && f.Typed is not null) is { } altimeter ? $"dead: [{Quoted(altimeter.Typed!)}]" : "impulse: 90 %");
        if (addition.Word == "fins") entries.AddRange(["root: 6 in", "tip: 3 in", "span: 3 in", "sweep: 3 in"]);
        name = given;
        return $"{{{string.Join(", ", entries.OrderBy(e => e.StartsWith("name:", StringComparison.Ordinal) ? 0 : 1))}}}";
    }

    private static string Value(OutlineMap root, OutlineAddition addition, string kind, OutlineNeed need) => need.Word switch
    {
        "name" => Unused(root, Capital(kind.Length > 0 ? kind : addition.Word.TrimEnd('s'))),
        "in" or "into" => Quoted(Names(root).LastOrDefault() ?? "Booster"),
        "on" => Quoted(root.All.FirstOrDefault(m => m.Word == "plates")?.Title ?? "Motor"),
        "charge" => Quoted(root.Maps.FirstOrDefault(m => m.Word == "charges")?.Title ?? "Charge"),
        "between" => $"[{string.Join(", ", Names(root).TakeLast(2).Select(Quoted))}]",
        "ties" => $"[{string.Join(", ", Names(root).TakeLast(2).Select(Quoted))}]",
        "outside" => Typed(root, kind == "coupler" ? "inside" : "outside") ?? "3.1 in",
        "inside" => Typed(root, "inside") ?? "3 in",
        "mass" when addition.Path == "charges" => "auto",
        "corners" => Plausible[need.Word],
        _ => Plausible.TryGetValue(need.Word, out var plausible) && !need.Example.StartsWith('{') ? plausible : need.Example,
    };

    private static string? Typed(OutlineMap root, string word) =>
        root.Maps.Where(m => m.Word == "parts" && m.Kind == "tube").SelectMany(m => m.Fields).FirstOrDefault(f => f.Word == word && f.Typed is not null)?.Typed;

    private static string Unused(OutlineMap root, string name)
    {
        var taken = root.All.Select(m => m.Title).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var free = name;
        for (var i = 2; taken.Contains(free); i++) free = string.Create(CultureInfo.InvariantCulture, $"{name} {i}");
        return free;
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    private static List<string> Names(OutlineMap root) => [.. root.Maps.Where(m => m.Word == "parts").Select(m => m.Title)];

    private static int Count(OutlineMap root, string path) => root.All.Count(m => m.OneOfMany && m.Path[..m.Path.LastIndexOf('[')] == path) is > 0 and var many ? many : root.Find(path) is null ? 0 : 1;

    private static string Item(string path, int index) => string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]");

    private static string Quoted(string name) => name.IndexOfAny([',', ':', '#', '[', ']', '{', '}', '"']) >= 0 ? $"\"{name.Replace("\"", "\\\"", StringComparison.Ordinal)}\"" : name;

    private static TextChange Then(TextChange first, Func<string, TextChange> next) => first.Problem is null ? next(first.Text) : first;
}
