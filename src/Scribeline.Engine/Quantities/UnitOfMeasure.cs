namespace Scribeline.Engine.Quantities;

/// <summary>A unit a quantity can be typed in.</summary>
/// <param name="Word">As we write it, such as <c>mm</c>; empty for plain numbers.</param>
/// <param name="Factor">SI units in one of it (for temperatures: kelvins in one degree).</param>
/// <param name="Offset">SI value at its zero; 0 for all but temperatures.</param>
/// <param name="Also">Other ways it is typed.</param>
public sealed record UnitOfMeasure(string Word, double Factor, double Offset, ValueList<string> Also)
{
    private readonly (double Above, double Below) ratio = Ratio(Factor);

    /// <summary>SI value of a value in this unit.</summary>
    public double ToSi(double value) => Offset == 0 ? value * ratio.Above / ratio.Below : (value * Factor) + Offset;

    /// <summary>Value in this unit of an SI value.</summary>
    public double FromSi(double si) => Offset == 0 ? si * ratio.Below / ratio.Above : (si - Offset) / Factor;

    /// <summary>Between a number and this unit: nothing before a sign of degree, foot or inch, else a space.</summary>
    public string Gap => Word is "" or "°" or "\"" or "'" ? "" : " ";

    // Most factors are short decimals: 0.0254 as 254 over 10000 turns 3/16 in into 0.0047625 m to the last digit, as 0.0254 cannot.
    private static (double Above, double Below) Ratio(double factor)
    {
        for (var below = 1.0; below <= 1e12; below *= 10)
        {
            var above = factor * below;
            if (above is >= 1 and < 1e11 && Math.Abs(above - Math.Round(above)) < 1e-12 * above) return (Math.Round(above), below);
        }

        return (factor, 1);
    }
}
