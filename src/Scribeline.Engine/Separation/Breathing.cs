using Scribeline.Engine.Air;

namespace Scribeline.Engine.Separation;

/// <summary>
/// Pressure in a bay that breathes through its holes while the pressure outside changes:
/// dp/dt = −k (R T/V) ṁ, ṁ = ± C_d A p Ψ/√(R T) with the higher of both pressures.
/// Solved by Alexander's two-stage L-stable Runge–Kutta method (SIAM J. Numer. Anal. 14, 1977, p. 1006), because the holes answer in
/// milliseconds to a history of minutes. Each stage is a quadratic in the root of the pressure difference, repeated until the density and
/// the expansibility of the stream agree with it.
/// </summary>
public static class Breathing
{
    private const double GasConstant = AirConstants.GasConstant;
    private static readonly double Gamma = 1 - Math.Sqrt(0.5);

    /// <summary>The pressure in the bay at each time, which begins with the pressure outside.</summary>
    /// <param name="bay">The bay.</param>
    /// <param name="times">s, ascending, at least one.</param>
    /// <param name="outside">Pressure at the holes at those times, Pa; straight lines between.</param>
    /// <returns>Pa, one per time.</returns>
    public static double[] Pressures(BreathingBay bay, IReadOnlyList<double> times, IReadOnlyList<double> outside)
    {
        var inside = new double[times.Count];
        inside[0] = outside[0];
        for (var i = 1; i < inside.Length; i++)
        {
            var step = times[i] - times[i - 1];
            var first = outside[i - 1] + (Gamma * (outside[i] - outside[i - 1]));
            var stage = Settle(bay, inside[i - 1], first, Gamma * step);
            var carried = inside[i - 1] + ((1 - Gamma) / Gamma * (stage - inside[i - 1]));

            // Where the second stage would start beyond the pressure outside, one implicit Euler step cannot overshoot it.
            var beyond = (carried - outside[i]) * (inside[i - 1] - first) < 0;
            inside[i] = beyond ? Settle(bay, inside[i - 1], outside[i], step) : Settle(bay, carried, outside[i], Gamma * step);
        }

        return inside;
    }

    /// <summary>Solves p = start + step · dp/dt(p) for p, Pa: it lies between start and the pressure outside.</summary>
    private static double Settle(BreathingBay bay, double start, double outside, double step)
    {
        var gap = Math.Abs(start - outside);
        if (bay.Area == 0 || step <= 0) return start;
        if (gap == 0) return start;
        var RT = GasConstant * bay.Temperature;
        var rate = step * bay.Exponent * RT / bay.Volume * bay.DischargeCoefficient * bay.Area * Math.Sqrt(2 / RT);
        double left = 0, upstream = Math.Max(start, outside);
        for (var i = 0; i < 60; i++)
        {
            // left + c √left = gap, with c as the stream was last.
            var c = rate * Math.Sqrt(upstream) * Orifice.Expansibility((upstream - left) / upstream, AirConstants.HeatRatio);
            var root = 2 * gap / (c + Math.Sqrt((c * c) + (4 * gap)));
            var next = root * root;
            var done = Math.Abs(next - left) <= 1e-13 * upstream;
            left = next;
            upstream = start > outside ? outside + left : outside;
            if (done) break;
        }

        return start > outside ? outside + left : outside - left;
    }
}
