using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Everything in a design that has a name.</summary>
internal sealed class DesignNames(RocketDesign design, ValueList<string> unread)
{
    internal IReadOnlyList<string> Parts { get; } = [.. design.Parts.Select(p => p.Name)];

    internal IReadOnlyList<string> Plates { get; } = [.. design.Parts.SelectMany(p => p.Plates).Select(p => p.Name)];

    internal IReadOnlyList<string> Charges { get; } = [.. design.Charges.Select(c => c.Name)];

    internal IReadOnlyList<string> Cords { get; } = [.. design.Stowed.Select(s => s.Cord?.Name).OfType<string>()];

    internal IReadOnlyList<string> Altimeters { get; } = [.. design.Firing.Select(f => f.Altimeter).OfType<string>()];

    internal IReadOnlyList<string> Canopies { get; } = [.. design.Stowed.Select(s => s.Canopy?.Name).OfType<string>()];

    /// <summary>Whether every part could be read, so that their order means something.</summary>
    internal bool Whole { get; } = unread.Count == 0;

    /// <summary>Blames a name that nothing has.</summary>
    /// <param name="name">As typed.</param>
    /// <param name="known">What it may be.</param>
    /// <param name="what">With its article, such as "a part".</param>
    /// <param name="at">Path of the mention.</param>
    /// <param name="problems">Takes the problem.</param>
    internal void Need(string name, IReadOnlyList<string> known, string what, string at, List<Problem> problems)
    {
        if (known.Contains(name) || unread.Contains(name)) return;

        // Without any parts that could be read, every name would be blamed for one slip.
        if (design.Parts.Count == 0 && what.Contains("part", StringComparison.Ordinal)) return;
        problems.Add(new(at, $"There is no {what} named '{name}'.", known.Count == 0 ? $"Add {(what[0] is 'a' or 'o' ? "an" : "a")} {what}, or remove this." : Spelling.Nearest(name, unread) is { } lost ? $"Did you mean '{lost}'?" : Spelling.Suggest(name, [.. known.Distinct()])));
    }

    internal void Unique(List<Problem> problems)
    {
        // Parts and plates share their names, because cords tie to either.
        Twice(design.Parts.Select(p => (p.Name, p.At)).Concat(design.Parts.SelectMany(p => p.Plates).Select(p => (p.Name, p.At))), "parts or plates", problems);
        Twice(design.Charges.Select(c => (c.Name, c.At)), "charges", problems);
        Twice(design.Firing.Where(f => f.Altimeter is not null).Select(f => (f.Altimeter!, f.At)), "altimeters", problems);
        Twice(design.Stowed.Where(s => s.Canopy is not null).Select(s => (s.Canopy!.Name, s.Canopy.At)), "canopies", problems);
        Twice(design.Stowed.Where(s => s.Cord?.Name is not null).Select(s => (s.Cord!.Name!, s.Cord.At)), "cords", problems);
        Twice(design.Failures.Select(f => (f.Name, f.At)), "failures", problems);
        Twice(design.Materials.Select(m => (m.Name, m.At)), "materials", problems);
        foreach (var (name, at) in design.Parts.Select(p => (p.Name, p.At)).Concat(design.Parts.SelectMany(p => p.Plates).Select(p => (p.Name, p.At))).Where(n => n.Name == DesignChecks.Motor))
            problems.Add(new($"{at}.name", $"'{name}' always means the motor itself.", "Choose another name."));
    }

    private static void Twice(IEnumerable<(string Name, string At)> named, string what, List<Problem> problems)
    {
        HashSet<string> seen = new(StringComparer.OrdinalIgnoreCase);
        foreach (var (name, at) in named)
        {
            if (!seen.Add(name)) problems.Add(new($"{at}.name", $"Two {what} are named '{name}'.", "Give each its own name; capitals do not tell them apart."));
        }
    }
}
