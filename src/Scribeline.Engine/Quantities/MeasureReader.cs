namespace Scribeline.Engine.Quantities;

/// <summary>A value as read: number, unit, tolerance.</summary>
internal sealed record ReadMeasure(double Value, UnitOfMeasure Unit, Tolerance? Tolerance);

/// <summary>Reads one quantity with its unit and tolerance.</summary>
internal ref struct MeasureReader
{
    /// <summary>Greatest SI value believed of anything.</summary>
    private const double Greatest = 1e12;

    private static readonly string[][] Compounds = [["ft", "in"], ["lb", "oz"], ["h", "min", "s"], ["°", "arcmin", "arcsec"]];
    private static readonly string[] PlusMinus = ["±", "+/-", "+-", "-/+"];

    private readonly string text;
    private readonly Dimension dimension;
    private NumberReader numbers;
    private TextProblem? problem;

    internal MeasureReader(string typed, Dimension dimension)
    {
        text = Letters.Plain(typed).TrimEnd();
        this.dimension = dimension;
        numbers = new(text, dimension.Name == "a length");
    }

    private readonly char Here => numbers.Position < text.Length ? text[numbers.Position] : '\0';

    internal Reading<ReadMeasure> Read()
    {
        numbers.SkipSpaces();
        if (Here == '\0') return new TextProblem(0, $"Nothing is typed where {dimension.Name} belongs.", UnitWords.Such(dimension, "5"));
        var negative = Here == '-';
        if (Here is '-' or '+' && !AtTolerance()) numbers.Position++;
        numbers.SkipSpaces();
        if (UnitWords.NoNumber(text, numbers.Position, dimension) is { } none) return none;
        var numberStart = numbers.Position;
        if (numbers.Read() is not { } value) return numbers.Problem!;
        var numberText = text[numberStart..numbers.Position];
        numbers.SkipSpaces();
        var unit = Unit(numberText);
        if (problem is not null) return problem;
        if (unit is not null) value = Compound(value, unit);
        Tolerance? tolerance = null;
        numbers.SkipSpaces();
        if (problem is null && AtTolerance()) tolerance = ReadTolerance(ref unit, numberText);
        if (problem is not null) return problem;
        numbers.SkipSpaces();
        if (Here != '\0') return UnitWords.Left(text, numbers.Position, dimension, numberText);
        // Nothing is nothing in every unit, except on a thermometer.
        unit ??= dimension.Plain || (value == 0 && !dimension.Offset) ? dimension.Si : null;
        if (unit is null) return UnitWords.Bare(numberText, text.Length, dimension);
        return Checked(negative ? -value : value, unit, tolerance);
    }

    private readonly Reading<ReadMeasure> Checked(double value, UnitOfMeasure unit, Tolerance? tolerance)
    {
        var si = unit.ToSi(value);
        if (!(Math.Abs(si) <= Greatest) || (tolerance is not null && !(tolerance.SiFor(si) <= Greatest)))
            return new TextProblem(0, $"{text.Trim()} is larger than anything here can be.", "Check the number and the unit.");
        if (dimension.Offset && si < 0) return new TextProblem(0, $"{text.Trim()} is below absolute zero.", "Check the sign and the unit.");
        if (dimension.Offset && tolerance is { Relative: true })
            return new TextProblem(text.Length, "A share of a temperature has no meaning.", "Write the tolerance in degrees, such as ± 2 °C.");
        return new ReadMeasure(value, unit, tolerance);
    }

    private readonly bool AtTolerance() => Mark() is not null;

    private readonly string? Mark()
    {
        foreach (var mark in PlusMinus)
        {
            if (text.AsSpan(numbers.Position).StartsWith(mark, StringComparison.Ordinal)) return mark;
        }

        return null;
    }

    // The longest unit word here; null and no problem where a bare number or a tolerance follows.
    private UnitOfMeasure? Unit(string numberText)
    {
        if (Here == '\0' || AtTolerance()) return null;
        for (var length = Math.Min(dimension.Longest, text.Length - numbers.Position); length > 0; length--)
        {
            var end = numbers.Position + length;
            if (dimension.Find(text[numbers.Position..end]) is not { } unit || !Ends(end)) continue;
            numbers.Position = end;
            return unit;
        }

        problem = UnitWords.Unknown(text, numbers.Position, dimension, numberText);
        return null;
    }

    private readonly bool Ends(int end)
    {
        if (end >= text.Length) return true;
        var (last, next) = (text[end - 1], text[end]);
        if (next is ' ' or '±' or '+' or '"' or '\'') return next is not ('"' or '\'') || last != next;
        return last is '"' or '\'' or '°' or '%' ? !char.IsLetter(next) : char.IsLetter(last) && char.IsAsciiDigit(next) && HasCompound(text[..end]);
    }

    // 5ft3in may be written without spaces; in3 may not be read as inches and 3.
    private static bool HasCompound(string before) =>
        before.EndsWith("ft", StringComparison.OrdinalIgnoreCase) || before.EndsWith("lb", StringComparison.OrdinalIgnoreCase)
        || before.EndsWith('h') || before.EndsWith("min", StringComparison.Ordinal) || before.EndsWith("deg", StringComparison.Ordinal);

    private double Compound(double value, UnitOfMeasure first)
    {
        var last = (Unit: first, Value: value);
        while (true)
        {
            var mark = numbers.Position;
            numbers.SkipSpaces();
            if (!NumberReader.Starts(Here) || problem is not null) return value;
            var start = numbers.Position;
            if (numbers.Read() is not { } part)
            {
                problem = numbers.Problem;
                return value;
            }

            var partText = text[start..numbers.Position];
            numbers.SkipSpaces();
            var unit = Unit(partText);
            var family = Compounds.FirstOrDefault(c => Array.IndexOf(c, last.Unit.Word) is >= 0 and var i && unit is not null && Array.IndexOf(c, unit.Word) > i);
            if (problem is not null) return value;
            if (family is null || unit is null)
            {
                numbers.Position = mark;
                problem = UnitWords.Left(text, start, dimension, partText);
                return value;
            }

            if (last.Value != Math.Floor(last.Value))
                problem = new(start, $"{partText} {unit.Word} follows a broken number of {last.Unit.Word}.", "Only the last part may have a fraction, such as 5 ft 3-1/2 in.");
            else if (part * unit.Factor >= last.Unit.Factor)
                problem = new(start, $"{partText} {unit.Word} is 1 {last.Unit.Word} or more.", $"Carry it over to the {last.Unit.Word}.");
            value += part * unit.Factor / first.Factor;
            last = (unit, part);
        }
    }

    private Tolerance? ReadTolerance(ref UnitOfMeasure? unit, string numberText)
    {
        numbers.Position += Mark()!.Length;
        numbers.SkipSpaces();
        var start = numbers.Position;
        if (Here == '-') return Fail(start, "A tolerance has no sign.", "Write it after ± without one.");
        if (numbers.Read() is not { } value) return Fail(numbers.Problem!.Position, numbers.Problem.Message, numbers.Problem.Suggestion);
        var written = text[start..numbers.Position];
        numbers.SkipSpaces();
        if (Here == '%' && unit?.Word != "%")
        {
            numbers.Position++;
            return new(value / 100, null);
        }

        var own = Unit(written);
        if (problem is not null) return null;
        if (own is null && !dimension.Plain)
            return Fail(text.Length, $"The tolerance {written} does not say its unit.", unit is null ? $"Write {numberText} {dimension.Metric.Word} ± {written} {dimension.Metric.Word}." : $"Write ± {written} {unit.Word}, or ± {written} %.");
        if (own is null && unit?.Word == "%") return Fail(text.Length, $"The tolerance {written} does not say its unit.", $"Write ± {written} %.");
        unit ??= own;
        return new(value, own ?? dimension.Si);
    }

    private Tolerance? Fail(int position, string message, string suggestion)
    {
        problem ??= new(position, message, suggestion);
        return null;
    }
}
