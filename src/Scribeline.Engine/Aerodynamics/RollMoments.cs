namespace Scribeline.Engine.Aerodynamics;

/// <summary>Roll moments of canted fins and their damping (Barrowman 1967), per rad and per p d/2V.</summary>
internal static class RollMoments
{
    /// <summary>C_l at zero roll rate: Σ N C_Nα,1 k_W(B) (ȳ + r_b)/d δ.</summary>
    public static double Forcing(RocketGeometry rocket, FinLoad[] single) => rocket.Fins.Zip(single, (f, one) =>
        f.Set.Cant * ForcingSlope(rocket, f, one.Slope) * FinInterference.Canted(f.Tau)).Sum();

    /// <summary>C_lδ of one set without the body's factor.</summary>
    public static double ForcingSlope(RocketGeometry rocket, FinGeometry fins, double oneFin) =>
        fins.Set.Count * oneFin * (fins.Planform.SpanwiseCentre + fins.Set.BodyRadius) / rocket.Diameter;

    /// <summary>C_lp: −2 N (C_Nα,1 A/A_f) ∫c (r_b + y)² dy/(A d²).</summary>
    public static double Damping(RocketGeometry rocket, FinLoad[] single) =>
        rocket.Fins.Zip(single, (f, one) => DampingOf(rocket, f, one.Slope)).Sum();

    /// <summary>C_lp of one set.</summary>
    public static double DampingOf(RocketGeometry rocket, FinGeometry fins, double oneFin) =>
        -2 * fins.Set.Count * oneFin / fins.Planform.Area * fins.Planform.RollIntegral(fins.Set.BodyRadius) / (rocket.Diameter * rocket.Diameter);
}
