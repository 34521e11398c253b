using System.Globalization;

namespace Scribeline.Engine.Quantities;

/// <summary>Brings the many signs that look alike to one, letter by letter, so that positions stay true.</summary>
internal static class Letters
{
    internal static string Plain(string text) => string.Create(text.Length, text, static (span, source) =>
    {
        for (var i = 0; i < span.Length; i++) span[i] = Plain(source[i]);
    });

    internal static char Plain(char letter) => letter switch
    {
        '\u2212' or '\u2013' or '\u2010' or '\u2011' or '\uFE63' => '-',
        '\u03BC' => 'µ',
        '\u00BA' or '\u02DA' => '°',
        '\u2033' or '\u201D' or '\u201C' => '"',
        '\u2032' or '\u2019' or '\u2018' => '\'',
        '\u00D7' => 'x',
        '\u22C5' or '\u2219' => '·',
        '\u2126' => 'Ω',
        '\u2044' or '\u2215' => '/',
        '²' => '2',
        '³' => '3',
        '\t' or '\u00A0' or '\u2009' or '\u202F' or '\u2007' => ' ',
        _ => letter,
    };

    /// <summary>Value of a one-letter fraction such as ½; null for other letters.</summary>
    internal static double? Fraction(char letter) =>
        letter is >= '\u00BC' and <= '\u00BE' or >= '\u2150' and <= '\u215E' ? CharUnicodeInfo.GetNumericValue(letter) : null;
}
