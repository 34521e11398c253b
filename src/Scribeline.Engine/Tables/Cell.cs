namespace Scribeline.Engine.Tables;

/// <summary>A kind of battery cell.</summary>
/// <param name="Chemistry">As typed in a design.</param>
/// <param name="Voltage">Nominal, V.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Cell(string Chemistry, double Voltage, string Source)
{
    private static readonly Cell[] All = Read();

    /// <summary>The cell of a chemistry; null if unknown.</summary>
    /// <param name="chemistry">As typed.</param>
    public static Cell? Find(string? chemistry) => All.FirstOrDefault(c => c.Chemistry.Equals(chemistry, StringComparison.OrdinalIgnoreCase));

    private static Cell[] Read() => [.. EmbeddedTable.Rows("cells", 3).Select(cells => new Cell(cells[0], EmbeddedTable.Number(cells[1]), cells[2]))];
}
