using System.Globalization;

namespace Scribeline.Engine.Quantities;

/// <summary>Inches as fractions on the scale of a rule, to 1/64.</summary>
public static class Inches
{
    /// <summary>Largest denominator on a rule.</summary>
    public const int Finest = 64;

    /// <summary><c>1-1/4</c> for 1.25; null where the value is whole, negative, above 1000 or no exact 64th.</summary>
    public static string? Fraction(double inches)
    {
        var parts = inches * Finest;
        if (!(inches is > 0 and <= 1000) || parts != Math.Floor(parts) || inches == Math.Floor(inches)) return null;
        return Text((long)parts);
    }

    /// <summary>The nearest 64th of an inch to a length with what it is off by, m (fraction less true value).</summary>
    /// <param name="metres">0 to 1000 m.</param>
    public static (string Text, double Error) Nearest(double metres)
    {
        if (!(metres is >= 0 and <= 1000)) throw new ArgumentOutOfRangeException(nameof(metres), metres, "A rule measures 0 to 1000 m.");
        var parts = (long)Math.Floor((metres / 0.0254 * Finest) + 0.5);
        return (Text(parts), (parts * 0.0254 / Finest) - metres);
    }

    private static string Text(long parts)
    {
        var (whole, rest) = Math.DivRem(parts, Finest);
        long below = Finest;
        while (rest > 0 && rest % 2 == 0) (rest, below) = (rest / 2, below / 2);
        if (rest == 0) return whole.ToString(CultureInfo.InvariantCulture);
        var part = string.Create(CultureInfo.InvariantCulture, $"{rest}/{below}");
        return whole == 0 ? part : string.Create(CultureInfo.InvariantCulture, $"{whole}-{part}");
    }
}
