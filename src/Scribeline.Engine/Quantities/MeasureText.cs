using System.Globalization;

namespace Scribeline.Engine.Quantities;

/// <summary>Writes quantities as a builder would: inches as fractions where they are exact to 1/64, decimals otherwise.</summary>
public static class MeasureText
{
    /// <summary>A value with its unit and tolerance so that it reads back to exactly the same.</summary>
    public static string Write(double value, UnitOfMeasure unit, Tolerance? tolerance = null)
    {
        var text = Number(value, unit) + unit.Gap + unit.Word;
        if (tolerance is null) return text;
        return tolerance.Unit is { } own
            ? $"{text} ± {Number(tolerance.Value, own)}{own.Gap}{own.Word}"
            : $"{text} ± {Decimal(Percent(tolerance.Value))} %";
    }

    /// <summary>An SI value in a unit, rounded to a number of significant digits for showing.</summary>
    /// <param name="si">SI value.</param>
    /// <param name="unit">Unit to write in.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    public static string Show(double si, UnitOfMeasure unit, int digits = 4) =>
        Decimal(Rounded(unit.FromSi(si), digits)) + unit.Gap + unit.Word;

    /// <summary>A measure in the other system: inch units for what was typed in metric ones and the other way round; empty where both share the unit.</summary>
    public static string Other(IMeasure measure, UnitOfMeasure typed, int digits = 4)
    {
        var (metric, inch) = (measure.Dimension.Metric, measure.Dimension.Inch);
        if (metric == inch) return "";
        var other = InchUnits.Contains(typed.Word) ? metric : inch;

        // Heights and distances are not told in millimetres or inches.
        if (other.Word is "mm" or "in" && Math.Abs(measure.Si) >= Far) other = measure.Dimension.Find(other == metric ? "m" : "ft")!;
        return Show(measure.Si, other, digits);
    }

    private const double Far = 10;

    private static readonly HashSet<string> InchUnits =
        ["in", "ft", "mil", "mi", "yd", "µin", "lb", "oz", "grain", "mph", "ft/s", "lbf", "ozf", "psi", "ksi", "inHg", "°F", "in³", "ft³", "in²", "ft²", "ft·lbf",
        "lb/ft³", "lb/in³", "lb/ft", "g/ft", "ft/s²"];

    /// <summary>A number in the invariant culture that reads back the same, without exponent where that is possible in 25 places.</summary>
    public static string Decimal(double value)
    {
        var shortest = value.ToString("R", CultureInfo.InvariantCulture);
        if (!shortest.Contains('E', StringComparison.Ordinal)) return shortest;
        var (mantissa, power) = (shortest[..shortest.IndexOf('E', StringComparison.Ordinal)], shortest[(shortest.IndexOf('E', StringComparison.Ordinal) + 1)..]);
        var places = mantissa.Length - int.Parse(power, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var full = places is >= 0 and <= 25 ? value.ToString("F" + places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).TrimEnd('0') : "";
        return full.Length > 0 && double.Parse(full, CultureInfo.InvariantCulture) == value ? full : shortest;
    }

    private static string Number(double value, UnitOfMeasure unit) =>
        unit.Word == "in" && Inches.Fraction(value) is { } fraction ? fraction : Decimal(value);

    // A share whose percentage divides back to the same number, so that reading returns what was written.
    private static double Percent(double share)
    {
        var percent = share * 100;
        foreach (var candidate in new[] { percent, Math.BitIncrement(percent), Math.BitDecrement(percent) })
        {
            if (candidate / 100 == share) return candidate;
        }

        return percent;
    }

    private static double Rounded(double value, int digits) =>
        value == 0 ? 0 : double.Parse(value.ToString($"E{digits - 1}", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
