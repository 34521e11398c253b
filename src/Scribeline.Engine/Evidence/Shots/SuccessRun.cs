namespace Scribeline.Engine.Evidence.Shots;

/// <summary>
/// What a run of tests without a failure shows by itself, nothing else being known: with n passes in n tests, reliability is at least
/// R with confidence C where Rⁿ = 1 - C (Clopper and Pearson, Biometrika 26 (1934) 404, for no failure; ISO 16269-6:2014, distribution-free).
/// </summary>
public static class SuccessRun
{
    /// <summary>Tests needed, n = ln(1 - C)/ln R, rounded up.</summary>
    /// <param name="reliability">R, between 0 and 1.</param>
    /// <param name="confidence">C, between 0 and 1.</param>
    public static int Needed(double reliability, double confidence) => (int)Math.Ceiling((Math.Log(1 - confidence) / Math.Log(reliability)) - 1e-9);

    /// <summary>Reliability shown by a run, (1 - C)^(1/n); 0 for no test.</summary>
    /// <param name="passes">n, 0 or more, without a failure.</param>
    /// <param name="confidence">C, between 0 and 1.</param>
    public static double Shown(int passes, double confidence) => passes <= 0 ? 0 : Math.Pow(1 - confidence, 1.0 / passes);
}
