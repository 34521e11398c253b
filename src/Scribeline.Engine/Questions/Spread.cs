namespace Scribeline.Engine.Questions;

/// <summary>What the tolerances of the design do to a value.</summary>
/// <param name="Mean">SI.</param>
/// <param name="Low">5 % of the cases lie below, SI.</param>
/// <param name="High">5 % of the cases lie above, SI.</param>
/// <param name="Meets">Share of the cases that meet the limit, 0 to 1; null without limit.</param>
/// <param name="Samples">Number of cases.</param>
public sealed record Spread(double Mean, double Low, double High, double? Meets, int Samples)
{
    /// <summary>Whether the tolerances do not reach this value at all.</summary>
    public bool IsPoint => Low == High && Meets is null or 0 or 1;

    /// <summary>The spread of a set of sampled values; values that are not finite count as not meeting the limit and are left out of the rest.</summary>
    /// <param name="values">One per case, SI.</param>
    /// <param name="limit">Bound to count against, or null.</param>
    /// <returns>Null when no case is finite.</returns>
    public static Spread? Of(IReadOnlyList<double> values, Limit? limit)
    {
        var sorted = values.Where(double.IsFinite).Order().ToArray();
        if (sorted.Length == 0) return null;
        double? meets = limit is null ? null : (double)sorted.Count(limit.IsMetBy) / values.Count;
        return new Spread(sorted.Average(), Quantile(sorted, 0.05), Quantile(sorted, 0.95), meets, values.Count);
    }

    // Linear between order statistics, the rule of Hyndman & Fan (1996) type 7.
    private static double Quantile(double[] sorted, double p)
    {
        var at = p * (sorted.Length - 1);
        var below = (int)at;
        var above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((at - below) * (sorted[above] - sorted[below]));
    }
}
