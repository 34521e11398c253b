using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Numerics;

/// <summary>
/// A function given at knots, straight between them and constant beyond the first and last. Two equal knots make a jump,
/// where the later value holds. Compared by value.
/// </summary>
public sealed record PiecewiseLinear
{
    private readonly KnotSearch search;
    private readonly double[] starts;
    private readonly double[] slopes;
    private readonly double[] integrals;

    /// <summary>Takes at least two knots in ascending order and as many finite values.</summary>
    /// <exception cref="ArgumentException">The knots are fewer, descend or are not finite, or the values do not match.</exception>
    public PiecewiseLinear(ValueList<double> knots, ValueList<double> values)
    {
        if (knots.Count != values.Count) throw new ArgumentException($"{values.Count} values at {knots.Count} knots.", nameof(values));
        (Knots, Values) = (knots, values);
        search = new KnotSearch(knots.Span);
        (starts, slopes, integrals) = (new double[search.Size], new double[search.Size], new double[search.Size]);
        for (var i = 0; i + 1 < knots.Count; i++)
        {
            if (!double.IsFinite(values[i]) || !double.IsFinite(values[i + 1])) throw new ArgumentException("A value is not finite.", nameof(values));
            var width = knots[i + 1] - knots[i];
            starts[i] = values[i];
            slopes[i] = width > 0 ? (values[i + 1] - values[i]) / width : 0;
            var whole = integrals[i] + width * 0.5 * (values[i] + values[i + 1]);
            if (i + 2 < knots.Count) integrals[i + 1] = whole;
            else Integral = whole;
        }
    }

    /// <summary>Where the values are given, ascending.</summary>
    public ValueList<double> Knots { get; }

    /// <summary>The values there.</summary>
    public ValueList<double> Values { get; }

    /// <summary>The integral over all knots.</summary>
    public double Integral { get; }

    /// <summary>The value at x.</summary>
    public T At<T>(T x)
        where T : struct, IReal<T>
    {
        var interval = search.Find(x, out var distance);
        return T.Gather(starts, interval) + T.Gather(slopes, interval) * distance;
    }

    /// <summary>The integral from the first knot to x, x held to the knots' range.</summary>
    public T IntegralTo<T>(T x)
        where T : struct, IReal<T>
    {
        var interval = search.Find(x, out var distance);
        var mean = T.Gather(starts, interval) + T.From(0.5) * T.Gather(slopes, interval) * distance;
        return T.Gather(integrals, interval) + mean * distance;
    }

    /// <inheritdoc/>
    public bool Equals(PiecewiseLinear? other) => other is not null && Knots.Equals(other.Knots) && Values.Equals(other.Values);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Knots, Values);
}
