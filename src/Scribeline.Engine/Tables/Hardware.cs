using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tables;

/// <summary>Space that a nut, washer, bolt or rod takes, at the greatest size its standard allows.</summary>
/// <param name="Kind">In words, such as "wing nut type A".</param>
/// <param name="Standard">May be empty where there is none.</param>
/// <param name="Size">As in a thread's name, with N or W for a narrow or wide washer.</param>
/// <param name="Thread">Designation; empty for washers.</param>
/// <param name="AcrossFlats">Of a hexagon, m; null for the rest.</param>
/// <param name="Across">Corners of a hexagon, outside of a washer or bolt, spread of wings, m.</param>
/// <param name="Inner">Hole of a washer, boss of a wing nut, barrel of a pronged nut, inside width of a U-bolt, eye of an eye bolt, m; null for the rest.</param>
/// <param name="Height">m; null for a rod.</param>
/// <param name="Sweep">Radius swept about the thread's axis, m; null for a U-bolt.</param>
/// <param name="Mass">kg, of a rod kg for each 10 mm; null where unknown.</param>
/// <param name="Note">What else is known.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record Hardware(
    string Kind, string Standard, string Size, string Thread, double? AcrossFlats, double Across, double? Inner, double? Height, double? Sweep, double? Mass, string Note, string Source)
{
    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<Hardware> All { get; } = Read();

    /// <summary>Plain hexagon nut of a thread; null if the table has none.</summary>
    /// <param name="thread">By name.</param>
    public static Hardware? Nut(ThreadName thread) => All.FirstOrDefault(h => h.Kind == "hex nut" && Fits(h, thread))
        ?? All.FirstOrDefault(h => h.Kind.StartsWith("hex", StringComparison.Ordinal) && !h.Kind.Contains("jam", StringComparison.Ordinal) && Fits(h, thread));

    /// <summary>Every wing nut of a thread, narrowest spread first: more than one generation is on sale.</summary>
    /// <param name="thread">By name.</param>
    public static IReadOnlyList<Hardware> WingNuts(ThreadName thread) =>
        [.. All.Where(h => h.Kind.StartsWith("wing nut", StringComparison.Ordinal) && Fits(h, thread)).OrderBy(h => h.Across)];

    /// <summary>Plain washer of a thread, the wide one where there are two; null if the table has none.</summary>
    /// <param name="thread">By name.</param>
    public static Hardware? Washer(ThreadName thread) => All.Where(h =>
        h.Kind.StartsWith("plain washer", StringComparison.Ordinal) && h.Size.Split(' ')[0] == thread.Size).MaxBy(h => h.Across);

    /// <summary>U-bolts of a size, narrowest first.</summary>
    /// <param name="size">As in a thread's name.</param>
    public static IReadOnlyList<Hardware> UBolts(string size) => [.. All.Where(h => h.Kind.StartsWith("U-bolt", StringComparison.Ordinal) && h.Size == size).OrderBy(h => h.Inner)];

    /// <summary>Forged shoulder eye bolt of a size; null if the table has none.</summary>
    /// <param name="size">As in a thread's name.</param>
    public static Hardware? EyeBolt(string size) => All.FirstOrDefault(h => h.Kind.StartsWith("eye bolt", StringComparison.Ordinal) && h.Size == size);

    // The row of the same size is the nearest where a fine thread has none of its own.
    private static bool Fits(Hardware h, ThreadName thread) => h.Size == thread.Size;

    private static Hardware[] Read() => [.. EmbeddedTable.Rows("hardware", 12).Select(c =>
    {
        double? Mm(int i) => EmbeddedTable.NumberOrNull(c[i]) is { } mm ? 1e-3 * mm : null;
        return new Hardware(c[0], c[1], c[2], c[3], Mm(4), Mm(5)!.Value, Mm(6), Mm(7), Mm(8), Mm(9), c[10], c[11]);
    })];
}
