namespace Scribeline.Engine.Tables;

/// <summary>An adhesive.</summary>
/// <param name="Name">As typed in a design.</param>
/// <param name="LapShear">Lowest lap shear strength by ASTM D1002 on abraded aluminium, Pa. It compares adhesives; it is no design stress.</param>
/// <param name="Density">Mixed, kg/m³; null where unknown.</param>
/// <param name="PotLife">Working time of <paramref name="PotMass"/> in its cup at <paramref name="Temperature"/>, s; null where unknown.</param>
/// <param name="PotMass">kg; null where unknown.</param>
/// <param name="Temperature">At which the times hold, K.</param>
/// <param name="Handling">Until it may be moved, s; null where unknown.</param>
/// <param name="Full">Until it may be loaded, s; null where unknown.</param>
/// <param name="Softens">Where it begins to give under load, K; null where unknown.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record Adhesive(
    string Name, double LapShear, double? Density, double? PotLife, double? PotMass, double Temperature, double? Handling, double? Full, double? Softens, string Source)
{
    private static readonly (Adhesive Adhesive, string[] Names)[] Rows = [.. Read()];

    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<Adhesive> All { get; } = [.. Rows.Select(r => r.Adhesive)];

    /// <summary>The adhesive of a name or of one of its other names, whatever the case; null if unknown.</summary>
    /// <param name="name">As typed.</param>
    public static Adhesive? Find(string name) => Rows.FirstOrDefault(r => r.Names.Contains(name.Trim(), StringComparer.OrdinalIgnoreCase)).Adhesive;

    private static IEnumerable<(Adhesive Adhesive, string[] Names)> Read() => EmbeddedTable.Rows("adhesives", 12).Select(c =>
    {
        double? Scaled(int i, double factor, double offset = 0) => EmbeddedTable.NumberOrNull(c[i]) is { } value ? (factor * value) + offset : null;
        return (
            new Adhesive(c[0], Scaled(2, 1e6)!.Value, Scaled(4, 1), Scaled(5, 60), Scaled(6, 1e-3), Scaled(7, 1, 273.15)!.Value, Scaled(8, 3600), Scaled(9, 3600), Scaled(10, 1, 273.15), c[11]),
            (string[])[c[0], .. c[1].Split(';')]);
    });
}
