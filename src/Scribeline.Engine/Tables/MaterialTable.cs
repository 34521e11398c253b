namespace Scribeline.Engine.Tables;

/// <summary>Materials of airframes and their hardware, each row with its source.</summary>
public static class MaterialTable
{
    private static readonly Dictionary<string, Material> ByKey = [];

    /// <summary>In the order of the table.</summary>
    public static IReadOnlyList<Material> All { get; } = Read();

    /// <summary>The material of a name or of one of its other names, whatever the case, spaces and hyphens; null if unknown.</summary>
    /// <param name="name">As typed.</param>
    public static Material? Find(string name) => ByKey.GetValueOrDefault(Key(name));

    /// <summary>Name of the table's material that reads most like a name, for a suggestion.</summary>
    /// <param name="name">As typed.</param>
    public static string Nearest(string name) => ByKey.MinBy(p => Distance(p.Key, Key(name))).Value.Name;

    private static string Key(string name) => new([.. name.Where(char.IsLetterOrDigit).Select(char.ToUpperInvariant)]);

    private static List<Material> Read()
    {
        List<Material> all = [];
        foreach (var cells in EmbeddedTable.Rows("materials", 7))
        {
            Material material = new(cells[0], EmbeddedTable.Number(cells[2]), 1e9 * EmbeddedTable.NumberOrNull(cells[3]), 1e9 * EmbeddedTable.NumberOrNull(cells[4]), 1e6 * EmbeddedTable.NumberOrNull(cells[5]), cells[6]);
            all.Add(material);
            foreach (string name in cells[1].Split(';').Append(cells[0]).Where(n => n.Length > 0)) ByKey.TryAdd(Key(name), material);
        }

        return all;
    }

    /// <summary>Edits between two words: Levenshtein, Soviet Physics Doklady 10 (1966).</summary>
    private static int Distance(string a, string b)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int corner = row[0]++;
            for (int j = 1; j <= b.Length; j++)
            {
                int cost = a[i - 1] == b[j - 1] ? corner : 1 + Math.Min(corner, Math.Min(row[j], row[j - 1]));
                (corner, row[j]) = (row[j], cost);
            }
        }

        return row[^1];
    }
}
