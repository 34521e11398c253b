using System.Globalization;

namespace Scribeline.Engine.Quantities;

/// <summary>Reads the numbers of the workshop: decimals, fractions and mixed numbers.</summary>
internal ref struct NumberReader(string text, bool onRule)
{
    /// <summary>Next letter to read.</summary>
    internal int Position { get; set; }

    /// <summary>What went wrong; null if nothing did.</summary>
    internal TextProblem? Problem { get; private set; }

    private readonly char Here => Position < text.Length ? text[Position] : '\0';

    private readonly char Next => Position + 1 < text.Length ? text[Position + 1] : '\0';

    internal static bool Starts(char letter) => char.IsAsciiDigit(letter) || letter == '.' || Letters.Fraction(letter) is not null;

    internal void SkipSpaces()
    {
        while (Here == ' ') Position++;
    }

    /// <summary>Reads a number without sign; null with a <see cref="Problem"/> if there is none.</summary>
    internal double? Read()
    {
        var start = Position;
        if (Letters.Fraction(Here) is { } single)
        {
            Position++;
            return single;
        }

        if (!Starts(Here)) return Fail(start, "A number is missing here.", "Begin with digits, such as 3/16 or 12.5.");
        var digits = Digits();
        if (digits.Length > 0 && Here != '.' && Here is not ('e' or 'E')) return AfterWhole(start, double.Parse(digits, CultureInfo.InvariantCulture));
        if (Here == '.')
        {
            Position++;
            if (Digits().Length == 0 && digits.Length == 0) return Fail(start, "A point needs digits.", "");
        }

        Exponent();
        if (Here == ',') return Comma(start);
        if (Here is '.' or '/') return Fail(Position, $"'{Here}' cannot follow the decimal {text[start..Position]}.", "");
        return double.Parse(text.AsSpan(start, Position - start), NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    private string Digits()
    {
        var start = Position;
        while (char.IsAsciiDigit(Here)) Position++;
        return text[start..Position];
    }

    private void Exponent()
    {
        if (Here is not ('e' or 'E')) return;
        var sign = Next is '+' or '-' ? 1 : 0;
        if (Position + 1 + sign >= text.Length || !char.IsAsciiDigit(text[Position + 1 + sign])) return;
        Position += 1 + sign;
        Digits();
    }

    // What may follow a whole number: a fraction bar, a joined fraction, or nothing.
    private double? AfterWhole(int start, double whole)
    {
        if (Here == ',') return Comma(start);
        if (Here == '/' && char.IsAsciiDigit(Next)) return Below(start, whole, Alone: true);
        var mark = Position;
        if (Here is '-' or ' ')
        {
            var joined = Here == '-';
            Position++;
            SkipSpaces();
            if (Letters.Fraction(Here) is { } sign)
            {
                Position++;
                return whole + sign;
            }

            var above = Digits();
            if (above.Length > 0 && Here == '/' && char.IsAsciiDigit(Next))
                return Below(mark + 1, double.Parse(above, CultureInfo.InvariantCulture), Alone: false) is { } part ? whole + part : null;
            if (joined && above.Length > 0)
                return Fail(mark, $"{text[start..Position]} is no number; it may be a screw thread.", "Mixed numbers are written 1-1/4.");
            Position = mark;
        }
        else if (Letters.Fraction(Here) is { } sign)
        {
            Position++;
            return whole + sign;
        }

        return whole;
    }

    private double? Below(int start, double above, bool Alone)
    {
        Position++;
        var below = double.Parse(Digits(), CultureInfo.InvariantCulture);
        var written = text[start..Position].Trim();
        if (below is not (> 0 and <= 1000)) return Fail(start, $"{written} is no fraction.", "");
        if (onRule && below is not (2 or 4 or 8 or 16 or 32 or 64))
            return Fail(start, $"{written} is not on a rule.", "Fractions of a length are halves, quarters, eighths, 16ths, 32nds or 64ths.");
        if (!Alone && above >= below) return Fail(start, $"{written} is not less than one.", "Write the whole number first, such as 1-1/4.");
        if (Here == '-' && char.IsAsciiDigit(Next)) return Fail(start, $"{text[start..]} is a screw thread, not a number.", "Mixed numbers are written 1-1/4.");
        return Here is '/' or '.' ? Fail(Position, $"'{Here}' cannot follow a fraction.", "") : above / below;
    }

    private double? Comma(int start)
    {
        var comma = Position;
        Position++;
        var after = Digits();
        var point = $"{text[..comma].Trim()}.{text[(comma + 1)..].Trim()}";
        return Fail(
            comma,
            "A comma in a number can mean two things.",
            after.Length == 3 && comma > start
                ? $"Write {text[..comma].Trim()}{text[(comma + 1)..].Trim()} without it, or {point} if it is the decimal point."
                : $"Write {point} with a point.");
    }

    private double? Fail(int position, string message, string suggestion)
    {
        Problem ??= new(position, message, suggestion);
        return null;
    }
}
