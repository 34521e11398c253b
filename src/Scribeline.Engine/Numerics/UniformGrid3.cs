using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Numerics;

/// <summary>
/// A function of three numbers given at evenly spaced points: trilinear between, constant beyond. Compared by value.
/// </summary>
public sealed record UniformGrid3
{
    /// <summary>Takes one finite value per point, the last number running fastest.</summary>
    /// <exception cref="ArgumentException">An axis is unsound or the values do not match.</exception>
    public UniformGrid3(UniformAxis first, UniformAxis second, UniformAxis third, ValueList<double> values)
    {
        UniformGrid.Check(values, first, second, third);
        (First, Second, Third, Values) = (first, second, third, values);
    }

    /// <summary>Points of the first number.</summary>
    public UniformAxis First { get; }

    /// <summary>Points of the second number.</summary>
    public UniformAxis Second { get; }

    /// <summary>Points of the third number.</summary>
    public UniformAxis Third { get; }

    /// <summary>The values: element (i times the second count, plus j) times the third count, plus k.</summary>
    public ValueList<double> Values { get; }

    /// <summary>The value at (x, y, z).</summary>
    public T At<T>(T x, T y, T z)
        where T : struct, IReal<T>
    {
        var i = First.Find(x, out var partX);
        var j = Second.Find(y, out var partY);
        var index = (i * T.From(Second.Count) + j) * T.From(Third.Count) + Third.Find(z, out var partZ);
        var (row, table) = (Third.Count, Second.Count * Third.Count);
        var low = UniformGrid2.Between(Values.Span, row, index, partY, partZ);
        return low + partX * (UniformGrid2.Between(Values.Span[table..], row, index, partY, partZ) - low);
    }
}
