using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logs;

/// <summary>What a builder says of a file's columns, such as <c>pressure = Baro in hPa</c>, where their names do not tell.</summary>
/// <param name="Columns">By column name or number: meaning and unit; an empty unit is read from the name or guessed.</param>
internal sealed record LogMapping(ValueList<(string Column, LogMeaning Meaning, string Unit)> Columns)
{
    /// <summary>Reads what was typed.</summary>
    /// <param name="typed">Each <c>meaning = column</c> or <c>meaning = column in unit</c>.</param>
    /// <param name="problems">Added to.</param>
    internal static LogMapping Of(IEnumerable<string> typed, List<Problem> problems)
    {
        List<(string, LogMeaning, string)> columns = [];
        foreach (var text in typed.Where(t => t.Trim().Length > 0))
        {
            var equals = text.IndexOf('=', StringComparison.Ordinal);
            if (equals < 0 || LogWords.Typed(text[..equals]) is not { } meaning)
            {
                problems.Add(new("", $"'{text.Trim()}' does not say what a column holds.", "Type for example: pressure = Baro in hPa. What can be held: time, pressure, height, acceleration, voltage, fired, other."));
                continue;
            }

            var rest = text[(equals + 1)..].Trim();
            var at = rest.LastIndexOf(" in ", StringComparison.OrdinalIgnoreCase);
            var (column, unit) = at < 0 ? (rest, "") : (rest[..at].Trim(), LogUnits.Plain(rest[(at + 4)..]));
            if (unit.Length > 0 && LogUnits.Factor(meaning, unit) is null)
                problems.Add(new("", $"'{unit}' is no unit of {meaning.ToString().ToLowerInvariant()} here.", $"Type {LogUnits.Words(meaning)}."));
            else
                columns.Add((column, meaning, unit));
        }

        return new(columns.ToValueList());
    }

    /// <summary>What is said of a column; null where nothing is.</summary>
    internal (LogMeaning Meaning, string Unit)? For(string name, int index)
    {
        foreach (var (column, meaning, unit) in Columns)
        {
            if (column.Equals(name, StringComparison.OrdinalIgnoreCase) || column == $"{index + 1}") return (meaning, unit);
        }

        return null;
    }

    /// <summary>Columns that are spoken of and not there.</summary>
    internal IEnumerable<string> Strangers(IReadOnlyList<string> names) =>
        Columns.Select(c => c.Column).Where(c => !names.Contains(c, StringComparer.OrdinalIgnoreCase) && !(int.TryParse(c, out var n) && n >= 1 && n <= names.Count));
}
