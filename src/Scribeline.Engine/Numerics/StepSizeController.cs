namespace Scribeline.Engine.Numerics;

/// <summary>
/// Proportional-integral choice of the next step from this error and the one before: h 0.9 err_n^-(1/q - 0.75 beta)
/// err_(n-1)^beta with beta = 0.04. Hairer, Norsett and Wanner I, section II.4 and equation IV.2.43 (Gustafsson 1991),
/// with the constants of their program of the 5(4) pair.
/// </summary>
/// <param name="order">Order q of the solution carried on.</param>
internal struct StepSizeController(int order)
{
    private const double Beta = 0.04;
    private const double Safety = 0.9;
    private const double LeastFactor = 0.2;
    private const double GreatestFactor = 10;

    // A floor under the remembered error: one lucky step must not throttle the next.
    private const double LeastError = 1e-4;

    private readonly double exponent = 1.0 / order - 0.75 * Beta;
    private double previous = LeastError;
    private bool rejected;

    /// <summary>Forgets the past, as after a discontinuity.</summary>
    public void Reset()
    {
        previous = LeastError;
        rejected = false;
    }

    /// <summary>Factor on the step after one whose error was at most 1.</summary>
    public double Accept(double error)
    {
        var factor = Safety * Math.Pow(previous, Beta) / Math.Pow(error, exponent);
        factor = Math.Clamp(factor, LeastFactor, rejected ? 1 : GreatestFactor);
        previous = Math.Max(error, LeastError);
        rejected = false;
        return factor;
    }

    /// <summary>Factor on a step whose error was above 1 or not a number.</summary>
    public double Reject(double error)
    {
        rejected = true;
        return double.IsFinite(error) ? Math.Max(LeastFactor, Safety / Math.Pow(error, exponent)) : LeastFactor;
    }
}
