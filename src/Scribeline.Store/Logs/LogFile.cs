using System.Text;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logs;

/// <summary>
/// Reads the table an altimeter wrote, whoever made it: columns in any order, known by plain words of their names, or by what the builder says of
/// them. Never throws for what a file holds; what is wrong is told all at once, what is unclear is asked for and never guessed silently.
/// </summary>
public static class LogFile
{
    /// <summary>Largest file, bytes.</summary>
    public const int Largest = 50_000_000;

    private const double MostMissing = 0.2, MostRagged = 0.05;

    /// <summary>Reads bytes: UTF-8, UTF-16 with its mark, or else Latin letters.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="columns">What the builder says of columns, each such as <c>pressure = Baro in hPa</c>.</param>
    public static LogReading Read(ReadOnlySpan<byte> bytes, IEnumerable<string> columns)
    {
        if (bytes.Length > Largest) return Refused([], new("", $"The file is larger than {Largest / 1_000_000} MB.", "Cut it to the flight: from a minute before lift-off to a minute after landing."));
        var text = bytes switch
        {
            [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(bytes[2..]),
            [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(bytes[2..]),
            [0xEF, 0xBB, 0xBF, ..] => Decode(bytes[3..]),
            _ => Decode(bytes),
        };
        return Read(text, columns);
    }

    /// <summary>Reads text.</summary>
    /// <param name="text">The file.</param>
    /// <param name="columns">What the builder says of columns.</param>
    public static LogReading Read(string text, IEnumerable<string> columns)
    {
        List<Problem> problems = [];
        var mapping = LogMapping.Of(columns, problems);

        // Memory that was never written reads as zeros.
        text = text.TrimStart('\uFEFF').Replace("\0", "", StringComparison.Ordinal).ReplaceLineEndings("\n");
        if (string.IsNullOrWhiteSpace(text)) return Refused(problems, new("", "The file is empty.", "Download the flight from the altimeter again."));
        if (LogLayout.Of(text) is not { } layout)
            return Refused(problems, new("", "No line of it holds two values.", "Export the flight as a table: a line for each moment, its values parted by commas, semicolons or tabs.", 1));
        if (layout.Split)
            return Refused(problems, new("", "Commas part the columns and are decimal signs too: which is which cannot be told.", "Export it again with semicolons between the columns, or with decimal points.", layout.FirstLine));

        var all = Columns(text, layout, mapping, problems);
        if (problems.Count > 0) return new(null, all.ToValueList(), problems.ToValueList(), []);
        var used = all.Where(c => c.Meaning != LogMeaning.Other).ToArray();
        LogTable table = new(layout, used);
        table.Read(text, problems);
        List<string> notes = [];
        Judge(table, notes, problems);
        var record = problems.Count > 0 ? null : new LogRecord(table, used, notes, problems).Make();
        return new(problems.Count > 0 ? null : record, all.ToValueList(), problems.ToValueList(), notes.ToValueList());
    }

    private static List<LogColumn> Columns(string text, LogLayout layout, LogMapping mapping, List<Problem> problems)
    {
        var names = Enumerable.Range(0, layout.Columns).Select(i => i < layout.Names.Length && layout.Names[i].Length > 0 ? layout.Names[i] : $"column {i + 1}").ToArray();
        foreach (var stranger in mapping.Strangers(names))
            problems.Add(new("", $"There is no column '{stranger}'.", $"Its columns are: {string.Join(", ", names)}."));
        List<LogColumn> columns = [];
        for (var i = 0; i < names.Length; i++)
        {
            var (meaning, unit) = LogWords.Of(names[i]);
            if (unit.Length == 0 && i < layout.Units.Length && LogUnits.Factor(meaning, layout.Units[i]) is not null) unit = LogUnits.Plain(layout.Units[i]);
            if (mapping.For(names[i], i) is { } said) (meaning, unit) = (said.Meaning, said.Unit.Length > 0 ? said.Unit : LogUnits.Factor(said.Meaning, unit) is not null ? unit : "");
            columns.Add(new(i, names[i], meaning, unit));
        }

        // What the builder says of one column settles it against the others that might hold the same.
        foreach (var (_, meaning, _) in mapping.Columns.Where(c => c.Meaning is not (LogMeaning.Fired or LogMeaning.Other)))
        {
            for (var i = 0; i < columns.Count; i++)
            {
                if (columns[i].Meaning == meaning && mapping.For(columns[i].Name, i) is null) columns[i] = columns[i] with { Meaning = LogMeaning.Other };
            }
        }

        // With pressure there, what the altimeter made of it is not needed.
        if (columns.Exists(c => c.Meaning == LogMeaning.Pressure)) columns = [.. columns.Select(c => c.Meaning == LogMeaning.Height ? c with { Meaning = LogMeaning.Other } : c)];
        Ask(columns, layout, problems);
        return problems.Count > 0 ? columns : Units(text, layout, columns, problems);
    }

    private static void Ask(List<LogColumn> columns, LogLayout layout, List<Problem> problems)
    {
        foreach (var twice in columns.Where(c => c.Meaning is not (LogMeaning.Fired or LogMeaning.Other)).GroupBy(c => c.Meaning).Where(g => g.Count() > 1))
        {
            var word = Word(twice.Key);
            problems.Add(new("", $"{twice.Count()} columns may hold the {word}: {string.Join(", ", twice.Select(c => c.Name))}.", $"Say which: {word} = {twice.First().Name}", Line(layout)));
        }

        var names = string.Join(", ", columns.Select(c => c.Name));
        if (!columns.Exists(c => c.Meaning == LogMeaning.Time))
            problems.Add(new("", $"No column is known to hold the time. Its columns are: {names}.", $"Say which: time = {Spare(columns, first: true)} in s", Line(layout)));
        if (!columns.Exists(c => c.Meaning is LogMeaning.Pressure or LogMeaning.Height))
            problems.Add(new("", $"No column is known to hold pressure or height. Its columns are: {names}.", $"Say which: pressure = {Spare(columns, first: false)} in Pa, or: height = {Spare(columns, first: false)} in m", Line(layout)));
    }

    // A column that holds nothing else yet, to show how to type it.
    private static string Spare(List<LogColumn> columns, bool first)
    {
        var free = columns.Where(c => c.Meaning == LogMeaning.Other).DefaultIfEmpty(columns[0]).ToArray();
        return first ? free[0].Name : free[^1].Name;
    }

    private static int Line(LogLayout layout) => Math.Max(1, layout.FirstLine - (layout.Names.Length > 0 ? 1 : 0));

    // Units that no word names, from the first rows; what stays unclear is asked for.
    private static List<LogColumn> Units(string text, LogLayout layout, List<LogColumn> columns, List<Problem> problems)
    {
        var open = columns.Where(c => c.Unit.Length == 0 && c.Meaning is not (LogMeaning.Fired or LogMeaning.Other)).ToArray();
        if (open.Length == 0) return columns;
        LogTable head = new(layout, open);
        head.Read(First(text, layout.FirstLine + 300), []);
        foreach (var column in open)
        {
            var values = head[Array.IndexOf(open, column)].Where(double.IsFinite).ToArray();
            if (LogUnits.Guess(column.Meaning, values) is { } unit) columns[column.Index] = column with { Unit = unit, Guessed = true };
            else problems.Add(new("", $"The unit of column '{column.Name}' is not told.", $"Say it: {Word(column.Meaning)} = {column.Name} in {LogUnits.Words(column.Meaning).Split(',', ' ')[0]} ({LogUnits.Words(column.Meaning)})", Line(layout)));
        }

        return columns;
    }

    private static string First(string text, int lines)
    {
        var at = -1;
        for (var i = 0; i < lines; i++)
        {
            at = text.IndexOf('\n', at + 1);
            if (at < 0) return text;
        }

        return text[..(at + 1)];
    }

    private static void Judge(LogTable table, List<string> notes, List<Problem> problems)
    {
        var whole = table.Count + table.Ragged;
        if (table.Count < 20) problems.Add(new("", $"It holds {table.Count} lines of values.", "A flight needs hundreds: check which file this is."));
        if (table.Ragged > MostRagged * whole) problems.Add(new("", $"{table.Ragged} of {whole} lines have more or fewer values than the first.", "Export it again; a text among the values may hold the sign that parts them.", table.FirstRagged));
        else if (table.Ragged > 0) notes.Add($"{table.Ragged} {(table.Ragged == 1 ? "line" : "lines")} with more or fewer values than the others left out, the first is line {table.FirstRagged}.");
        if (table.CutOff) notes.Add("The last line is cut off and left out.");
        if (table.NamesAgain.Count > 0) problems.Add(new("", "The names of the columns stand again: another flight begins there.", "Cut the file there and add each flight by itself.", table.NamesAgain[0]));
        if (table.Unread.Count > 0) notes.Add($"{table.Unread.Count} {(table.Unread.Count == 1 ? "value" : "values")} that are no numbers taken as missing, the first is '{(table.Unread.Text.Length > 20 ? table.Unread.Text[..20] + "…" : table.Unread.Text)}' in line {table.Unread.Line}.");
    }

    internal static bool MostlyThere(IReadOnlyList<double> values) => values.Count(double.IsNaN) <= MostMissing * values.Count;

    internal static string Word(LogMeaning meaning) => meaning.ToString().ToLowerInvariant();

    private static string Decode(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }

    private static LogReading Refused(List<Problem> problems, Problem problem) => new(null, [], [.. problems, problem], []);
}
