namespace Scribeline.Engine.Tables;

/// <summary>How a sheet bends, in its weaker direction.</summary>
/// <param name="Name">Of the material, as in the table of materials.</param>
/// <param name="Thickness">Of the sheet that was tested, m; null where it does not matter.</param>
/// <param name="Bending">Bending strength, Pa.</param>
/// <param name="Poisson">ν.</param>
/// <param name="Divisor">Strength is divided by this before a load is held against it.</param>
/// <param name="Shear">Shear strength through the sheet, Pa; null where unknown.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record PlateMaterial(string Name, double? Thickness, double Bending, double Poisson, double Divisor, double? Shear, string Source)
{
    /// <summary>Divisor for a material of no tabled sheet: that of wood, the greatest of the table.</summary>
    public const double UnknownDivisor = 4;

    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<PlateMaterial> All { get; } = [.. Read()];

    /// <summary>The thickest tabled sheet that is not thicker than this one, or the thinnest; null for another material.</summary>
    /// <param name="material">Name of the table of materials.</param>
    /// <param name="thickness">m.</param>
    public static PlateMaterial? Find(string material, double thickness)
    {
        var rows = All.Where(r => r.Name.Equals(material, StringComparison.OrdinalIgnoreCase)).ToArray();
        return rows.LastOrDefault(r => r.Thickness is not { } tested || tested <= thickness + 1e-6) ?? rows.FirstOrDefault();
    }

    private static IEnumerable<PlateMaterial> Read() => EmbeddedTable.Rows("plates", 7).Select(cells =>
    {
        double? Number(int i) => EmbeddedTable.NumberOrNull(cells[i]);
        return new PlateMaterial(cells[0], Number(1) / 1000, 1e6 * Number(2)!.Value, Number(3)!.Value, Number(4)!.Value, 1e6 * Number(5), cells[6]);
    });
}
