using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Numerics;

/// <summary>
/// A function given at knots, cubic between them with a continuous slope, that rises and falls only where the values do;
/// constant beyond the first and last knot. Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246: slopes start as
/// the mean of the two neighbouring chords and are drawn into the circle of radius 3. Compared by value.
/// </summary>
public sealed record MonotoneCubic
{
    private readonly KnotSearch search;
    private readonly double[] coefficients;

    /// <summary>Takes at least two knots, each above the last, and as many finite values.</summary>
    /// <exception cref="ArgumentException">The knots are fewer, do not ascend or are not finite, or the values do not match.</exception>
    public MonotoneCubic(ValueList<double> knots, ValueList<double> values)
    {
        if (knots.Count != values.Count) throw new ArgumentException($"{values.Count} values at {knots.Count} knots.", nameof(values));
        (Knots, Values) = (knots, values);
        search = new KnotSearch(knots.Span);
        var chords = new double[knots.Count - 1];
        for (var i = 0; i < chords.Length; i++)
        {
            if (!double.IsFinite(values[i]) || !double.IsFinite(values[i + 1])) throw new ArgumentException("A value is not finite.", nameof(values));
            if (knots[i] == knots[i + 1]) throw new ArgumentException($"Knots {i} and {i + 1} are equal.", nameof(knots));
            chords[i] = (values[i + 1] - values[i]) / (knots[i + 1] - knots[i]);
        }

        var slopes = SlopesFrom(chords);
        Slopes = ValueList.Of<double>(slopes);
        coefficients = new double[4 * search.Size];
        for (var i = 0; i < chords.Length; i++)
        {
            var width = knots[i + 1] - knots[i];
            coefficients[i] = values[i];
            coefficients[search.Size + i] = slopes[i];
            coefficients[2 * search.Size + i] = (3 * chords[i] - 2 * slopes[i] - slopes[i + 1]) / width;
            coefficients[3 * search.Size + i] = (slopes[i] + slopes[i + 1] - 2 * chords[i]) / (width * width);
        }
    }

    /// <summary>Where the values are given, ascending.</summary>
    public ValueList<double> Knots { get; }

    /// <summary>The values there.</summary>
    public ValueList<double> Values { get; }

    /// <summary>The slopes there.</summary>
    public ValueList<double> Slopes { get; }

    /// <summary>The value at x.</summary>
    public T At<T>(T x)
        where T : struct, IReal<T>
    {
        var interval = search.Find(x, out var s);
        return ((Row(3, interval) * s + Row(2, interval)) * s + Row(1, interval)) * s + Row(0, interval);
    }

    /// <summary>The slope at x; at the ends the one from within, not the zero of the constant beyond.</summary>
    public T SlopeAt<T>(T x)
        where T : struct, IReal<T>
    {
        var interval = search.Find(x, out var s);
        return (T.From(3) * Row(3, interval) * s + T.From(2) * Row(2, interval)) * s + Row(1, interval);
    }

    /// <inheritdoc/>
    public bool Equals(MonotoneCubic? other) => other is not null && Knots.Equals(other.Knots) && Values.Equals(other.Values);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Knots, Values);

    private T Row<T>(int power, T interval)
        where T : struct, IReal<T> => T.Gather(coefficients.AsSpan(power * search.Size, search.Size), interval);

    private static double[] SlopesFrom(double[] chords)
    {
        var slopes = new double[chords.Length + 1];
        slopes[0] = chords[0];
        slopes[^1] = chords[^1];
        for (var i = 1; i < chords.Length; i++)
        {
            // At a turn, or beside a level stretch, the curve must be level.
            slopes[i] = Math.Sign(chords[i - 1]) == Math.Sign(chords[i]) ? 0.5 * (chords[i - 1] + chords[i]) : 0;
        }

        for (var i = 0; i < chords.Length; i++)
        {
            if (chords[i] == 0) (slopes[i], slopes[i + 1]) = (0, 0);
            var size = Math.Sqrt(slopes[i] * slopes[i] + slopes[i + 1] * slopes[i + 1]);
            var most = 3 * Math.Abs(chords[i]);
            if (size <= most) continue;
            slopes[i] *= most / size;
            slopes[i + 1] *= most / size;
        }

        return slopes;
    }
}
