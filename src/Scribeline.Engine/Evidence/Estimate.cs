namespace Scribeline.Engine.Evidence;

/// <summary>A value and its standard uncertainty, normal.</summary>
/// <param name="Value">SI.</param>
/// <param name="Sigma">SI, more than 0.</param>
public readonly record struct Estimate(double Value, double Sigma)
{
    /// <summary>Both together, each by the inverse of its variance: the product of two normal densities. The order does not matter.</summary>
    public Estimate With(Estimate other)
    {
        double a = 1 / (Sigma * Sigma), b = 1 / (other.Sigma * other.Sigma);
        return new(((a * Value) + (b * other.Value)) / (a + b), 1 / Math.Sqrt(a + b));
    }

    /// <summary>Several together.</summary>
    public static Estimate Of(IEnumerable<Estimate> all) => all.Aggregate((a, b) => a.With(b));

    /// <summary>The same with a further, independent uncertainty.</summary>
    public Estimate Blurred(double sigma) => this with { Sigma = Math.Sqrt((Sigma * Sigma) + (sigma * sigma)) };

    /// <summary>How far apart two are, in standard uncertainties of their difference (ASME V&amp;V 20-2009, from memory).</summary>
    public double Apart(Estimate other) => (Value - other.Value) / Math.Sqrt((Sigma * Sigma) + (other.Sigma * other.Sigma));

    /// <summary>Size of the difference over the root of the squares of both expanded uncertainties, k = 2: E_n of ISO 13528 (from memory).</summary>
    public double Score(Estimate other) => Math.Abs(Apart(other)) / 2;

    /// <summary>Sum of squares of the differences from their common value, in variances.</summary>
    public static double ChiSquared(IReadOnlyList<Estimate> all)
    {
        var mean = Of(all).Value;
        return all.Sum(e => (e.Value - mean) * (e.Value - mean) / (e.Sigma * e.Sigma));
    }

    /// <summary>Root of chi squared over its degrees of freedom; more than 1 says that the uncertainties are told too small (Birge, Phys. Rev. 40 (1932) 207).</summary>
    public static double BirgeRatio(IReadOnlyList<Estimate> all) => Math.Sqrt(ChiSquared(all) / (all.Count - 1));

    /// <summary>Range of a mean of squared normalised innovations that right uncertainties stay in 19 times of 20.</summary>
    /// <param name="count">Of innovations, 1 or more.</param>
    public static (double Low, double High) MeanSquareRange(int count) =>
        (MathNet.Numerics.Distributions.ChiSquared.InvCDF(count, 0.025) / count, MathNet.Numerics.Distributions.ChiSquared.InvCDF(count, 0.975) / count);
}
