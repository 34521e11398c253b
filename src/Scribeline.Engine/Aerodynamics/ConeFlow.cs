namespace Scribeline.Engine.Aerodynamics;

/// <summary>Flow about a cone at zero incidence.</summary>
/// <param name="ShockAngle">rad.</param>
/// <param name="SurfaceMach">Mach number on the surface.</param>
/// <param name="PressureRatio">p/p∞ on the surface.</param>
/// <param name="PressureCoefficient">C_p on the surface: the wave drag on base area.</param>
public readonly record struct ConeSolution(double ShockAngle, double SurfaceMach, double PressureRatio, double PressureCoefficient);

/// <summary>
/// Sharp cones in supersonic flow: the Taylor–Maccoll equation (Proc. R. Soc. A 139, 1933) integrated from the shock to the
/// surface, γ = 1.4. Velocities are over the greatest velocity.
/// </summary>
public static class ConeFlow
{
    private const double StepRatio = 0.02;
    private const double Smallest = 1e-3;
    private const double Faintest = 1e-7;

    /// <summary>The attached (weak) solution, or null where the shock detaches.</summary>
    /// <param name="mach">Free stream, above 1.</param>
    /// <param name="halfAngle">rad, above 0.</param>
    public static ConeSolution? Solve(double mach, double halfAngle)
    {
        // The cone angle rises with the shock angle up to detachment, at first extremely steeply: sought over the logarithm of what the shock
        // stands above the Mach angle.
        var weakest = Math.Asin(1 / mach);
        double low = Faintest, high = low, reached = 0;
        while (reached < halfAngle)
        {
            high += 0.02;
            if (weakest + high > Math.PI / 2) return null;
            var next = March(mach, weakest + high).ConeAngle;
            if (next < reached) return null;
            if (next < halfAngle) low = high;
            reached = next;
        }
        var shock = weakest + Math.Exp(Root(
            s => March(mach, weakest + Math.Exp(s)).ConeAngle - halfAngle, Math.Log(low), low == Faintest ? -halfAngle : double.NaN, Math.Log(high)));
        return Surface(mach, shock, March(mach, shock).Velocity);
    }

    /// <summary>Zero of a rising function: false position, every third step a halving. The value at the low end may be known.</summary>
    private static double Root(Func<double, double> f, double low, double atLow, double high)
    {
        if (double.IsNaN(atLow)) atLow = f(low);
        var atHigh = f(high);
        for (var i = 1; i < 100 && high - low > 1e-12; i++)
        {
            var at = i % 3 == 0 ? (low + high) / 2 : low + (high - low) * atLow / (atLow - atHigh);
            var value = f(at);
            if (Math.Abs(value) < 1e-12) return at;
            if (value < 0) (low, atLow) = (at, value);
            else (high, atHigh) = (at, value);
        }
        return (low + high) / 2;
    }

    private static ConeSolution Surface(double mach, double shock, double velocity)
    {
        var surface = Math.Sqrt(2 / (CompressibleFlow.Gamma - 1) * velocity * velocity / (1 - velocity * velocity));
        var n2 = Math.Pow(mach * Math.Sin(shock), 2);
        var stagnation = Math.Pow(2.4 * n2 / (0.4 * n2 + 2), 3.5) * Math.Pow(2.4 / (2.8 * n2 - 0.4), 2.5);
        var ratio = stagnation * CompressibleFlow.StaticRatio(surface) / CompressibleFlow.StaticRatio(mach);
        return new(shock, surface, ratio, CompressibleFlow.PressureCoefficient(ratio, mach));
    }

    /// <summary>
    /// Integrates from the shock inwards over the polar angle and returns the cone angle, where the cross velocity vanishes, and the
    /// velocity there.
    /// </summary>
    private static (double ConeAngle, double Velocity) March(double mach, double shock)
    {
        var turning = CompressibleFlow.ShockTurning(mach, shock);
        var n = mach * Math.Sin(shock);
        var behind = Math.Sqrt((n * n + 5) / (7 * n * n - 1)) / Math.Sin(shock - turning);
        var speed = 1 / Math.Sqrt(5 / (behind * behind) + 1);
        var (r, t) = (speed * Math.Cos(shock - turning), -speed * Math.Sin(shock - turning));
        var angle = shock;
        while (angle > Smallest)
        {
            // Small steps behind the shock, where weak flows vary like a root; then in proportion to the angle, as the flow near the axis asks.
            var h = -Math.Min(StepRatio * angle, Math.Max((shock - angle) / 4, 1e-5 * shock));
            var (r1, t1) = Step(angle, r, t, h);
            if (t1 >= 0)
            {
                // Near the surface v_θ is almost linear in the angle: end with Newton steps of the same integrator.
                var part = h * t / (t - t1);
                for (var k = 0; k < 4; k++)
                {
                    var (rp, tp) = Step(angle, r, t, part);
                    var slope = Derivative(angle + part, rp, tp).Dt;
                    part -= tp / slope;
                }
                return (angle + part, Step(angle, r, t, part).R);
            }
            (angle, r, t) = (angle + h, r1, t1);
        }
        return (angle, r);
    }

    private static (double R, double T) Step(double angle, double r, double t, double h)
    {
        var a = Derivative(angle, r, t);
        var b = Derivative(angle + h / 2, r + h / 2 * a.Dr, t + h / 2 * a.Dt);
        var c = Derivative(angle + h / 2, r + h / 2 * b.Dr, t + h / 2 * b.Dt);
        var d = Derivative(angle + h, r + h * c.Dr, t + h * c.Dt);
        return (r + h / 6 * (a.Dr + 2 * b.Dr + 2 * c.Dr + d.Dr), t + h / 6 * (a.Dt + 2 * b.Dt + 2 * c.Dt + d.Dt));
    }

    private static (double Dr, double Dt) Derivative(double angle, double r, double t)
    {
        var a2 = (CompressibleFlow.Gamma - 1) / 2 * (1 - r * r - t * t);
        return (t, (t * t * r - a2 * (2 * r + t / Math.Tan(angle))) / (a2 - t * t));
    }
}
