namespace Scribeline.Engine.Tables;

/// <summary>A condition that a body of rules sets for a flight, in our own words.</summary>
/// <param name="Id">Short and unique, such as N06c.</param>
/// <param name="Set">Name of the rules it belongs to.</param>
/// <param name="Number">Its number in them.</param>
/// <param name="Judged">
/// What is compared, "person" where only a person can say, or "told" where nothing is to be met. A question mark at the end leaves it to a person
/// where the value is not typed; a word after "person" or "told" names the fact that helps to judge.
/// </param>
/// <param name="When">When it holds; empty for always.</param>
/// <param name="AtLeast">Whether the value must not be less than the bound; otherwise not more.</param>
/// <param name="Bound">SI number, or the name of the bound.</param>
/// <param name="Must">Whether missing it can hurt someone or breaks a law or code.</param>
/// <param name="Ahead">Whether it can be confirmed before the day's weather is known.</param>
/// <param name="Status">How well the text is known: confirmed, from memory.</param>
/// <param name="Text">In plain words.</param>
public sealed record Rule(string Id, string Set, string Number, string Judged, string When, bool AtLeast, string Bound, bool Must, bool Ahead, string Status, string Text)
{
    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<Rule> All { get; } = [.. EmbeddedTable.Rows("rules", 11).Select(c =>
        new Rule(c[0], c[1], c[2], c[3], c[4], c[5] == "at least", c[6], c[7] == "must", c[8] == "ahead", c[9], c[10]))];

    /// <summary>The rules it belongs to.</summary>
    public RuleSet Rules => RuleSet.Find(Set)!;

    /// <summary>Publication, edition and number, with a word where the text is not confirmed.</summary>
    public string Source => $"{Rules.Source}; {Number}{(Status == "confirmed" ? "" : $"; {Status}")}";

    /// <summary>The condition with an id, upper or lower case; null where there is none.</summary>
    /// <param name="id">As typed.</param>
    public static Rule? Find(string id) => All.FirstOrDefault(r => r.Id.Equals(id.Trim(), StringComparison.OrdinalIgnoreCase));
}
