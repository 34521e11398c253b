using Scribeline.Engine.Design;
using Scribeline.Engine.Shop;
using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <summary>Where in the text of a design the place of something on a plate is typed.</summary>
/// <param name="Group">Its name on the plate.</param>
/// <param name="Index">Its number among its like, from 0.</param>
/// <param name="Count">How many of its like one entry of the text places; they share their distance from the middle.</param>
/// <param name="At">Path of the thing that holds it.</param>
internal abstract record PlateHandle(string Group, int Index, int Count, string At)
{
    /// <summary>How to take hold of a group; null where it cannot be moved.</summary>
    /// <param name="design">The design.</param>
    /// <param name="plate">The plate.</param>
    /// <param name="group">Name of the group.</param>
    public static PlateHandle? Of(RocketDesign design, PlateLayout plate, string group)
    {
        var part = design.Parts[plate.Part];
        if (part.Plates.FirstOrDefault(p => p.Name == plate.Name) is not { } typed) return null;
        if (group == "rod") return part is AltimeterBayDesign { Rods: { Count: > 1 } rods } ? new OfRods(group, rods.At) : null;
        if (group is "U-bolt" or "eye bolt") return new OfBolt(group, typed.At, typed.Bolt is not null);
        foreach (var carried in typed.Carries)
        {
            var name = carried.Name ?? Words(carried.Kind);
            var patterns = carried.Clock.Count;
            var count = carried.Count ?? Math.Max(carried.Clock.Sum(c => Math.Max(c.Share, 1)), 1);
            for (var i = 0; i < count; i++)
            {
                if (group == (count > 1 ? $"{name} {i + 1}" : name)) return new OfCarried(group, i, count, carried.At, patterns == count);
            }
        }

        return null;
    }

    /// <summary>Writes a place.</summary>
    /// <param name="text">Text of the design.</param>
    /// <param name="fromCentre">As typed; null leaves it.</param>
    /// <param name="clock">As typed; null leaves it.</param>
    /// <param name="clocks">Of all its like as they lie now, as typed, for where the text does not name each.</param>
    public abstract TextChange Write(string text, string? fromCentre, string? clock, IReadOnlyList<string> clocks);

    /// <summary>What distance of two across the middle the text asks for, rather than the distance of one from it.</summary>
    public virtual bool Across => false;

    private static string Words(OnPlateWord kind) => kind switch
    {
        OnPlateWord.ChargeCup => "charge cup",
        OnPlateWord.TerminalBlock => "terminal block",
        OnPlateWord.WireHole => "wire hole",
        OnPlateWord.KeepClear => "keep clear",
        _ => "thing",
    };

    private static TextChange Then(TextChange first, Func<string, TextChange> next) => first.Problem is null ? next(first.Text) : first;

    private static TextChange Set(string text, string path, string? value) => value is null ? new(text, null) : DesignText.Replace(text, path, value);

    private sealed record OfRods(string Group, string At) : PlateHandle(Group, 0, 1, At)
    {
        public override bool Across => true;

        public override TextChange Write(string text, string? fromCentre, string? clock, IReadOnlyList<string> clocks) =>
            Then(Set(text, $"{At}.spacing", fromCentre), t => Set(t, $"{At}.first clock", clock));
    }

    private sealed record OfBolt(string Group, string At, bool Placed) : PlateHandle(Group, 0, 1, At)
    {
        public override TextChange Write(string text, string? fromCentre, string? clock, IReadOnlyList<string> clocks)
        {
            if (Placed) return Then(Set(text, $"{At}.bolt.from centre", fromCentre), t => Set(t, $"{At}.bolt.clock", clock));
            string?[] entries = [fromCentre is null ? null : $"from centre: {fromCentre}", clock is null ? null : $"clock: {clock}"];
            return DesignText.Put(text, $"{At}.bolt", $"{{{string.Join(", ", entries.OfType<string>())}}}");
        }
    }

    private sealed record OfCarried(string Group, int Index, int Count, string At, bool Each) : PlateHandle(Group, Index, Count, At)
    {
        public override TextChange Write(string text, string? fromCentre, string? clock, IReadOnlyList<string> clocks) => Then(Set(text, $"{At}.from centre", fromCentre), t =>
        {
            if (clock is null) return new(t, null);

            // Where every angle is named, only this one changes; a rule, or nothing, gives way to a list of all.
            var path = FormattableString.Invariant($"{At}.clock[{Index}]");
            if (Each && DesignText.Replace(t, path, clock) is { Problem: null } one) return one;
            var all = string.Join(", ", clocks.Select((c, i) => i == Index ? clock : c));
            var without = DesignText.Remove(t, $"{At}.clock");
            return DesignText.Put(without.Text, $"{At}.clock", $"[{all}]");
        });
    }
}
