using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Numerics;

/// <summary>A function of one number given at evenly spaced points: straight between, constant beyond. Compared by value.</summary>
public sealed record UniformGrid
{
    /// <summary>Takes one finite value per point.</summary>
    /// <exception cref="ArgumentException">The axis is unsound or the values do not match it.</exception>
    public UniformGrid(UniformAxis axis, ValueList<double> values)
    {
        Check(values, axis);
        (Axis, Values) = (axis, values);
    }

    /// <summary>The points.</summary>
    public UniformAxis Axis { get; }

    /// <summary>The values there.</summary>
    public ValueList<double> Values { get; }

    /// <summary>The value at x.</summary>
    public T At<T>(T x)
        where T : struct, IReal<T>
    {
        var i = Axis.Find(x, out var part);
        return Between(Values.Span, i, part);
    }

    internal static T Between<T>(ReadOnlySpan<double> table, T index, T part)
        where T : struct, IReal<T>
    {
        var low = T.Gather(table, index);
        return low + part * (T.Gather(table[1..], index) - low);
    }

    internal static void Check(ValueList<double> values, params ReadOnlySpan<UniformAxis> axes)
    {
        var count = 1;
        foreach (var axis in axes)
        {
            if (!axis.IsSound) throw new ArgumentException("An axis needs two points or more, ascending and finite.", nameof(axes));
            count *= axis.Count;
        }

        if (values.Count != count) throw new ArgumentException($"{values.Count} values at {count} points.", nameof(values));
        foreach (var value in values)
        {
            if (!double.IsFinite(value)) throw new ArgumentException("A value is not finite.", nameof(values));
        }
    }
}
