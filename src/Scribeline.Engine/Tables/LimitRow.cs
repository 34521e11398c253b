namespace Scribeline.Engine.Tables;

/// <summary>A row of the table of limits that questions judge by.</summary>
/// <param name="Id">Question and bound, for example "rail-exit.speed".</param>
/// <param name="Value">The bound, in SI.</param>
/// <param name="Unit">SI unit of the bound: ratio, share, calibre, m, rad, m/s, J or K.</param>
/// <param name="AtLeast">Whether values must not be less (or must not be more).</param>
/// <param name="Guard">Width of the band on the good side that still asks for care.</param>
/// <param name="Must">Whether missing it can hurt someone.</param>
/// <param name="Source">Publication, or "common practice".</param>
public sealed record LimitRow(string Id, double Value, string Unit, bool AtLeast, double Guard, bool Must, string Source)
{
    /// <summary>Every row, in the order of the table.</summary>
    public static IReadOnlyList<LimitRow> All { get; } = Read();

    private static LimitRow[] Read() => [.. EmbeddedTable.Rows("limits", 7).Select(cells => new LimitRow(
        cells[0], EmbeddedTable.Number(cells[1]), cells[2], cells[3] == "at least", EmbeddedTable.Number(cells[4]), cells[5] == "must", cells[6]))];
}
