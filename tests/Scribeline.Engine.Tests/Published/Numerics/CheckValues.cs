using System.Globalization;
using Xunit.Sdk;

namespace Scribeline.Engine.Tests.Published.Numerics;

/// <summary>Rows of the published and independently computed values in numerics-check-values.csv; the sources stand in the file.</summary>
internal static class CheckValues
{
    private static readonly Dictionary<string, (double Value, double Tolerance, bool Absolute)> Rows = Read();

    public static IEnumerable<string> Ids => Rows.Keys;

    /// <summary>The value of a row.</summary>
    public static double Value(string id) => Rows[id].Value;

    /// <summary>Fails unless a computed number agrees with a row within the row's own tolerance.</summary>
    public static void Holds(string id, double computed)
    {
        var (value, tolerance, absolute) = Rows[id];
        var allowed = absolute ? tolerance : tolerance * Math.Abs(value);
        if (!(Math.Abs(computed - value) <= allowed))
        {
            throw new XunitException(FormattableString.Invariant($"{id}: computed {computed:R}, expected {value:R} within {allowed:G3}, off by {computed - value:G3}"));
        }
    }

    private static Dictionary<string, (double, double, bool)> Read()
    {
        var rows = new Dictionary<string, (double, double, bool)>();
        foreach (var line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", "Data", "numerics-check-values.csv")).Skip(2))
        {
            var cells = Split(line);
            var tolerance = cells[5].Split(' ');
            rows.Add(cells[0], (double.Parse(cells[3], CultureInfo.InvariantCulture),
                double.Parse(tolerance[0], CultureInfo.InvariantCulture), tolerance.Length > 1));
        }

        return rows;
    }

    private static List<string> Split(string line)
    {
        var cells = new List<string>();
        var (quoted, from) = (false, 0);
        for (var i = 0; i <= line.Length; i++)
        {
            if (i < line.Length && line[i] == '"') quoted = !quoted;
            if (i < line.Length && (line[i] != ',' || quoted)) continue;
            cells.Add(line[from..i].Trim('"'));
            from = i + 1;
        }

        return cells;
    }
}
