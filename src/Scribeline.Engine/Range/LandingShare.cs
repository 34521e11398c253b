using MathNet.Numerics.Distributions;

namespace Scribeline.Engine.Range;

/// <summary>
/// A share counted among independent flights, with its interval of confidence: exact for every share, none included
/// (C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404). Says how far chance alone may have led the count astray, nothing of the model.
/// </summary>
/// <param name="Count">Flights that did it, 0 or more.</param>
/// <param name="Of">Flights, 1 or more.</param>
public readonly record struct LandingShare(int Count, int Of)
{
    /// <summary>Confidence of <see cref="AtMost"/>; of the two bounds together it is 90 %.</summary>
    public const double Confidence = 0.95;

    /// <summary>Counted.</summary>
    public double Value => (double)Count / Of;

    /// <summary>Not more than this with 95 % confidence.</summary>
    public double AtMost => Count == Of ? 1 : Beta.InvCDF(Count + 1, Of - Count, Confidence);

    /// <summary>Not less than this with 95 % confidence.</summary>
    public double AtLeast => Count == 0 ? 0 : Beta.InvCDF(Count, Of - Count + 1, 1 - Confidence);

    /// <summary>√(p(1 − p)/N).</summary>
    public double StandardError => Math.Sqrt(Value * (1 - Value) / Of);
}
