using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Shop;

/// <summary>What is known of a kind of work.</summary>
/// <param name="Work">Which.</param>
/// <param name="HandsOn">Whether a person works at it; otherwise it is a wait.</param>
/// <param name="Once">s.</param>
/// <param name="Each">s more for every hole, fin or piece.</param>
/// <param name="Says">What to do, with a place for what it is done to and one for details.</param>
internal sealed record BuildWorkRow(BuildWork Work, bool HandsOn, double Once, double Each, string Says)
{
    public static IReadOnlyDictionary<BuildWork, BuildWorkRow> All { get; } = EmbeddedTable.Rows("build-works", 5)
        .Select(c => new BuildWorkRow(Named(c[0]), c[1] == "yes", 60 * EmbeddedTable.Number(c[2]), 60 * EmbeddedTable.Number(c[3]), c[4]))
        .ToDictionary(r => r.Work);

    /// <summary>As the tables and ids name it: lower-case words.</summary>
    public static string WordsOf(BuildWork work) => PlainWords.Of(work.ToString());

    public static BuildWork Named(string words) => Enum.Parse<BuildWork>(words.Replace(" ", "", StringComparison.Ordinal), ignoreCase: true);
}

/// <summary>One kind of work must come before another.</summary>
/// <param name="Before">The first.</param>
/// <param name="After">The second.</param>
/// <param name="At">Where: at the same place, on the same part, or anywhere.</param>
/// <param name="Hard">Whether physics or safety asks for it.</param>
/// <param name="Reason">Why.</param>
internal sealed record BuildRule(BuildWork Before, BuildWork After, BuildRuleAt At, bool Hard, string Reason)
{
    public static IReadOnlyList<BuildRule> All { get; } = [.. EmbeddedTable.Rows("build-rules", 5).Select(c => new BuildRule(
        BuildWorkRow.Named(c[0]), BuildWorkRow.Named(c[1]), Enum.Parse<BuildRuleAt>(c[2], ignoreCase: true), c[3] == "hard", c[4]))];

    /// <summary>Whether it binds two steps.</summary>
    public bool Binds(BuildStep before, BuildStep after) => before.Work == Before && after.Work == After && At switch
    {
        BuildRuleAt.Place => before.Place == after.Place,
        BuildRuleAt.Part => before.Parts.Any(p => after.Parts.Contains(p)),
        _ => true,
    };
}

/// <summary>Where a rule binds.</summary>
internal enum BuildRuleAt
{
    /// <summary>At the same bond or row of holes.</summary>
    Place,

    /// <summary>On a common part.</summary>
    Part,

    /// <summary>Anywhere in the rocket.</summary>
    All,
}
