namespace Scribeline.Engine.Tables;

/// <summary>Shear strength of what pins are made of, at 23 °C.</summary>
/// <param name="Name">As typed in a design.</param>
/// <param name="Low">Planning value of the weakest, Pa: conditioned by moisture.</param>
/// <param name="Nominal">Dry, Pa.</param>
/// <param name="High">Planning value of the strongest, Pa.</param>
/// <param name="ColdFactor">On strength at -20 °C.</param>
/// <param name="HotFactor">On strength at 55 °C, as on a sunlit tube.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record PinMaterial(string Name, double Low, double Nominal, double High, double ColdFactor, double HotFactor, string Source)
{
    private const double Cold = 253.15, Room = 296.15, Hot = 328.15;

    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<PinMaterial> All { get; } = [.. Read().Select(r => r.Material)];

    /// <summary>The material of a name or of one of its other names, whatever the case; null if unknown.</summary>
    /// <param name="name">As typed.</param>
    public static PinMaterial? Find(string name) =>
        Read().FirstOrDefault(r => r.Names.Contains(name.Trim(), StringComparer.OrdinalIgnoreCase)).Material;

    /// <summary>Factor on the strength, linear between -20, 23 and 55 °C and held beyond them.</summary>
    /// <param name="temperature">K.</param>
    public double FactorAt(double temperature) => temperature < Room
        ? 1 + ((ColdFactor - 1) * Math.Min((Room - temperature) / (Room - Cold), 1))
        : 1 + ((HotFactor - 1) * Math.Min((temperature - Room) / (Hot - Room), 1));

    private static IEnumerable<(PinMaterial Material, string[] Names)> Read() => EmbeddedTable.Rows("pin-materials", 8).Select(cells =>
    {
        double Number(int i) => EmbeddedTable.Number(cells[i]);
        return (new PinMaterial(cells[0], 1e6 * Number(2), 1e6 * Number(3), 1e6 * Number(4), Number(5), Number(6), cells[7]), (string[])[cells[0], .. cells[1].Split(';')]);
    });
}
