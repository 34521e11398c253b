using static System.Math;

namespace Scribeline.Engine.Separation;

/// <summary>
/// Air through a sharp hole between two reservoirs: isentropic to the throat, choked below the critical pressure ratio.
/// Source: Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, vol. 1, ch. 4 (from memory).
/// </summary>
public static class Orifice
{
    /// <summary>
    /// Discharge coefficient of a sharp round hole: 0.56 to 0.79 (Weisbach, in Encyclopaedia Britannica, 11th ed., "Hydraulics" § 63).
    /// An air stream across it lowers the value; 0.6 is taken, 0.4 for the low case (assumption).
    /// </summary>
    public const double SharpHole = 0.6;

    /// <summary>Mass flow over C_d A p/√(R T): √(2γ/(γ−1) (π^(2/γ) − π^((γ+1)/γ))), constant once choked.</summary>
    /// <param name="ratio">π: pressure behind over pressure ahead, 0 to 1.</param>
    /// <param name="heatRatio">γ, more than 1.</param>
    public static double FlowFunction(double ratio, double heatRatio)
    {
        var g = heatRatio;
        var pi = Max(ratio, Pow(2 / (g + 1), g / (g - 1)));
        return Sqrt(Max(0, 2 * g / (g - 1) * (Pow(pi, 2 / g) - Pow(pi, (g + 1) / g))));
    }

    /// <summary>
    /// The same over the flow of a fluid that keeps its density, √(2 (1 − π)): 1 for equal pressures, 0.484 for air into a vacuum.
    /// </summary>
    /// <param name="ratio">π, 0 to 1.</param>
    /// <param name="heatRatio">γ.</param>
    public static double Expansibility(double ratio, double heatRatio)
    {
        var gap = 1 - ratio;

        // Close to 1 the difference of powers loses its digits; the series does not: 1 − 3 (1 − π)/(4γ).
        return gap < 1e-5 ? 1 - (0.75 * gap / heatRatio) : FlowFunction(ratio, heatRatio) / Sqrt(2 * gap);
    }
}
