namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Pressure on a thin sharp profile in plane supersonic flow, C_p = C₁η + C₂η² + C₃η³, η the slope of the surface into the stream, rad.
/// Source: Busemann's third-order theory (coefficients checked against Prandtl–Meyer flow), γ = 1.4.
/// </summary>
public static class Busemann
{
    /// <summary>C₁, C₂ and C₃ at a Mach number above 1.</summary>
    public static (double C1, double C2, double C3) Coefficients(double mach)
    {
        const double g = CompressibleFlow.Gamma;
        var m2 = mach * mach;
        var b2 = m2 - 1;
        var m4 = m2 * m2;
        return (
            2 / Math.Sqrt(b2),
            ((g + 1) * m4 - 4 * b2) / (2 * b2 * b2),
            ((g + 1) * m4 * m4 + (2 * g * g - 7 * g - 5) * m4 * m2 + 10 * (g + 1) * m4 - 12 * m2 + 8) / (6 * Math.Pow(b2, 3.5)));
    }

    /// <summary>C_p at a slope, rad, to third order.</summary>
    public static double Pressure(double mach, double slope)
    {
        var (c1, c2, c3) = Coefficients(mach);
        return slope * (c1 + slope * (c2 + slope * c3));
    }

    /// <summary>
    /// β at which the shock of a wedge of this slope detaches, by transonic similarity (M² − 1)/((γ+1) M² δ)^⅔ = 3/2^(4/3) with M² ≈ 1.
    /// The series serves from about one and a half times this value.
    /// </summary>
    public static double Detachment(double slope) => Math.Sqrt(3 / Math.Pow(2, 4.0 / 3) * Math.Pow(2.4 * Math.Abs(slope), 2.0 / 3));
}
