namespace Scribeline.Engine.Air;

/// <summary>
/// One-sided spatial spectra of turbulence, (m/s)²/(rad/m), by wave number Ω in rad/m; the integral over Ω is σ².
/// Source: MIL-F-8785C (1980), 3.7.1; the von Kármán forms from memory.
/// </summary>
public static class GustSpectrum
{
    /// <summary>Dryden, along the path: σ² (2L/π)/(1 + (LΩ)²).</summary>
    public static double DrydenAlong(double sigma, double L, double omega) =>
        sigma * sigma * 2 * L / Math.PI / (1 + Math.Pow(L * omega, 2));

    /// <summary>Dryden, across the path: σ² (L/π)(1 + 3(LΩ)²)/(1 + (LΩ)²)².</summary>
    public static double DrydenAcross(double sigma, double L, double omega)
    {
        var x2 = Math.Pow(L * omega, 2);
        return sigma * sigma * L / Math.PI * (1 + (3 * x2)) / Math.Pow(1 + x2, 2);
    }

    /// <summary>Von Kármán, along the path: σ² (2L/π)/(1 + (1.339 LΩ)²)^(5/6).</summary>
    public static double VonKarmanAlong(double sigma, double L, double omega) =>
        sigma * sigma * 2 * L / Math.PI / Math.Pow(1 + Math.Pow(1.339 * L * omega, 2), 5.0 / 6);

    /// <summary>Von Kármán, across the path: σ² (L/π)(1 + 8/3 (1.339 LΩ)²)/(1 + (1.339 LΩ)²)^(11/6).</summary>
    public static double VonKarmanAcross(double sigma, double L, double omega)
    {
        var x2 = Math.Pow(1.339 * L * omega, 2);
        return sigma * sigma * L / Math.PI * (1 + (8.0 / 3 * x2)) / Math.Pow(1 + x2, 11.0 / 6);
    }
}
