using System.Globalization;

namespace Scribeline.Engine.Tables;

/// <summary>Reads the tables carried in the program: CSV with one header line, whose last column is words and may hold commas in quotes.</summary>
internal static class EmbeddedTable
{
    /// <summary>The rows, without header, empty lines and remarks: lines that begin with # and a space, since #4 is a size.</summary>
    /// <param name="name">File in Tables/ without ending; folders are separated by points.</param>
    /// <param name="columns">Number of cells of a row.</param>
    /// <exception cref="InvalidOperationException">There is no such table, or a row has another number of cells: a fault of the program.</exception>
    public static IEnumerable<string[]> Rows(string name, int columns)
    {
        using var stream = typeof(EmbeddedTable).Assembly.GetManifestResourceStream($"Scribeline.Engine.Tables.{name}.csv")
            ?? throw new InvalidOperationException($"No embedded table {name}.");
        using var reader = new StreamReader(stream);
        var header = true;
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line.StartsWith("# ", StringComparison.Ordinal)) continue;
            var cells = line.Split(',', columns);
            if (cells.Length != columns) throw new InvalidOperationException($"Table {name}: {columns} cells expected in \"{line}\".");
            cells[^1] = cells[^1].Trim('"');
            if (!header) yield return cells;
            header = false;
        }
    }

    /// <summary>A cell as a number.</summary>
    public static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    /// <summary>A cell as a number; null for an empty one.</summary>
    public static double? NumberOrNull(string cell) => cell.Length == 0 ? null : Number(cell);
}
