using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logs;

/// <summary>Makes a record of a table: times in order, SI, what cannot be true left out.</summary>
/// <param name="table">The rows.</param>
/// <param name="used">Its columns.</param>
/// <param name="notes">Takes what was left out or mended.</param>
/// <param name="problems">Takes what must be mended first.</param>
internal sealed class LogRecord(LogTable table, LogColumn[] used, List<string> notes, List<Problem> problems)
{
    private const double LeastPressure = 1000, MostPressure = 110_000;

    /// <summary>The record; not to be used with problems.</summary>
    internal FlightRecord Make()
    {
        foreach (var column in used.Where(c => c.Guessed))
            notes.Add($"Column '{column.Name}' has no unit and is taken to be in {Shown(column.Unit)}, by its values.");
        foreach (var (column, i) in used.Select((c, i) => (c, i)).Where(c => c.c.Meaning is LogMeaning.Time or LogMeaning.Pressure or LogMeaning.Height))
        {
            if (!LogFile.MostlyThere(table[i])) problems.Add(new("", $"More than a fifth of column '{column.Name}' is missing.", "Export it again, or name another column."));
        }

        var (rows, times) = Ordered();
        if (problems.Count > 0) return new([], [], [], []);
        var groups = Groups(rows, times);
        var pressure = Column(LogMeaning.Pressure, groups);
        var acceleration = Column(LogMeaning.Acceleration, groups);
        Clean(pressure, [.. groups.Select(g => g.Time)], acceleration);
        if (acceleration.Count > 0 && !LogFile.MostlyThere(acceleration))
        {
            notes.Add("More than a fifth of the acceleration is missing: it is not used.");
            acceleration = [];
        }

        return new(groups.Select(g => g.Time).ToValueList(), pressure.ToValueList(), Column(LogMeaning.Height, groups).ToValueList(), acceleration.ToValueList())
        {
            Voltage = Column(LogMeaning.Voltage, groups).ToValueList(),
            Firings = used.Select((c, i) => (Column: c, Place: i)).Where(c => c.Column.Meaning == LogMeaning.Fired).SelectMany(c => Fired(c.Column, c.Place, groups)).ToValueList(),
        };
    }

    // Rising times: a short step back is a line out of place, a long one a counter that began anew or another flight.
    private (List<int> Rows, List<double> Times) Ordered()
    {
        var column = Array.FindIndex(used, c => c.Meaning == LogMeaning.Time);
        var factor = LogUnits.Factor(LogMeaning.Time, used[column].Unit) ?? 1;
        var raw = table[column];
        var step = Middle(raw.Zip(raw.Skip(1), (a, b) => b - a).Where(d => d > 0));
        List<int> rows = [];
        List<double> times = [];
        var (wrapped, dropped, missing) = (0.0, 0, 0);
        for (var i = 0; i < raw.Count; i++)
        {
            if (double.IsNaN(raw[i]))
            {
                missing++;
                continue;
            }

            var time = raw[i] + wrapped;
            if (times.Count > 0 && time < times[^1])
            {
                if (times[^1] - time <= 5 * step)
                {
                    dropped++;
                    continue;
                }

                if (Wrap(times[^1], time, step) is { } by)
                {
                    wrapped += by;
                    time += by;
                    notes.Add($"The counter of time began anew in line {table.Lines[i]} and is carried on.");
                }
                else
                {
                    problems.Add(new("", $"The time goes back from {times[^1] * factor:0.###} s to {time * factor:0.###} s: another flight begins there.", "Cut the file there and add each flight by itself.", table.Lines[i]));
                    break;
                }
            }

            rows.Add(i);
            times.Add(time);
        }

        if (dropped > 0) notes.Add($"{dropped} {(dropped == 1 ? "line" : "lines")} whose time goes back a little left out.");
        if (missing > 0) notes.Add($"{missing} {(missing == 1 ? "line" : "lines")} without a time left out.");
        if (times.Count > 0 && (times[^1] - times[0]) * factor is var length && length is < 5 or > 40_000)
            problems.Add(new("", $"It lasts {length:0.###} s.", $"Say the unit of its time: time = {used[column].Name} in s ({LogUnits.Words(LogMeaning.Time)})"));
        return (rows, [.. times.Select(t => t * factor)]);
    }

    private static double? Wrap(double before, double after, double step)
    {
        foreach (var by in (ReadOnlySpan<double>)[65_536, 4_294_967_296])
        {
            if (after + by > before && after + by - before <= 10 * step) return by;
        }

        return null;
    }

    // Lines with one time are one moment.
    private List<(double Time, int First, int Count)> Groups(List<int> rows, List<double> times)
    {
        List<(double Time, int First, int Count)> groups = [];
        var same = 0;
        for (var i = 0; i < rows.Count; i++)
        {
            if (groups.Count > 0 && groups[^1].Time == times[i])
            {
                groups[^1] = groups[^1] with { Count = groups[^1].Count + 1 };
                same++;
            }
            else
            {
                groups.Add((times[i], rows[i], 1));
            }
        }

        if (same > 0) notes.Add($"{same} {(same == 1 ? "line has" : "lines have")} the time of the line before: the mean of both counts.");
        return groups;
    }

    private List<double> Column(LogMeaning meaning, List<(double Time, int First, int Count)> groups)
    {
        var place = Array.FindIndex(used, c => c.Meaning == meaning);
        if (place < 0) return [];
        var factor = LogUnits.Factor(meaning, used[place].Unit) ?? 1;
        var values = table[place];
        return [.. groups.Select(g => factor * Mean(values, g.First, g.Count))];
    }

    private static double Mean(List<double> values, int first, int count)
    {
        if (count == 1) return values[first];
        var there = Enumerable.Range(first, count).Select(i => values[i]).Where(double.IsFinite).ToArray();
        return there.Length == 0 ? double.NaN : there.Average();
    }

    private void Clean(List<double> pressure, double[] times, List<double> acceleration)
    {
        var beyond = 0;
        for (var i = 0; i < pressure.Count; i++)
        {
            if (!(pressure[i] < LeastPressure) && !(pressure[i] > MostPressure)) continue;
            pressure[i] = double.NaN;
            beyond++;
        }

        if (beyond > 0) notes.Add($"{beyond} pressures outside 1 to 110 kPa left out.");
        if (acceleration.Count == 0) return;

        // A sensor that says the same to the last bit for a second while the rocket is pushed is stuck.
        var stuck = 0;
        for (int i = 1, start = 0; i <= pressure.Count; i++)
        {
            if (i < pressure.Count && pressure[i] == pressure[start]) continue;
            var moved = Enumerable.Range(start, i - start).Select(k => acceleration[k]).Where(double.IsFinite).ToArray();
            if (times[i - 1] - times[start] > 1 && moved.Length > 0 && moved.Max() - moved.Min() > 20)
            {
                for (var k = start + 1; k < i; k++) pressure[k] = double.NaN;
                stuck += i - start - 1;
            }

            start = i;
        }

        if (stuck > 0) notes.Add($"{stuck} pressures that do not change while it moves left out: the sensor was stuck.");
    }

    // Numbers rise from what they were at first; words change from what they were at first.
    private IEnumerable<RecordedFiring> Fired(LogColumn column, int place, List<(double Time, int First, int Count)> groups)
    {
        var values = table[place];
        var first = values.FirstOrDefault(double.IsFinite);
        var most = values.Where(double.IsFinite).DefaultIfEmpty(first).Max();
        if (most <= first) yield break;
        foreach (var group in groups)
        {
            if (!(values[group.First] > first + ((most - first) / 2))) continue;
            yield return new(column.Name.Replace('_', ' '), group.Time);
            yield break;
        }
    }

    private static string Shown(string unit) => unit switch { "pa" => "Pa", "hpa" => "hPa", "kpa" => "kPa", "v" => "V", "mv" => "mV", "m/s2" => "m/s²", _ => unit };

    private static double Middle(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        return sorted.Length == 0 ? 0 : sorted[sorted.Length / 2];
    }
}
