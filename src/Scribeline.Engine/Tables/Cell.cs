using System.Globalization;

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

    private static Cell[] Read()
    {
        using var stream = typeof(Cell).Assembly.GetManifestResourceStream("Scribeline.Engine.Tables.cells.csv")!;
        using var reader = new StreamReader(stream);
        reader.ReadLine();
        List<Cell> cells = [];
        while (reader.ReadLine() is { } line)
        {
            var parts = line.Split(',', 3);
            cells.Add(new(parts[0], double.Parse(parts[1], CultureInfo.InvariantCulture), parts[2].Trim('"')));
        }

        return [.. cells];
    }
}
