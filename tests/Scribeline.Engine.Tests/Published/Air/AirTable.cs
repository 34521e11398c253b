using System.Globalization;
using System.Text.RegularExpressions;

namespace Scribeline.Engine.Tests.Published.Air;

/// <summary>Rows of a CSV of Published/Data, by column name; lines that begin with # are remarks.</summary>
public static partial class AirTable
{
    public static List<Dictionary<string, string>> Read(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Published", "Data", file))
            .Where(l => l.Length > 0 && l[0] != '#').Select(Cells).ToList();
        return [.. lines.Skip(1).Select(row => lines[0].Zip(row).ToDictionary(c => c.First, c => c.Second))];
    }

    public static double Number(this Dictionary<string, string> row, string column) =>
        double.Parse(row[column], CultureInfo.InvariantCulture);

    /// <summary>The number written after "name=" or "name " among the inputs.</summary>
    public static double Input(this Dictionary<string, string> row, string name)
    {
        var match = Regex.Match(row["inputs"], $@"(?<![A-Za-z]){Regex.Escape(name)}[= ]\s*(-?[0-9.]+)");
        return double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
    }

    private static string[] Cells(string line) =>
        [.. CellPattern().Matches(line).Select(m => m.Groups[1].Success ? m.Groups[1].Value : m.Groups[2].Value)];

    [GeneratedRegex("(?:^|,)(?:\"([^\"]*)\"|([^,]*))")]
    private static partial Regex CellPattern();
}
