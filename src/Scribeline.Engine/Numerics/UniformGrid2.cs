using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Numerics;

/// <summary>
/// A function of two numbers given at evenly spaced points: bilinear between, constant beyond. Compared by value.
/// </summary>
public sealed record UniformGrid2
{
    /// <summary>Takes one finite value per point, those of one first number together.</summary>
    /// <exception cref="ArgumentException">An axis is unsound or the values do not match.</exception>
    public UniformGrid2(UniformAxis first, UniformAxis second, ValueList<double> values)
    {
        UniformGrid.Check(values, first, second);
        (First, Second, Values) = (first, second, values);
    }

    /// <summary>Points of the first number.</summary>
    public UniformAxis First { get; }

    /// <summary>Points of the second number.</summary>
    public UniformAxis Second { get; }

    /// <summary>The values: element i times the second count, plus j.</summary>
    public ValueList<double> Values { get; }

    /// <summary>The value at (x, y).</summary>
    public T At<T>(T x, T y)
        where T : struct, IReal<T>
    {
        var i = First.Find(x, out var partX);
        var index = i * T.From(Second.Count) + Second.Find(y, out var partY);
        return Between(Values.Span, Second.Count, index, partX, partY);
    }

    internal static T Between<T>(ReadOnlySpan<double> table, int row, T index, T partX, T partY)
        where T : struct, IReal<T>
    {
        var low = UniformGrid.Between(table, index, partY);
        return low + partX * (UniformGrid.Between(table[row..], index, partY) - low);
    }
}
