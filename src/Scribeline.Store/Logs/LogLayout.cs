using System.Text.RegularExpressions;
using CsvHelper;

namespace Scribeline.Store.Logs;

/// <summary>How a file is laid out: what parts its columns, its decimal sign, its names, the first line of values.</summary>
/// <param name="Separator">Between columns.</param>
/// <param name="Comma">Whether a comma is the decimal sign.</param>
/// <param name="Names">Of the columns; empty where none are given.</param>
/// <param name="Units">Of the columns, from a line of their own; empty where none are given.</param>
/// <param name="FirstLine">Line of the first values, from 1.</param>
/// <param name="Columns">Number of columns.</param>
internal sealed partial record LogLayout(char Separator, bool Comma, string[] Names, string[] Units, int FirstLine, int Columns)
{
    private const int Looked = 50, LookedFar = 400;

    /// <summary>Whether every line has twice as many values as names: its commas part columns and decimals alike.</summary>
    internal bool Split { get; private init; }

    /// <summary>Finds out; null where no line holds two values.</summary>
    internal static LogLayout? Of(string text)
    {
        var lines = Head(text, LookedFar).ToArray();
        if (lines.Length == 0) return null;
        var separator = Parting([.. lines.Take(Looked).Select(l => l.Text)]);
        var rows = lines.Select(l => (l.Line, Cells: Cells(l.Text, separator))).ToArray();
        var comma = separator != ',' && DecimalComma(rows.Select(r => r.Cells));
        var first = Array.FindIndex(rows, r => r.Cells.Length > 1 && r.Cells.Count(c => LogNumber.Is(c, comma)) is var numbers && numbers > 0 && 2 * numbers >= r.Cells.Count(c => c.Trim().Length > 0));
        if (first < 0) return null;
        var width = rows[first].Cells.Length;
        var words = rows.Take(first).Where(r => Math.Abs(r.Cells.Length - width) <= 1 && r.Cells.Length > 1).Select(r => r.Cells.Select(c => c.Trim()).ToArray()).ToArray();

        // A last line of nothing but short words under a line of names holds units.
        var units = words.Length > 1 && words[^1].All(c => c.Length <= 8) && words[^1].Any(c => LogUnits.Known(c)) ? words[^1] : [];
        var names = words.Length == 0 ? [] : units.Length > 0 ? words[^2] : words[^1];
        var split = separator == ',' && names.Length == 0 && rows.Take(first).Any(r => r.Cells.Length > 1 && 2 * r.Cells.Length == width);
        return new(separator, comma, names, units, rows[first].Line, width) { Split = split };
    }

    /// <summary>Whether a line that begins so is a remark.</summary>
    internal static bool IsRemark(string field) => field.StartsWith('#') || field.StartsWith("//", StringComparison.Ordinal) || field.StartsWith('%');

    /// <summary>Options for reading its rows.</summary>
    internal CsvReaderOptions Reading => Options(Separator);

    private static CsvReaderOptions Options(char separator) => new()
    {
        Separator = separator,
        HasHeader = false,
        CommentPrefix = '#',
        AllowLineBreaksInQuotes = false,
        TrackLineNumbers = true,
        MalformedData = CsvMalformedDataHandling.Recover,
        FieldCountMismatch = CsvFieldCountHandling.Allow,
    };

    private static IEnumerable<(int Line, string Text)> Head(string text, int most)
    {
        var (line, found, at) = (0, 0, 0);
        while (at < text.Length && found < most)
        {
            line++;
            var end = text.IndexOf('\n', at);
            var whole = text[at..(end < 0 ? text.Length : end)].Trim();
            at = end < 0 ? text.Length : end + 1;
            if (whole.Length == 0 || IsRemark(whole)) continue;
            found++;
            yield return (line, whole);
        }
    }

    private static string[] Cells(string line, char separator)
    {
        if (separator == ' ') return line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        using var reader = CsvReader.FromText(line, Options(separator));
        return reader.Read() ? [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)] : [];
    }

    // The sign that stands equally often on most lines; a semicolon first, since files with decimal commas have commas too.
    private static char Parting(string[] lines)
    {
        var best = (Sign: ',', Lines: 0);
        foreach (var sign in (ReadOnlySpan<char>)[';', '\t', '|', ',', ' '])
        {
            var counts = lines.Select(l => Outside(l, sign)).Where(n => n > 0).GroupBy(n => n).OrderByDescending(g => g.Count()).FirstOrDefault();
            if (counts is not null && counts.Count() > best.Lines) best = (sign, counts.Count());
        }

        return best.Sign;
    }

    private static int Outside(string line, char sign)
    {
        var (quoted, count, before) = (false, 0, '\0');
        foreach (var letter in line)
        {
            if (letter == '"') quoted = !quoted;
            else if (letter == sign && !quoted && (sign != ' ' || before != ' ')) count++;
            before = letter;
        }

        return count;
    }

    private static bool DecimalComma(IEnumerable<string[]> rows)
    {
        var broken = rows.SelectMany(r => r).Select(c => c.Trim()).Where(c => Broken().IsMatch(c)).Take(2000).ToArray();
        return broken.Length > 0 && broken.Count(c => WithComma().IsMatch(c)) >= 0.9 * broken.Length;
    }

    [GeneratedRegex(@"^[-+\u2212]?[\d .\u00A0\u202F]*[.,]\d+$")]
    private static partial Regex Broken();

    [GeneratedRegex(@"^[-+\u2212]?\d{1,3}([. \u00A0\u202F]?\d{3})*,\d+$|^[-+\u2212]?\d+,\d+$")]
    private static partial Regex WithComma();
}
