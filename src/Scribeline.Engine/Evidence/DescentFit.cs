using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>A straight line through the heights of a steady descent.</summary>
/// <param name="Rate">Downwards, m/s.</param>
/// <param name="Sigma">Standard error of the rate were its residuals independent, m/s.</param>
/// <param name="Correlation">Of neighbouring residuals, -1 to 1.</param>
/// <param name="Blocks">Rate of each block of 5 s, m/s: swinging, thermals and gusts show there.</param>
/// <param name="From">s.</param>
/// <param name="To">s.</param>
/// <param name="Height">Mean height above the pad, m.</param>
public sealed record DescentFit(double Rate, double Sigma, double Correlation, ValueList<double> Blocks, double From, double To, double Height)
{
    private const double BlockTime = 5;

    /// <summary>
    /// Standard uncertainty of the mean rate, m/s: the greater of what the residuals say, neighbours counted as far as they are alike, and what the
    /// blocks say.
    /// </summary>
    public double Uncertainty
    {
        get
        {
            var alike = Math.Clamp(Correlation, 0, 0.99);
            var line = Sigma * Math.Sqrt((1 + alike) / (1 - alike));
            if (Blocks.Count < 3) return line;
            return Math.Max(line, Spread / Math.Sqrt(Blocks.Count));
        }
    }

    /// <summary>Standard deviation of the blocks, m/s; 0 for fewer than two.</summary>
    public double Spread
    {
        get
        {
            if (Blocks.Count < 2) return 0;
            var mean = Blocks.Average();
            return Math.Sqrt(Blocks.Sum(b => (b - mean) * (b - mean)) / (Blocks.Count - 1));
        }
    }

    /// <summary>Fits the samples from one time to another; null for fewer than ten.</summary>
    /// <param name="times">s, rising.</param>
    /// <param name="heights">m; NaN where missing.</param>
    /// <param name="from">s.</param>
    /// <param name="to">s.</param>
    public static DescentFit? Of(IReadOnlyList<double> times, IReadOnlyList<double> heights, double from, double to)
    {
        var within = Enumerable.Range(0, times.Count).Where(i => times[i] >= from && times[i] <= to && double.IsFinite(heights[i])).ToArray();
        if (within.Length < 10) return null;
        var (t, h) = (within.Select(i => times[i]).ToArray(), within.Select(i => heights[i]).ToArray());
        var (slope, residuals, spread) = Line(t, h);
        var squares = residuals.Sum(r => r * r);
        var neighbours = residuals.Zip(residuals.Skip(1), (a, b) => a * b).Sum();
        List<double> blocks = [];
        for (var start = from; start + BlockTime <= to; start += BlockTime)
        {
            var block = Enumerable.Range(0, t.Length).Where(i => t[i] >= start && t[i] < start + BlockTime).ToArray();
            if (block.Length >= 4) blocks.Add(-Line([.. block.Select(i => t[i])], [.. block.Select(i => h[i])]).Slope);
        }

        return new(-slope, Math.Sqrt(squares / (t.Length - 2) / spread), squares > 0 ? neighbours / squares : 0, blocks.ToValueList(), from, to, h.Average());
    }

    private static (double Slope, double[] Residuals, double Spread) Line(double[] t, double[] h)
    {
        double middle = t.Average(), mean = h.Average(), spread = t.Sum(x => (x - middle) * (x - middle)), slope = 0;
        for (var i = 0; i < t.Length; i++) slope += (t[i] - middle) * (h[i] - mean) / spread;
        return (slope, [.. t.Zip(h, (x, y) => y - mean - (slope * (x - middle)))], spread);
    }
}
