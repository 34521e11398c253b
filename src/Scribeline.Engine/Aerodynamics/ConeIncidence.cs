namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Normal-force slope of a sharp cone in supersonic flow, exact to first order in the angle of attack: A. H. Stone, J. Math. Phys. 27, 1948.
/// The Taylor–Maccoll flow is disturbed as u₁ cos φ, v₁ cos φ, w₁ sin φ (radial, polar, around), γ = 1.4, velocities over the greatest
/// velocity. The shock stays a circular cone, tilted by ε of the angle; ε makes the flow follow the surface.
/// </summary>
internal static class ConeIncidence
{
    private const int Steps = 80;
    private const double G = CompressibleFlow.Gamma;

    /// <summary>C_Nα on base area, 1/rad.</summary>
    /// <param name="mach">Free stream.</param>
    /// <param name="halfAngle">rad.</param>
    /// <param name="cone">The flow at zero incidence.</param>
    public static double NormalForceSlope(double mach, double halfAngle, in ConeSolution cone)
    {
        var fixedShock = Behind(mach, cone.ShockAngle, 0);
        var tilted = Behind(mach, cone.ShockAngle, 1);
        var a = ToSurface(fixedShock, cone.ShockAngle, halfAngle);
        var b = ToSurface(tilted, cone.ShockAngle, halfAngle);
        var tilt = a.V1 / (a.V1 - b.V1);
        var pressure = a.Pressure + tilt * (b.Pressure - a.Pressure);
        return -G * cone.PressureRatio * pressure / (G * mach * mach * Math.Tan(halfAngle));
    }

    /// <summary>Just behind the shock tilted by ε of the angle: jump conditions to first order, carried back to the undisturbed shock.</summary>
    private static State Behind(double mach, double shock, double tilt)
    {
        var speed = mach / Math.Sqrt(mach * mach + 5);
        var (sin, cos) = Math.SinCos(shock);
        var (u0, n1) = (speed * cos, -speed * sin);
        const double k = (G - 1) / (G + 1);
        var v0 = k * (1 - u0 * u0) / n1;
        var (du, dv) = (speed * sin * (1 - tilt), speed * cos * (1 - tilt));
        var dn2 = -k * (2 * u0 * du / n1 + (1 - u0 * u0) * dv / (n1 * n1));
        // Entropy over c_p: ln(p)/γ − ln(ρ), by the normal Mach number.
        var m2 = Math.Pow(mach * sin, 2);
        var dm2 = 2 * m2 * dv / n1;
        var entropy = (2 * G / (2 * G * m2 - (G - 1)) / G - 1 / m2 + (G - 1) / ((G - 1) * m2 + 2)) * dm2;
        var slope = Polar(shock, u0, v0);
        return new(u0, v0, du - tilt * v0, dn2 - tilt * slope, -speed + (v0 - n1) * tilt / sin, entropy);
    }

    /// <summary>v₁ on the surface and p₁/ρ₀ over a² there.</summary>
    private static (double V1, double Pressure) ToSurface(State start, double shock, double surface)
    {
        // θ = θ_c + Δ sin²(πt/2) with falling t: the steps shrink towards the shock and towards the surface, where w₁ settles like the root
        // of the distance.
        var delta = shock - surface;
        var y = start;
        for (var i = Steps; i > 1; i--)
        {
            var h = -1.0 / Steps;
            var t = (double)i / Steps;
            State F(double at, in State s)
            {
                var (sin, cos) = Math.SinCos(Math.PI / 2 * at);
                return Derivative(surface + delta * sin * sin, s) * (Math.PI * delta * sin * cos);
            }
            var a = F(t, y);
            var b = F(t + h / 2, y + a * (h / 2));
            var c = F(t + h / 2, y + b * (h / 2));
            var d = F(t + h, y + c * h);
            y += (a + b * 2 + c * 2 + d) * (h / 6);
        }
        var left = delta * Math.Pow(Math.Sin(Math.PI / 2 / Steps), 2);
        var end = y + Derivative(surface + left, y) * -left;
        return (end.V1, end.Relative / Sound(end));
    }

    private static double Sound(in State s) => (G - 1) / 2 * (1 - s.U * s.U - s.V * s.V);

    private static double Polar(double angle, double u, double v)
    {
        var a2 = (G - 1) / 2 * (1 - u * u - v * v);
        return (v * v * u - a2 * (2 * u + v / Math.Tan(angle))) / (a2 - v * v);
    }

    private static State Derivative(double angle, in State s)
    {
        var (sin, cot) = (Math.Sin(angle), 1 / Math.Tan(angle));
        var a2 = Sound(s);
        var dv = Polar(angle, s.U, s.V);
        var turn = s.V * (s.U + dv);
        var da2 = -(G - 1) * turn;
        var p = s.Relative;
        var density = p / a2 - s.Entropy;
        // Continuity, with v₁′ inside ρ₁′ brought to the left.
        var rest = s.V * s.U1 + (s.U + dv) * s.V1 + da2 * s.Entropy / (G - 1);
        var dp = -rest / a2 - p * da2 / (a2 * a2);
        var flux = s.V1 + density * s.V;
        var dv1 = -(dp * s.V + density * dv + (cot - turn / a2) * flux + 2 * (s.U1 + density * s.U) + s.W1 / sin) / (1 - s.V * s.V / a2);
        var dw1 = (p / sin - s.U * s.W1 - s.V * s.W1 * cot) / s.V;
        return new(s.V, dv, s.V1, dv1, dw1, 0);
    }

    /// <summary>Undisturbed radial and polar velocity, their disturbances, the one around, and the entropy's over c_p.</summary>
    private readonly record struct State(double U, double V, double U1, double V1, double W1, double Entropy)
    {
        /// <summary>p₁/ρ₀, from constant total enthalpy.</summary>
        public double Relative => -(U * U1 + V * V1) - (G - 1) / 2 * (1 - U * U - V * V) * Entropy / (G - 1);

        public static State operator +(State a, State b) =>
            new(a.U + b.U, a.V + b.V, a.U1 + b.U1, a.V1 + b.V1, a.W1 + b.W1, a.Entropy + b.Entropy);

        public static State operator *(State a, double k) => new(a.U * k, a.V * k, a.U1 * k, a.V1 * k, a.W1 * k, a.Entropy * k);
    }
}
