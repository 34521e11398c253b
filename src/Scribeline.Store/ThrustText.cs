using System.Globalization;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Store;

/// <summary>
/// Changes single points of a thrust table and leaves every other letter as it is. The table is a file of two columns, or a list of
/// [time, thrust] in a motor. In columns only numbers stand: what is typed there in another unit is turned into seconds and newtons.
/// </summary>
public static class ThrustText
{
    /// <summary>The points as they stand in the text.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="at">Path of the list, such as <c>thrust</c>; null for a file of two columns.</param>
    public static ValueList<ThrustRow> Rows(string text, string? at)
    {
        if (at is null) return Points(text).Select(p => new ThrustRow(p.Cells[0], p.Cells.Length > 1 ? p.Cells[1] : "", p.Number)).ToValueList();
        return YamlTree.Read(text, []) is { } root && YamlPath.Find(root, at).Node is YamlList list
            ? list.Items.OfType<YamlList>().Where(i => i.Items.Count == 2).Select(i => new ThrustRow(Plain(i.Items[0]), Plain(i.Items[1]), (int)i.Start.Line)).ToValueList()
            : [];
    }

    /// <summary>Replaces one value of a point.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="at">Path of the list; null for two columns.</param>
    /// <param name="row">Number of the point, from 0.</param>
    /// <param name="ofThrust">Whether its thrust is replaced, or its time.</param>
    /// <param name="typed">As typed.</param>
    public static TextChange Replace(string text, string? at, int row, bool ofThrust, string typed)
    {
        var (value, problem) = Value(typed, ofThrust, alone: at is null);
        if (value is null) return new(text, problem);
        if (at is not null) return DesignText.Replace(text, string.Create(CultureInfo.InvariantCulture, $"{at}[{row}][{(ofThrust ? 1 : 0)}]"), value);
        if (Points(text).ElementAtOrDefault(row) is not { Cells.Length: 2 } point) return Lost(text);
        var cell = point.Cells[ofThrust ? 1 : 0];
        if (cell.Length == 0) return Lost(text);
        var from = ofThrust ? text.LastIndexOf(cell, point.End - 1, point.End - point.Start, StringComparison.Ordinal) : text.IndexOf(cell, point.Start, StringComparison.Ordinal);
        return new(string.Concat(text.AsSpan(0, from), value, text.AsSpan(from + cell.Length)), null);
    }

    /// <summary>Adds a point.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="at">Path of the list; null for two columns.</param>
    /// <param name="row">Before which point it goes, from 0; the number of points for the end.</param>
    /// <param name="time">As typed.</param>
    /// <param name="thrust">As typed.</param>
    public static TextChange Insert(string text, string? at, int row, string time, string thrust)
    {
        var (first, wrong) = Value(time, ofThrust: false, alone: at is null);
        var (second, other) = Value(thrust, ofThrust: true, alone: at is null);
        if (first is null || second is null) return new(text, wrong ?? other);
        if (at is not null) return DesignText.Insert(text, at, $"[{first}, {second}]", row);
        var points = Points(text).ToList();
        var line = $"{first}{Between(points)}{second}{(text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n")}";
        if (row < points.Count) return new(text.Insert(points[row].Start, line), null);
        var end = points.Count == 0 ? text.Length : Math.Min(text.Length, points[^1].End + 1);
        return new(text.Insert(end, end > 0 && text[end - 1] != '\n' ? $"\n{line}" : line), null);
    }

    /// <summary>Takes a point out.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="at">Path of the list; null for two columns.</param>
    /// <param name="row">Number of the point, from 0.</param>
    public static TextChange TakeOut(string text, string? at, int row)
    {
        if (at is not null) return DesignText.TakeOut(text, string.Create(CultureInfo.InvariantCulture, $"{at}[{row}]"));
        return Points(text).ElementAtOrDefault(row) is { } point ? new(text.Remove(point.Start, Math.Min(text.Length, point.End + 1) - point.Start), null) : Lost(text);
    }

    /// <summary>Puts other points in place of all; comments and names above them stay.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="at">Path of the list; null for two columns.</param>
    /// <param name="pasted">Two columns, seconds and newtons, as <see cref="ThrustCsv"/> reads them.</param>
    /// <param name="problems">Takes what cannot be read in them, with their lines.</param>
    public static TextChange Become(string text, string? at, string pasted, ICollection<Problem> problems)
    {
        if (ThrustCsv.Read(pasted, "motor.thrust", problems) is not { } table) return new(text, problems.LastOrDefault());
        var rows = table.Points.Select(p => (Time: MeasureText.Decimal(p.Time.Si), Thrust: MeasureText.Decimal(p.Thrust.Si)));
        if (at is not null) return DesignText.SwapList(text, at, $"[{string.Join(", ", rows.Select(r => $"[{r.Time} s, {r.Thrust} N]"))}]");
        var old = Points(text).ToList();
        var lines = string.Concat(rows.Select(r => $"{r.Time}{Between(old)}{r.Thrust}\n"));
        if (old.Count == 0) return new(text.Length > 0 && text[^1] != '\n' ? $"{text}\n{lines}" : text + lines, null);

        // From the last: what stands before a line keeps its place.
        var bare = old.AsEnumerable().Reverse().Aggregate(text, (left, point) => left.Remove(point.Start, Math.Min(left.Length, point.End + 1) - point.Start));
        return new(bare.Insert(old[0].Start, lines), null);
    }

    /// <summary>A point midway between one and the next, or a little after the last; as numbers in seconds and newtons.</summary>
    /// <param name="rows">The points.</param>
    /// <param name="row">Number of the point, from 0.</param>
    public static (string Time, string Thrust) Between(ValueList<ThrustRow> rows, int row)
    {
        double Si(string typed, bool ofThrust) => Value(typed, ofThrust, alone: true).Value is { } value ? double.Parse(value, CultureInfo.InvariantCulture) : 0;
        var (time, thrust) = (Si(rows[row].Time, false), Si(rows[row].Thrust, true));
        if (row + 1 == rows.Count) return (MeasureText.Decimal(Math.Round(time + 0.1, 4)), MeasureText.Decimal(thrust));
        return (MeasureText.Decimal(Math.Round((time + Si(rows[row + 1].Time, false)) / 2, 4)), MeasureText.Decimal(Math.Round((thrust + Si(rows[row + 1].Thrust, true)) / 2, 3)));
    }

    private static TextChange Lost(string text) => new(text, new("motor.thrust", "That point is no longer there.", "Look at the table again."));

    // In columns the bare number in seconds or newtons; in a list with its unit.
    private static (string? Value, Problem? Problem) Value(string typed, bool ofThrust, bool alone)
    {
        var unit = ofThrust ? "N" : "s";
        var text = double.TryParse(typed.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? $"{typed.Trim()} {unit}" : typed.Trim();
        var reading = Measure.ReadAs(ofThrust ? Dimension.Of<Force>() : Dimension.Of<Duration>(), text, at: "motor.thrust");
        if (reading.Problem is { } wrong) return (null, new("motor.thrust", wrong.Message, wrong.Suggestion));
        if (reading.Value!.Si < 0) return (null, new("motor.thrust", $"{typed.Trim()} is negative.", "Type 0 or more."));
        if (!alone) return (text, null);
        return (text == $"{typed.Trim()} {unit}" ? typed.Trim() : MeasureText.Decimal(Math.Round(reading.Value.Si, 6)), null);
    }

    private static string Between(IReadOnlyList<Point> points) =>
        points.Count == 0 || points[0].Text.Contains(',', StringComparison.Ordinal) ? "," : points[0].Text.Contains(';', StringComparison.Ordinal) ? ";" : points[0].Text.Contains('\t', StringComparison.Ordinal) ? "\t" : " ";

    private static string Plain(YamlNode node) => node is YamlText text ? text.Value.Trim() : "";

    // Lines that hold a point: not empty, no comment, no names.
    private static IEnumerable<Point> Points(string text)
    {
        var (start, number) = (0, 0);
        while (start < text.Length)
        {
            number++;
            var newline = text.IndexOf('\n', start);
            var end = newline < 0 ? text.Length : newline;
            var line = text[start..end].Trim();
            if (line.Length > 0 && (char.IsAsciiDigit(line[0]) || line[0] is '-' or '.' or '+')) yield return new(start, end, number, line, ThrustCsv.Cells(line));
            start = end + 1;
        }
    }

    private sealed record Point(int Start, int End, int Number, string Text, string[] Cells);
}
