using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>
/// Sums of what exceeds a mean by more than an allowance, which find a lasting shift sooner than single samples do
/// (Page, Biometrika 41 (1954) 100; Montgomery, Introduction to Statistical Quality Control, section 9.1).
/// </summary>
/// <param name="Above">Sum of what lies above, after each sample.</param>
/// <param name="SinceAbove">Samples since that sum was last nil.</param>
/// <param name="Below">Sum of what lies below, after each sample.</param>
/// <param name="SinceBelow">Samples since that sum was last nil.</param>
public sealed record Cusum(ValueList<double> Above, ValueList<int> SinceAbove, ValueList<double> Below, ValueList<int> SinceBelow)
{
    /// <summary>Sums up.</summary>
    /// <param name="values">In order.</param>
    /// <param name="mean">Before the shift.</param>
    /// <param name="allowance">K: half the shift to be found.</param>
    public static Cusum Of(IReadOnlyList<double> values, double mean, double allowance)
    {
        double above = 0, below = 0;
        int sinceAbove = 0, sinceBelow = 0;
        var (a, na, b, nb) = (new double[values.Count], new int[values.Count], new double[values.Count], new int[values.Count]);
        for (var i = 0; i < values.Count; i++)
        {
            above = Math.Max(0, values[i] - mean - allowance + above);
            below = Math.Max(0, mean - allowance - values[i] + below);
            sinceAbove = above > 0 ? sinceAbove + 1 : 0;
            sinceBelow = below > 0 ? sinceBelow + 1 : 0;
            (a[i], na[i], b[i], nb[i]) = (above, sinceAbove, below, sinceBelow);
        }

        return new(ValueList.Of<double>(a), ValueList.Of<int>(na), ValueList.Of<double>(b), ValueList.Of<int>(nb));
    }

    /// <summary>First sample of a shift downwards, by the last time its sum was nil; null where no sum passes the bound.</summary>
    /// <param name="bound">H.</param>
    public int? FallsFrom(double bound) => First(Below, SinceBelow, bound);

    /// <summary>First sample of a shift upwards, by the last time its sum was nil; null where no sum passes the bound.</summary>
    /// <param name="bound">H.</param>
    public int? RisesFrom(double bound) => First(Above, SinceAbove, bound);

    private static int? First(ValueList<double> sums, ValueList<int> since, double bound)
    {
        for (var i = 0; i < sums.Count; i++)
        {
            if (sums[i] > bound) return i - since[i] + 1;
        }

        return null;
    }
}
