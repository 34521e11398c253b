using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tables;

/// <summary>A screw thread with the drills that go with it.</summary>
/// <param name="Designation">Such as "#2-56", "1/4-20" or "M4x0.7".</param>
/// <param name="Series">UNC, UNF or ISO coarse.</param>
/// <param name="Major">Major diameter, m.</param>
/// <param name="Pitch">m.</param>
/// <param name="Tap">Drill before tapping, for about three quarters of the full thread.</param>
/// <param name="HalfTap">Drill before tapping, for about half of the full thread.</param>
/// <param name="Close">Clearance hole of a close fit; null where no standard gives one.</param>
/// <param name="Normal">Clearance hole of a normal fit; null where no standard gives one.</param>
/// <param name="Loose">Clearance hole of a loose fit; null where no standard gives one.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record ScrewThread(
    string Designation, string Series, double Major, double Pitch, Drill Tap, Drill HalfTap, Drill? Close, Drill? Normal, Drill? Loose, string Source)
{
    // Full depth on the diameter that printed charts reckon with, 3H/4 a side; and the basic height of the internal thread, 5H/8 a side.
    private const double ChartDepth = 1.299038, BasicDepth = 1.082532;

    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<ScrewThread> All { get; } = Read();

    /// <summary>Whether it is an ISO metric thread.</summary>
    public bool Metric => Designation[0] == 'M';

    /// <summary>Pitch diameter, m: D - 0.649519 P (ASME B1.1; ISO 724).</summary>
    public double PitchDiameter => Major - (0.649519 * Pitch);

    /// <summary>Minor diameter of the nut, m: D - 1.082532 P (ASME B1.1; ISO 724).</summary>
    public double InternalMinor => Major - (BasicDepth * Pitch);

    /// <summary>Per cent of thread a hole leaves, 0 to 1, by the convention of printed charts: (D - hole)/(1.299038 P), Machinery's Handbook 31, p. 2155.</summary>
    /// <param name="hole">m.</param>
    public double ChartShare(double hole) => (Major - hole) / (ChartDepth * Pitch);

    /// <summary>Share of the basic thread height a hole leaves, 0 to 1: (D - hole)/(1.082532 P).</summary>
    /// <param name="hole">m.</param>
    public double BasicShare(double hole) => (Major - hole) / (BasicDepth * Pitch);

    /// <summary>The row of a thread; a metric size without pitch means the coarse one; null if the table has none.</summary>
    /// <param name="thread">By name.</param>
    public static ScrewThread? Find(ThreadName thread) => All.FirstOrDefault(
        r => r.Designation == thread.Designation || (thread is { Metric: true, Pitch.Length: 0 } && r.Designation.StartsWith(thread.Size + "x", StringComparison.Ordinal)));

    private static ScrewThread[] Read() => [.. EmbeddedTable.Rows("threads", 15).Select(c =>
    {
        double Mm(int i) => 1e-3 * EmbeddedTable.Number(c[i]);
        Drill? Size(int i) => c[i].Length == 0 ? null : Drill.Named(c[i]) ?? throw new InvalidOperationException($"{c[0]}: no drill {c[i]}.");
        return new ScrewThread(c[0], c[1], Mm(2), Mm(3), Size(4)!, Size(6)!, Size(8), Size(10), Size(12), c[14]);
    })];
}
