namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// What body and fins do to each other, by the ratio τ = r_b/(r_b + s) of body radius to semi-span from the axis, 0 to 1.
/// Source: Pitts, Nielsen and Kaattari, NACA TR 1307, 1957 (from memory; the total (1+τ)² and its tables reproduce);
/// 1 + τ: Barrowman 1966 eq. 77.
/// </summary>
public static class FinInterference
{
    /// <summary>K_W(B): lift of the fins beside the body over lift of the fins alone.</summary>
    public static double OnFins(double tau) => tau < 1e-6 ? 1 + tau : Share(tau) / ((1 - tau) * (1 - tau));

    /// <summary>K_B(W): lift carried over to the body, infinitely long behind the fins, over lift of the fins alone.</summary>
    public static double OnBody(double tau)
    {
        if (tau < 1e-6) return tau;
        var edge = 1 - tau * tau;
        return (edge * edge - Share(tau)) / ((1 - tau) * (1 - tau));
    }

    /// <summary>k_W(B): lift of canted fins on a body at zero angle over lift of the fins alone (TR 1307 eq. 19).</summary>
    public static double Canted(double tau)
    {
        if (tau < 1e-3) return 1 - 0.4 * tau;
        var t = 1 / Math.Min(tau, 0.99);
        var (t2, p, m, q) = (t * t, t + 1, t - 1, t * t + 1);
        var a = Math.Asin((t2 - 1) / q);
        return (Math.PI * Math.PI * p * p / (4 * t2) + Math.PI * q * q * a / (t2 * m * m) - 2 * Math.PI * p / (t * m)
            + q * q * a * a / (t2 * m * m) - 4 * p * a / (t * m) + 8 * Math.Log(q / (2 * t)) / (m * m)) / (Math.PI * Math.PI);
    }

    /// <summary>
    /// Lift of N fins over N/2 times that of one: 1 to four fins, 0.913 for six, 0.81 for eight
    /// (MIL-HDBK-762, from memory; five and seven: 0.948 and 0.854 of the same series).
    /// </summary>
    public static double OfCount(int count) => count switch
    {
        <= 4 => 1,
        5 => 0.948,
        6 => 0.913,
        7 => 0.854,
        _ => 0.81,
    };

    private static double Share(double tau)
    {
        var t2 = tau * tau;
        var q = 1 / tau - tau;
        return 2 / Math.PI * ((1 + t2 * t2) * (Math.Atan(q / 2) / 2 + Math.PI / 4) - t2 * (q + 2 * Math.Atan(tau)));
    }
}
