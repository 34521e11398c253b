namespace Scribeline.Engine.Tables;

/// <summary>A row of a table of distances: how far people stand back from a rocket of this total impulse, all motors installed together.</summary>
/// <param name="Table">Name of the table.</param>
/// <param name="Above">Lower bound, N·s, not included.</param>
/// <param name="To">Upper bound, N·s, included.</param>
/// <param name="Class">Equivalent motor.</param>
/// <param name="ClearedFeet">Diameter to clear, ft; null where the table gives none.</param>
/// <param name="PeopleFeet">Distance of people, ft.</param>
/// <param name="ComplexFeet">The same for several stages or motors, ft; null where the next row holds.</param>
/// <param name="Source">Publication and edition.</param>
public sealed record SafeDistance(string Table, double Above, double To, string Class, double? ClearedFeet, double PeopleFeet, double? ComplexFeet, string Source)
{
    private const double Foot = 0.3048;

    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<SafeDistance> All { get; } = [.. EmbeddedTable.Rows("rule-distances", 8).Select(c => new SafeDistance(
        c[0], EmbeddedTable.Number(c[1]), EmbeddedTable.Number(c[2]), c[3], EmbeddedTable.NumberOrNull(c[4]), EmbeddedTable.Number(c[5]),
        c[6] == "next" ? null : EmbeddedTable.Number(c[6]), c[7]))];

    /// <summary>Diameter to clear, m; null where the table gives none.</summary>
    public double? Cleared => ClearedFeet * Foot;

    /// <summary>The row of a total impulse, N·s to 0.01; null where the table has none.</summary>
    /// <param name="table">Name of the table.</param>
    /// <param name="impulse">N·s, 0 or more.</param>
    public static SafeDistance? Of(string table, double impulse)
    {
        var rounded = Math.Round(impulse, 2, MidpointRounding.AwayFromZero);
        return All.FirstOrDefault(r => r.Table == table && (rounded > r.Above || (r.Above == 0 && rounded == 0)) && rounded <= r.To);
    }

    /// <summary>Distance of people, m; null for a complex rocket beyond the table's last row.</summary>
    /// <param name="complex">Whether it has several stages or motors.</param>
    public double? People(bool complex) =>
        !complex ? PeopleFeet * Foot : ComplexFeet is { } own ? own * Foot : All.FirstOrDefault(r => r.Table == Table && r.Above == To)?.PeopleFeet * Foot;
}
