using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tables;

/// <summary>Heads of machine screws.</summary>
/// <param name="Size">As in a thread's name: "#6", "1/4", "M4".</param>
/// <param name="Pan">Diameter of a pan head, m.</param>
/// <param name="Flat">Diameter of a flat head at its sharp rim, m: the countersink.</param>
/// <param name="FlatAngle">Included angle of a flat head, rad.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record ScrewHead(string Size, double Pan, double Flat, double FlatAngle, string Source)
{
    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<ScrewHead> All { get; } = Read();

    /// <summary>The heads of a thread; null if the table has none.</summary>
    /// <param name="thread">By name.</param>
    public static ScrewHead? Find(ThreadName thread) => All.FirstOrDefault(h => h.Size == thread.Size);

    private static ScrewHead[] Read() => [.. EmbeddedTable.Rows("screw-heads", 5).Select(c =>
    {
        double Number(int i) => EmbeddedTable.Number(c[i]);
        return new ScrewHead(c[0], 1e-3 * Number(1), 1e-3 * Number(2), Number(3) * Math.PI / 180, c[4]);
    })];
}
