using System.Globalization;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Store;

/// <summary>
/// Reads a thrust table: two columns, time in s and thrust in N, parted by a comma, a semicolon, a tab or spaces. One line of names may come
/// first; lines that begin with # and empty lines are skipped.
/// </summary>
public static class ThrustCsv
{
    /// <summary>Most points of a table.</summary>
    public const int MostPoints = 2000;

    private static readonly UnitOfMeasure Second = Dimension.Of<Duration>().Find("s")!, Newton = Dimension.Of<Force>().Find("N")!;

    /// <summary>Reads the text of a table.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="at">Path of the table in the design, such as <c>motor.thrust</c>.</param>
    /// <param name="problems">Takes the problems, with line numbers.</param>
    /// <returns>The table; null if there was a problem.</returns>
    public static ThrustTable? Read(string text, string at, ICollection<Problem> problems)
    {
        var (before, number, named) = (problems.Count, 0, false);
        List<ThrustPointDesign> points = [];
        foreach (var range in text.AsSpan().Split('\n'))
        {
            number++;
            var line = text.AsSpan(range).Trim().ToString();
            if (line.Length == 0 || line[0] == '#') continue;
            if (problems.Count - before >= 20 || points.Count > MostPoints) break;
            var cells = Cells(line);
            if (!named && points.Count == 0 && cells.All(c => c.Length > 0 && !char.IsAsciiDigit(c[0]) && c[0] is not ('-' or '.')))
            {
                named = true;
                Names(cells, number, at, problems);
                continue;
            }

            if (cells.Length != 2)
            {
                problems.Add(new(at, $"{cells.Length} values stand in one line of the thrust table.", "Write time and thrust, such as 0.1, 80.", number));
                continue;
            }

            var time = Number(cells[0], "time", number, at, problems);
            var thrust = Number(cells[1], "thrust", number, at, problems);
            if (time is null || thrust is null) continue;
            if (points.Count > 0 && !(time > points[^1].Time.Value))
                problems.Add(new(at, $"Times must rise: {cells[0]} s follows {MeasureText.Decimal(points[^1].Time.Value)} s.", "Sort the lines by time and keep one for each time.", number));
            var place = string.Create(CultureInfo.InvariantCulture, $"{at}[{points.Count}]");
            points.Add(new()
            {
                At = place,
                Time = Measure.Of<Duration>(time.Value, Second, at: place),
                Thrust = Measure.Of<Force>(thrust.Value, Newton, at: place),
            });
        }

        if (points.Count > MostPoints) problems.Add(new(at, $"The thrust table holds more than {MostPoints} points.", "Thin it out."));
        else if (points.Count < 2 && problems.Count == before) problems.Add(new(at, "A thrust table needs two points or more.", "Write a line for each point, such as 0.1, 80."));
        return problems.Count == before ? new(points.ToValueList()) : null;
    }

    /// <summary>What stands in the columns of a line, whatever parts them.</summary>
    internal static string[] Cells(string line)
    {
        foreach (var between in (ReadOnlySpan<char>)[';', '\t', ','])
        {
            if (line.Contains(between, StringComparison.Ordinal)) return line.Split(between, StringSplitOptions.TrimEntries);
        }

        return line.Split(' ', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
    }

    // Names may carry units; anything but seconds and newtons is refused rather than read wrongly.
    private static void Names(string[] cells, int line, string at, ICollection<Problem> problems)
    {
        if (cells.Length == 4) cells = [cells[0] + cells[1], cells[2] + cells[3]];
        string[] units = [Unit(cells[0]), cells.Length > 1 ? Unit(cells[1]) : ""];
        if (units[0] is not ("" or "s" or "sec" or "seconds"))
            problems.Add(new(at, $"The times are in '{units[0]}'.", "Give them in seconds.", line));
        if (units[1] is not ("" or "n" or "newton" or "newtons"))
            problems.Add(new(at, $"The thrusts are in '{units[1]}'.", "Give them in newtons; 1 lbf is 4.448222 N.", line));
    }

    private static string Unit(string name)
    {
        var open = name.IndexOfAny(['(', '[']);
        return open < 0 ? "" : name[(open + 1)..].TrimEnd(')', ']').Trim().ToLowerInvariant();
    }

    private static double? Number(string cell, string what, int line, string at, ICollection<Problem> problems)
    {
        if (!double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
            problems.Add(new(at, $"The {what} '{cell}' is not a number.", "Write digits with a decimal point.", line));
        else if (value < 0) problems.Add(new(at, $"The {what} {cell} is negative.", "Write 0 or more.", line));
        else if (value > 1e7) problems.Add(new(at, $"The {what} {cell} is larger than any motor's.", "Check the columns.", line));
        else return value;
        return null;
    }
}
