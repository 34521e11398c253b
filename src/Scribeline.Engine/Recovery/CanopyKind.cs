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
/// <param name="ConstructedLow">Least constructed over nominal diameter.</param>
/// <param name="ConstructedHigh">Greatest constructed over nominal diameter.</param>
/// <param name="SwingLow">Least angle it swings to either side, rad.</param>
/// <param name="SwingHigh">Greatest angle it swings to either side, rad.</param>
/// <param name="ForceGrowth">n: growth of the drag area with time in the handbook's force reduction, 2 solid cloth, 1 ribbon.</param>
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
    double ConstructedLow,
    double ConstructedHigh,
    double SwingLow,
    double SwingHigh,
    double ForceGrowth,
    string Source)
{
    /// <summary>Middle of the drag coefficient's range, on S0.</summary>
    public double Drag => (DragLow + DragHigh) / 2;

    /// <summary>Middle of projected over nominal diameter.</summary>
    public double Projected => (ProjectedLow + ProjectedHigh) / 2;

    /// <summary>Middle of constructed over nominal diameter.</summary>
    public double Constructed => (ConstructedLow + ConstructedHigh) / 2;

    /// <summary>Every kind of the table.</summary>
    public static IReadOnlyList<CanopyKind> All { get; } = Read();

    /// <summary>The kind a design names; null where the handbook has none, as for a streamer.</summary>
    public static CanopyKind? Of(CanopyType type) =>
        All.FirstOrDefault(k => k.Name.Replace(" ", "", StringComparison.Ordinal).Equals(type.ToString(), StringComparison.OrdinalIgnoreCase));

    private static CanopyKind[] Read() => [.. EmbeddedTable.Rows("canopies", 14).Select(cells =>
    {
        double Number(int i) => EmbeddedTable.Number(cells[i]);
        return new CanopyKind(
            cells[0], Number(1), Number(2), Number(3), Number(4), Number(5), Number(6), Number(7), Number(8), Number(9),
            double.DegreesToRadians(Number(10)), double.DegreesToRadians(Number(11)), Number(12), cells[13]);
    })];
}
