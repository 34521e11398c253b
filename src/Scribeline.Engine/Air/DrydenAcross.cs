namespace Scribeline.Engine.Air;

/// <summary>
/// A process of unit variance with the Dryden spectrum across the path, stepped exactly. The shaping filter
/// (1 + √3 L s)/(1 + L s)² driven by white noise is split into x1 = 1/(1 + Ls) and x2 = 1/(1 + Ls)²; with d = step/L
/// x1' = e^-d x1, x2' = e^-d (x2 + d x1), plus noise of covariance ∫₀^d e^-2s [1, s; s, s²] ds.
/// The value √3 x1 + (1 - √3) x2 then has the autocorrelation e^-d (1 - d/2).
/// </summary>
internal readonly record struct DrydenAcross(double X1, double X2)
{
    private static readonly double Root3 = Math.Sqrt(3);

    public double Value => (Root3 * X1) + ((1 - Root3) * X2);

    /// <param name="d">Step over length scale; infinite draws the stationary state.</param>
    /// <param name="n1">Standard normal.</param>
    /// <param name="n2">Standard normal.</param>
    public DrydenAcross Step(double d, double n1, double n2)
    {
        if (double.IsPositiveInfinity(d)) return Add(0, 0, 0.5, 0.25, 0.25, n1, n2);
        var (e, e2) = (Math.Exp(-d), Math.Exp(-2 * d));
        return Add(
            e * X1,
            e * (X2 + (d * X1)),
            (1 - e2) / 2,
            (1 - (e2 * (1 + (2 * d)))) / 4,
            (1 - (e2 * (1 + (2 * d) + (2 * d * d)))) / 4,
            n1,
            n2);
    }

    private static DrydenAcross Add(double x1, double x2, double q11, double q12, double q22, double n1, double n2)
    {
        var l11 = Math.Sqrt(q11);
        var l21 = q12 / l11;
        return new(x1 + (l11 * n1), x2 + (l21 * n1) + (Math.Sqrt(Math.Max(q22 - (l21 * l21), 0)) * n2));
    }
}
