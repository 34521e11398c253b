namespace Scribeline.Engine.Numerics;

/// <summary>
/// A real number or a pack of them. Flight equations and table look-ups are written once over this interface:
/// <see cref="Scalar"/> for one flight, a pack of SIMD lanes for many. A branch on a value becomes a selection,
/// since the lanes of a pack may disagree.
/// </summary>
/// <typeparam name="T">The implementing type.</typeparam>
public interface IReal<T>
    where T : struct, IReal<T>
{
    /// <summary>Number of values held: 1 for a scalar.</summary>
    static abstract int Width { get; }

    /// <summary>The same constant in every lane.</summary>
    static abstract T From(double value);

    /// <summary>The value in one lane, 0 &lt;= lane &lt; <see cref="Width"/>.</summary>
    static abstract double Lane(T value, int lane);

    /// <summary>One value per lane, read from the first <see cref="Width"/> elements.</summary>
    static abstract T Load(ReadOnlySpan<double> values);

    static abstract T operator +(T a, T b);
    static abstract T operator -(T a, T b);
    static abstract T operator *(T a, T b);
    static abstract T operator /(T a, T b);
    static abstract T operator -(T a);

    static abstract T Sqrt(T a);
    static abstract T Abs(T a);
    static abstract T Floor(T a);
    static abstract T Min(T a, T b);
    static abstract T Max(T a, T b);
    static abstract T Exp(T a);

    /// <summary>Natural logarithm; NaN below zero.</summary>
    static abstract T Log(T a);
    static abstract T Sin(T a);
    static abstract T Cos(T a);
    static abstract T Atan2(T y, T x);

    /// <summary>In each lane: <paramref name="then"/> where a &lt; b, else <paramref name="otherwise"/>.</summary>
    static abstract T SelectLess(T a, T b, T then, T otherwise);

    /// <summary>In each lane: the element of <paramref name="table"/> at the (whole, in-range) index held there.</summary>
    static abstract T Gather(ReadOnlySpan<double> table, T index);

    /// <summary>
    /// In each lane: a weighted sum of four rows of <paramref name="table"/>, that is, for q from 0 up to the length of
    /// <paramref name="sums"/>, a table[start + q] + b table[start + stride + q] + c table[start + 2 stride + q] + d table[start + 3 stride + q].
    /// A lane's rows lie side by side in memory, so a pack reads them whole where <see cref="Gather"/> would fetch number by number.
    /// </summary>
    /// <param name="table">Eight numbers longer than its last row.</param>
    /// <param name="start">Whole and in range.</param>
    /// <param name="stride">From row to row.</param>
    /// <param name="a">Weight of the first row.</param>
    /// <param name="b">Weight of the second row.</param>
    /// <param name="c">Weight of the third row.</param>
    /// <param name="d">Weight of the fourth row.</param>
    /// <param name="sums">At most <see cref="Rows"/> numbers.</param>
    static abstract void SumRows(ReadOnlySpan<double> table, T start, int stride, in T a, in T b, in T c, in T d, Span<T> sums);

    /// <summary>Most numbers of a row.</summary>
    const int Rows = 16;
}
