namespace Scribeline.Engine.Numerics;

/// <summary>
/// Finds the interval of a table that a number lies in, with the same number of halvings for every number, so that the
/// lanes of a pack stay together.
/// </summary>
internal sealed class KnotSearch
{
    private readonly double[] starts;
    private readonly double last;

    /// <summary>Takes at least two finite knots in ascending order; equal neighbours make an interval that is never chosen.</summary>
    public KnotSearch(ReadOnlySpan<double> knots)
    {
        if (knots.Length < 2) throw new ArgumentException("A table needs at least two knots.", nameof(knots));
        for (var i = 0; i < knots.Length; i++)
        {
            if (!double.IsFinite(knots[i])) throw new ArgumentException($"Knot {i} is not finite.", nameof(knots));
            if (i > 0 && knots[i] < knots[i - 1]) throw new ArgumentException($"Knot {i} is below the one before it.", nameof(knots));
        }

        var size = 1;
        while (size < knots.Length - 1) size *= 2;
        starts = new double[size];
        knots[..^1].CopyTo(starts);
        starts.AsSpan(knots.Length - 1).Fill(double.PositiveInfinity);
        last = knots[^1];
    }

    /// <summary>Number of intervals with those that fill up to a power of two; tables by interval are made this long.</summary>
    public int Size => starts.Length;

    /// <summary>
    /// The interval and the distance from its start, the number held to the knots' range. Not a number gives itself as
    /// the distance.
    /// </summary>
    public T Find<T>(T x, out T distance)
        where T : struct, IReal<T>
    {
        var held = T.Min(T.Max(x, T.From(starts[0])), T.From(last));
        var interval = T.From(0);
        for (var half = starts.Length / 2; half > 0; half /= 2)
        {
            var trial = interval + T.From(half);
            interval = T.SelectLess(held, T.Gather(starts, trial), interval, trial);
        }

        distance = held - T.Gather(starts, interval);
        return interval;
    }
}
