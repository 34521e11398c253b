namespace Scribeline.Engine.Tables;

/// <summary>What a harness is made of.</summary>
/// <param name="Name">As typed in a design, with its size.</param>
/// <param name="Strength">Minimum breaking load, N; null where no specification gives one.</param>
/// <param name="Stretch">At the breaking load, as a share of the length.</param>
/// <param name="Width">Of the cord laid flat, m; null where no specification gives one.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record CordMaterial(string Name, double? Strength, double Stretch, double? Width, string Source)
{
    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<CordMaterial> All { get; } = [.. Read().Select(r => r.Material)];

    /// <summary>Whether it is woven nylon, which stretches along two lines.</summary>
    public bool Nylon => Name.Contains("nylon", StringComparison.Ordinal);

    /// <summary>
    /// The row of this name; without one, the row of the fibre alone, which has a stretch but no strength; null if neither is known.
    /// </summary>
    /// <param name="name">As typed.</param>
    public static CordMaterial? Find(string name)
    {
        var plain = string.Join(' ', name.Replace("\"", " in", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToLowerInvariant();
        return Read().Where(r => r.Names.Any(n => n == plain)).Select(r => r.Material).FirstOrDefault()
            ?? Read().Where(r => r.Material.Strength is null && r.Names.Any(n => plain.Contains(n, StringComparison.Ordinal))).Select(r => r.Material).FirstOrDefault();
    }

    private static IEnumerable<(CordMaterial Material, string[] Names)> Read() => EmbeddedTable.Rows("cords", 6).Select(cells => (
        new CordMaterial(
            cells[0], EmbeddedTable.NumberOrNull(cells[2]), EmbeddedTable.Number(cells[3]), EmbeddedTable.NumberOrNull(cells[4]) / 1000, cells[5]),
        (string[])[cells[0].ToLowerInvariant(), .. cells[1].ToLowerInvariant().Split(';')]));
}
