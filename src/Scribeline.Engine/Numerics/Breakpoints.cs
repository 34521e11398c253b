namespace Scribeline.Engine.Numerics;

/// <summary>
/// Finds the segment of an ascending table that holds a value, for one number or for lanes, without branching on the value.
/// A uniform grid laid over the table gives a first guess; a fixed number of comparisons finishes it.
/// Left of the table the first segment is returned, right of it the last; NaN gives some valid segment.
/// Method: the guide table of H.-C. Chen and Y. Asau, AIIE Transactions 6 (1974) 163 (from memory).
/// </summary>
public sealed class Breakpoints
{
    private readonly double first, cellsPerUnit;
    private readonly double[] start, upper;
    private readonly int steps;

    /// <param name="ascending">Two or more values, each above the one before it.</param>
    /// <exception cref="ArgumentException">Fewer than two values, or not ascending.</exception>
    public Breakpoints(ReadOnlySpan<double> ascending)
    {
        var segments = ascending.Length - 1;
        if (segments < 1) throw new ArgumentException("At least two values are needed.", nameof(ascending));
        for (var i = 0; i < segments; i++)
            if (!(ascending[i] < ascending[i + 1])) throw new ArgumentException("The values must ascend.", nameof(ascending));

        var cells = segments == 1 ? 1 : 16 * segments;
        first = ascending[0];
        var width = (ascending[^1] - first) / cells;
        cellsPerUnit = 1 / width;
        start = new double[cells];
        upper = [.. ascending[1..^1], double.PositiveInfinity];
        for (int c = 0, segment = 0; c < cells; c++)
        {
            while (upper[segment] < first + (c * width)) segment++;
            start[c] = segment;
            var last = segment;
            // A little beyond the cell's edge, since the cell of a value is found with rounding.
            while (upper[last] < first + ((c + 1.001) * width)) last++;
            steps = Math.Max(steps, last - segment);
        }
    }

    /// <summary>Index of the segment holding <paramref name="value"/>, 0 up to the number of segments less one.</summary>
    public T Find<T>(T value)
        where T : struct, IReal<T>
    {
        var one = T.From(1);
        var cell = T.Floor((value - T.From(first)) * T.From(cellsPerUnit));
        cell = T.SelectLess(T.From(0), cell, cell, T.From(0)); // also sends NaN to the first cell
        var segment = T.Gather(start, T.Min(cell, T.From(start.Length - 1)));
        for (var s = 0; s < steps; s++)
            segment = T.SelectLess(T.Gather(upper, segment), value, segment + one, segment);
        return segment;
    }
}
