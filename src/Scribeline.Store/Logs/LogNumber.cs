using System.Globalization;

namespace Scribeline.Store.Logs;

/// <summary>Numbers as altimeters and spreadsheets write them, whatever the language of the machine.</summary>
internal static class LogNumber
{
    /// <summary>The value of a field; NaN where it is none.</summary>
    /// <param name="field">As written.</param>
    /// <param name="comma">Whether a comma is the decimal sign.</param>
    internal static double Of(string field, bool comma)
    {
        Span<char> text = stackalloc char[40];
        var length = 0;
        foreach (var letter in field.AsSpan().Trim())
        {
            // Groups of digits may stand apart by spaces of any width or an apostrophe, and by the sign that is not decimal.
            if (letter is ' ' or '\u00A0' or '\u2009' or '\u202F' or '\'' || letter == (comma ? '.' : ',')) continue;
            if (length == text.Length) return double.NaN;
            text[length++] = letter switch { '\u2212' => '-', ',' => '.', _ => letter };
        }

        const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return length > 0 && double.TryParse(text[..length], Style, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : double.NaN;
    }

    /// <summary>A time of day or of flight such as 1:02:03.5 or 02:03,5, in s; NaN where it is none.</summary>
    internal static double Clock(string field)
    {
        var parts = field.Trim().Split(':');
        if (parts.Length is < 2 or > 3) return double.NaN;
        var seconds = 0.0;
        foreach (var part in parts)
        {
            var value = Of(part, comma: part.Contains(',', StringComparison.Ordinal));
            if (!(value >= 0)) return double.NaN;
            seconds = (60 * seconds) + value;
        }

        return seconds;
    }

    /// <summary>Whether a field is a number or a time of day.</summary>
    internal static bool Is(string field, bool comma) => !double.IsNaN(Of(field, comma)) || !double.IsNaN(Clock(field));
}
