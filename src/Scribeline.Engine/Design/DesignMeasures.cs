using System.Reflection;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Every quantity of the rocket itself that can be measured on it, found by name, and the design with measured values in their place.</summary>
public static class DesignMeasures
{
    /// <summary>All of them, parts first, each thing's own before those of what is fixed to it.</summary>
    /// <param name="design">As typed.</param>
    public static ValueList<PlannedMeasure> Of(RocketDesign design)
    {
        List<PlannedMeasure> found = [];
        foreach (var part in design.Parts) Collect(part, part.Name, "", found);
        foreach (var joint in design.Joints) Collect(joint, string.Join(" to ", joint.Between), "", found);
        foreach (var stowed in design.Stowed) Collect(stowed, stowed.In, "", found);

        // Two things that their builder gave no names are told apart by their order.
        return found.GroupBy(m => Plain(m.Name)).SelectMany(g => g.Select((m, i) => i == 0 ? m : m with { What = $"{m.What} {i + 1}" }))
            .OrderBy(m => found.FindIndex(f => f.At == m.At)).ToValueList();
    }

    /// <summary>The one with this name, capitals and points for spaces aside; null for none.</summary>
    /// <param name="all">Of a design.</param>
    /// <param name="name">Such as <c>booster fins root</c> or <c>Booster fins.root</c>.</param>
    public static PlannedMeasure? Find(ValueList<PlannedMeasure> all, string name)
    {
        var plain = Plain(name);
        return all.FirstOrDefault(m => Plain(m.Name) == plain);
    }

    /// <summary>What to type instead of a name that is none: the nearest one, or what its owner has.</summary>
    /// <param name="all">Of a design.</param>
    /// <param name="name">As typed.</param>
    public static string Suggest(ValueList<PlannedMeasure> all, string name)
    {
        if (Spelling.Nearest(Plain(name), all.Select(m => Plain(m.Name))) is { } near) return $"Did you mean '{all.First(m => Plain(m.Name) == near).Name}'?";
        var owners = all.Select(m => m.Of).Distinct().ToArray();
        return owners.Where(o => Plain(name).StartsWith(Plain(o), StringComparison.Ordinal)).MaxBy(o => o.Length) is { } owner
            ? $"Of {owner} can be measured: {string.Join(", ", all.Where(m => m.Of == owner).Select(m => m.What))}."
            : $"Begin with one of {string.Join(", ", owners)}.";
    }

    /// <summary>The design with some of its quantities replaced, whether they were typed or left out.</summary>
    /// <param name="design">As typed.</param>
    /// <param name="values">By their paths, each of its quantity's own dimension.</param>
    public static RocketDesign With(RocketDesign design, IReadOnlyDictionary<string, IMeasure> values) =>
        values.Count == 0 ? design : (RocketDesign)Replaced(design, values);

    private static string Plain(string name) =>
        string.Join(' ', name.Replace('.', ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToUpperInvariant();

    private static void Collect(Placed record, string of, string prefix, List<PlannedMeasure> found)
    {
        List<(Placed Record, string Of, string Prefix)> below = [];
        foreach (var key in PlacedShape.Of(record.GetType()).Keys)
        {
            var word = key.Word;
            var value = key.Property.GetValue(record);
            if (key.Quantity is { } quantity)
                found.Add(new(of, prefix + word, Path(record, word), Dimension.All.First(d => d.Holds(quantity)), key.Sign, value as IMeasure));
            else if (value is Placed one)
                below.Add(Below(one, word));
            else if (value is System.Collections.IEnumerable many and not string)
                below.AddRange(Numbered(many.OfType<Placed>().ToArray(), word));
        }

        foreach (var (next, name, words) in below) Collect(next, name, words, found);

        IEnumerable<(Placed, string, string)> Numbered(Placed[] several, string word) =>
            several.Select((s, i) => Below(s, several.Length == 1 || NameOf(s) is not null ? word : $"{word} {i + 1}"));

        (Placed, string, string) Below(Placed next, string word) => NameOf(next) is { } own ? (next, own, "") : (next, of, $"{prefix}{word} ");
    }

    // What was not named by its builder is known by what it belongs to.
    private static string? NameOf(Placed record) => PlacedShape.Of(record.GetType()).NameOf(record);

    private static object Replaced(Placed record, IReadOnlyDictionary<string, IMeasure> values)
    {
        Placed? changed = null;
        foreach (var key in PlacedShape.Of(record.GetType()).Keys)
        {
            var value = key.Property.GetValue(record);
            var now = key.Quantity is not null ? values.GetValueOrDefault(Path(record, key.Word)) ?? value
                : value is Placed one ? Replaced(one, values)
                : value is System.Collections.IEnumerable many and not string ? Replaced(many, key.Property.PropertyType, values)
                : value;
            if (ReferenceEquals(now, value)) continue;
            changed ??= (Placed)record.GetType().GetMethod("<Clone>$")!.Invoke(record, null)!;
            key.Property.SetValue(changed, now);
        }

        return changed ?? record;
    }

    private static object Replaced(System.Collections.IEnumerable many, Type type, IReadOnlyDictionary<string, IMeasure> values)
    {
        object[] old = [.. many.Cast<object>()], now = [.. old.Select(o => o is Placed placed ? Replaced(placed, values) : o)];
        if (old.SequenceEqual(now, ReferenceEqualityComparer.Instance)) return many;
        var items = Array.CreateInstance(type.GetGenericArguments()[0], now.Length);
        now.CopyTo(items, 0);
        return Activator.CreateInstance(type, BindingFlags.NonPublic | BindingFlags.Instance, null, [items], null)!;
    }

    private static string Path(Placed record, string word) => record.At.Length == 0 ? word : $"{record.At}.{word}";
}
