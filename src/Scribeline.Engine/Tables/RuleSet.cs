namespace Scribeline.Engine.Tables;

/// <summary>A body of rules with its edition.</summary>
/// <param name="Name">As a site names it.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Distances">Its table of distances; empty where it has none, or none that is known here.</param>
/// <param name="Where">Where it holds.</param>
/// <param name="Note">What must be known of it; empty for nothing.</param>
/// <param name="Source">Publication and edition.</param>
public sealed record RuleSet(string Name, RuleKind Kind, string Distances, string Where, string Note, string Source)
{
    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<RuleSet> All { get; } = [.. EmbeddedTable.Rows("rule-sets", 6).Select(c => new RuleSet(c[0], KindOf(c[1]), c[2], c[3], c[4], c[5]))];

    /// <summary>The rules of a name; null where none are known by it.</summary>
    /// <param name="name">As typed.</param>
    public static RuleSet? Find(string name) => All.FirstOrDefault(s => s.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));

    private static RuleKind KindOf(string word) => word switch
    {
        "regulation" => RuleKind.Regulation,
        "explosives" => RuleKind.Explosives,
        "safety code" => RuleKind.SafetyCode,
        "programme" => RuleKind.Programme,
        _ => throw new InvalidOperationException($"Table rule-sets: no kind \"{word}\"."),
    };
}

/// <summary>What a body of rules is.</summary>
public enum RuleKind
{
    /// <summary>National or state law of flying.</summary>
    Regulation,

    /// <summary>Law of explosives.</summary>
    Explosives,

    /// <summary>Safety code of an association or a fire code.</summary>
    SafetyCode,

    /// <summary>A programme's own demands.</summary>
    Programme,
}
