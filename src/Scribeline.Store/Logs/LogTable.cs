using CsvHelper;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logs;

/// <summary>The rows of a file, the used columns as numbers. One pass, whatever its length.</summary>
/// <param name="layout">Of the file.</param>
/// <param name="used">Columns to read.</param>
internal sealed class LogTable(LogLayout layout, IReadOnlyList<LogColumn> used)
{
    /// <summary>Most rows kept: about an hour at 500 samples a second.</summary>
    internal const int MostRows = 2_000_000;

    private readonly List<double>[] values = [.. used.Select(_ => new List<double>())];

    // Words of channels that fire, by the number that stands for them.
    private readonly List<string> words = [];

    /// <summary>Line of each row, from 1.</summary>
    internal List<int> Lines { get; } = [];

    /// <summary>Rows with more or fewer fields, left out.</summary>
    internal int Ragged { get; private set; }

    /// <summary>First line of those; 0 for none.</summary>
    internal int FirstRagged { get; private set; }

    /// <summary>Whether the last line was not whole and is left out.</summary>
    internal bool CutOff { get; private set; }

    /// <summary>Lines at which names stand again: another flight begins there.</summary>
    internal List<int> NamesAgain { get; } = [];

    /// <summary>Fields of used columns that hold no number, and the first line of those.</summary>
    internal (int Count, int Line, string Text) Unread { get; private set; }

    /// <summary>Values of a used column, by its place among them.</summary>
    internal List<double> this[int column] => values[column];

    /// <summary>Number of rows.</summary>
    internal int Count => Lines.Count;

    /// <summary>Reads.</summary>
    internal void Read(string text, List<Problem> problems)
    {
        using var reader = CsvReader.FromText(text, layout.Reading);
        var last = (Line: 0, Bad: false);
        while (reader.Read())
        {
            var line = (int)reader.LineNumber;
            if (line < layout.FirstLine || reader.FieldCount == 0 || LogLayout.IsRemark(reader.GetString(0))) continue;
            if (reader.FieldCount == 1 && reader.GetString(0).Trim().Length == 0) continue;
            if (Count == MostRows)
            {
                problems.Add(new("", $"The file has more than {MostRows} lines of values.", "Cut it to the flight: from a minute before lift-off to a minute after landing.", line));
                return;
            }

            if (layout.Separator == ' ' ? Spaced(reader, line) : Row(reader, line)) last = (line, false);
            else last = (line, true);
        }

        // A record that ends in the middle of a line lost its supply then; what stands there is no value.
        if (text.Length > 0 && text[^1] != '\n' && last.Bad && Ragged > 0) (Ragged, CutOff) = (Ragged - 1, true);
    }

    private bool Row(CsvReader reader, int line)
    {
        if (reader.FieldCount != layout.Columns && !(reader.FieldCount == layout.Columns + 1 && reader.GetString(layout.Columns).Trim().Length == 0)) return Skip(line);
        return Take(reader.GetString, line);
    }

    private bool Spaced(CsvReader reader, int line)
    {
        var cells = Enumerable.Range(0, reader.FieldCount).Select(reader.GetString).Where(c => c.Length > 0).ToArray();
        return cells.Length == layout.Columns ? Take(i => cells[i], line) : Skip(line);
    }

    private bool Skip(int line)
    {
        if (Ragged++ == 0) FirstRagged = line;
        return false;
    }

    private bool Take(Func<int, string> cell, int line)
    {
        if (layout.Names.Length > 0 && layout.Names.Length == layout.Columns && used.All(u => cell(u.Index).Trim() == layout.Names[u.Index]))
        {
            NamesAgain.Add(line);
            return true;
        }

        Lines.Add(line);
        for (var i = 0; i < used.Count; i++)
        {
            var text = cell(used[i].Index);
            var value = LogNumber.Of(text, layout.Comma);
            if (double.IsNaN(value) && used[i].Meaning == LogMeaning.Time) value = LogNumber.Clock(text);
            if (double.IsNaN(value) && used[i].Meaning == LogMeaning.Fired) value = Number(text.Trim());
            else if (double.IsNaN(value) && text.Trim().Length > 0)
                Unread = Unread.Count == 0 ? (1, line, text.Trim()) : Unread with { Count = Unread.Count + 1 };
            values[i].Add(value);
        }

        return true;
    }

    private double Number(string word)
    {
        var known = words.IndexOf(word);
        if (known >= 0) return known;
        if (words.Count >= 100) return 0;
        words.Add(word);
        return words.Count - 1;
    }
}
