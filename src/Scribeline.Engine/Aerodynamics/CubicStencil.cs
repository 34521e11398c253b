using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Place on a uniform axis and the four weights of the cubic with continuous slope through its points (E. Catmull and R. Rom, 1974).
/// Tables carry one point beyond each end. Outside the axis the end value holds.
/// </summary>
internal readonly record struct CubicStencil<T>(T First, T A, T B, T C, T D)
    where T : struct, IReal<T>
{
    /// <summary>Stencil of x on an axis.</summary>
    public static CubicStencil<T> At(T x, in Axis axis)
    {
        var last = T.From(axis.Count - 1);
        var u = T.Min(T.Max((x - T.From(axis.Start)) * T.From(1 / axis.Step), T.From(0)), last);
        var cell = T.Min(T.Floor(u), last - T.From(1));
        var t = u - cell;
        var s = T.From(1) - t;
        var half = T.From(0.5);
        var bend = half * t * s;
        return new(
            cell,
            -bend * s,
            s + bend * (s + s - t),
            t + bend * (t + t - s),
            -bend * t);
    }

    /// <summary>Values of several quantities stored side by side.</summary>
    /// <param name="table">Its length made by <see cref="Axis.Table"/>.</param>
    /// <param name="quantities">Numbers in a row.</param>
    /// <param name="values">The first of them, as many as there is room for.</param>
    public void Read(ReadOnlySpan<double> table, int quantities, Span<T> values) => Read(table, T.From(0), quantities, values);

    /// <summary>The same, of tables laid one after another: each lane may have its own.</summary>
    public void Read(ReadOnlySpan<double> tables, T start, int quantities, Span<T> values) =>
        T.SumRows(tables, First * T.From(quantities) + start, quantities, A, B, C, D, values);
}

/// <summary>A uniform axis.</summary>
/// <param name="Start">First point.</param>
/// <param name="Step">Between points.</param>
/// <param name="Count">Points, at least 2.</param>
internal readonly record struct Axis(double Start, double Step, int Count)
{
    /// <summary>Coordinate of a point; −1 and Count are the points beyond the ends.</summary>
    public double this[int i] => Start + i * Step;

    /// <summary>Numbers of a table of rows of equal width, with the points beyond the ends and what <see cref="IReal{T}.SumRows"/> may read behind.</summary>
    public int Table(int width) => ((Count + 2) * width) + 8;

    /// <summary>Fills the points beyond the ends of a table of rows of equal width by mirror (even at the start) or straight extension.</summary>
    public void Extend(double[] table, int width, bool evenStart)
    {
        for (var q = 0; q < width; q++)
        {
            double Row(int i) => table[(i + 1) * width + q];
            table[q] = evenStart ? Row(1) : 2 * Row(0) - Row(1);
            table[(Count + 1) * width + q] = 2 * Row(Count - 1) - Row(Count - 2);
        }
    }
}
