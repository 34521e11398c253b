using Scribeline.Engine.Design;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Recovery;

/// <summary>A kind of canopy and what the handbook says of it. Coefficients refer to the nominal area S0, all cloth included.</summary>
/// <param name="Name">As typed in a design.</param>
/// <param name="DragLow">Least drag coefficient on S0.</param>
/// <param name="DragHigh">Greatest drag coefficient on S0.</param>
/// <param name="OpeningForce">Opening-force coefficient at infinite mass.</param>
/// <param name="FillConstant">n: fill distance in nominal diameters.</param>
/// <param name="GrowthExponent">j: growth of the drag area while filling, 6 solid cloth, 1 ribbon.</param>
/// <param name="ProjectedLow">Least projected over nominal diameter.</param>
/// <param name="ProjectedHigh">Greatest projected over nominal diameter.</param>
/// <param name="Source">Publication with table.</param>
public sealed record CanopyKind(
    string Name,
    double DragLow,
    double DragHigh,
    double OpeningForce,
    double FillConstant,
    double GrowthExponent,
    double ProjectedLow,
    double ProjectedHigh,
    string Source)
{
    /// <summary>Middle of the drag coefficient's range, on S0.</summary>
    public double Drag => (DragLow + DragHigh) / 2;

    /// <summary>Every kind of the table.</summary>
    public static IReadOnlyList<CanopyKind> All { get; } = Read();

    /// <summary>The kind a design names; null where the handbook has none, as for a streamer.</summary>
    public static CanopyKind? Of(CanopyType type) =>
        All.FirstOrDefault(k => k.Name.Replace(" ", "", StringComparison.Ordinal).Equals(type.ToString(), StringComparison.OrdinalIgnoreCase));

    private static CanopyKind[] Read() => [.. EmbeddedTable.Rows("canopies", 9).Select(cells =>
    {
        double Number(int i) => EmbeddedTable.Number(cells[i]);
        return new CanopyKind(cells[0], Number(1), Number(2), Number(3), Number(4), Number(5), Number(6), Number(7), cells[8]);
    })];
}
