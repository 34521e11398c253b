namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Lift that fins in supersonic flow carry over to the body: the planar model of Pitts, Nielsen and Kaattari, NACA TR 1307, 1957
/// (from memory; its integrals done numerically). The side of the body is a flat plate on which the root of each fin leaves a conical
/// field, load (4α/πβ) κ arccos[(a + τ)/(1 + a τ)] with a = tan Λ/β, κ = 1/√(1 − a²), τ = β y/x, from the leading edge, less the same from the trailing
/// edge behind its Mach line. Only what meets the body, ahead of its base, counts. For leading edges more than just supersonic.
/// </summary>
internal static class BodyCarryOver
{
    private const double SteepestEdge = 0.95;

    /// <summary>Load carried over, in units of angle times dynamic pressure: area, m², and moment about the root leading edge, m³.</summary>
    /// <param name="fin">Planform.</param>
    /// <param name="bodyDiameter">m.</param>
    /// <param name="afterbody">Body behind the root chord, m.</param>
    /// <param name="beta">√(M² − 1).</param>
    public static (double Area, double Moment) OfOneFin(FinPlanform fin, double bodyDiameter, double afterbody, double beta)
    {
        var length = fin.RootChord + afterbody;
        var a = Math.Clamp(fin.LeadingEdgeSweep / beta, -SteepestEdge, SteepestEdge);
        var (area, moment) = Cone(length, bodyDiameter, beta, a, 0);
        if (afterbody <= 0) return (area, moment);
        var (lost, lostMoment) = Cone(afterbody, bodyDiameter, beta, a, fin.RootChord);
        return (area - lost, moment - lostMoment);
    }

    /// <summary>Integral of the conical load over 0 ≤ x ≤ length, 0 ≤ y ≤ min(width, x/β); the apex lies at <paramref name="from"/>.</summary>
    private static (double Area, double Moment) Cone(double length, double width, double beta, double a, double from)
    {
        var kappa = 4 / (Math.PI * beta * Math.Sqrt(1 - a * a));
        double area = 0, moment = 0;
        // Along a ray τ the load is constant: x runs from the apex to the base or to the far side of the body.
        foreach (var (u, w) in GaussRule.Twenty)
        {
            // τ = 1 − u² smooths the square root of the arc cosine at the Mach line.
            var tau = 1 - u * u;
            var load = kappa * Math.Acos(Math.Min(1, (a + tau) / (1 + a * tau)));
            var reach = Math.Min(length, tau > 0 ? width * beta / tau : length);
            var ray = w * 2 * u / beta;
            area += load * ray * reach * reach / 2;
            moment += load * ray * (from * reach * reach / 2 + reach * reach * reach / 3);
        }
        return (area, moment);
    }
}
