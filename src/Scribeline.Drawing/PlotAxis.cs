using Scribeline.Engine.Questions;

namespace Scribeline.Drawing;

/// <summary>The range an axis shows, in the unit shown.</summary>
internal readonly record struct PlotAxis(string Symbol, double Factor, double Offset, double Low, double High)
{
    /// <summary>Whether there is no finite value to show.</summary>
    public bool IsEmpty => double.IsNaN(Low);

    /// <summary>A value in SI as shown.</summary>
    public double Of(double value) => (value * Factor) + Offset;

    /// <summary>From the first value to the last, without margin.</summary>
    public static PlotAxis Across(Plot plot, bool inch)
    {
        var axis = Of(plot.Across.Unit, inch, plot.Series.SelectMany(s => s.X));
        return axis.High > axis.Low ? axis : axis with { Low = axis.Low - 1, High = axis.High + 1 };
    }

    /// <summary>All values and the limit, with a little room; from zero where that does not press the lines flat.</summary>
    public static PlotAxis Up(Plot plot, bool inch)
    {
        var axis = Of(plot.Up.Unit, inch, plot.Series.SelectMany(s => s.Y).Concat(plot.Bound is { } bound ? [bound] : []));
        var (low, high) = (axis.Low, axis.High);

        // What is below zero by less than the line is thick counts as zero.
        if (low > -1e-3 * (high - low) && low < 0.6 * high) low = 0;
        var room = high > low ? 0.06 * (high - low) : Math.Max(1, Math.Abs(high) * 0.1);
        return axis with { Low = low == 0 ? 0 : low - room, High = high + room };
    }

    private static PlotAxis Of(Unit unit, bool inch, IEnumerable<double> values)
    {
        var finite = values.Where(double.IsFinite).DefaultIfEmpty(double.NaN).ToArray();
        var (symbol, factor, offset) = Shown.In(unit, inch, finite.Max(Math.Abs));
        return new PlotAxis(symbol, factor, offset, (finite.Min() * factor) + offset, (finite.Max() * factor) + offset);
    }
}
