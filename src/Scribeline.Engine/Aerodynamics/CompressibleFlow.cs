namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Relations of compressible flow of a perfect gas, γ = 1.4. Angles in radians, pressures as ratios.
/// Source: NACA Report 1135, 1953.
/// </summary>
public static class CompressibleFlow
{
    internal const double Gamma = 1.4;

    /// <summary>Prandtl–Meyer angle ν, rad, at Mach 1 and above (eq. 171c).</summary>
    public static double PrandtlMeyer(double mach)
    {
        var b = Math.Sqrt(Math.Max(0, mach * mach - 1));
        var k = Math.Sqrt((Gamma + 1) / (Gamma - 1));
        return k * Math.Atan(b / k) - Math.Atan(b);
    }

    /// <summary>Mach number of a Prandtl–Meyer angle, rad; held at Mach 60 near the limit of 130.45°.</summary>
    public static double MachOf(double prandtlMeyer)
    {
        const double limit = 2.2768;
        var nu = Math.Clamp(prandtlMeyer, 0, 2.2);
        // Hall's rational fit (1975) starts Newton within 0.02 %.
        var y = Math.Pow(nu / limit, 2.0 / 3);
        var mach = (1 + y * (1.3604 + y * (0.0962 - 0.5127 * y))) / (1 - y * (0.6722 + 0.3278 * y));
        for (var i = 0; i < 3 && nu > 0; i++)
        {
            mach = Math.Max(1, mach);
            var m2 = mach * mach;
            var slope = Math.Sqrt(Math.Max(1e-12, m2 - 1)) / (mach * (1 + 0.2 * m2));
            mach += (nu - PrandtlMeyer(mach)) / slope;
        }
        return Math.Clamp(mach, 1, 60);
    }

    /// <summary>Static over stagnation pressure (eq. 44).</summary>
    public static double StaticRatio(double mach) => Math.Pow(1 + 0.2 * mach * mach, -3.5);

    /// <summary>C_p of a pressure ratio p/p∞ at a free-stream Mach number above 0.</summary>
    public static double PressureCoefficient(double ratio, double mach) => (ratio - 1) / (0.7 * mach * mach);

    /// <summary>C_p behind an expansion through an angle, rad, from the free stream (negative).</summary>
    public static double ExpansionPressure(double mach, double angle) =>
        PressureCoefficient(StaticRatio(MachOf(PrandtlMeyer(mach) + angle)) / StaticRatio(mach), mach);

    /// <summary>C_p at the stagnation point, behind the normal shock where supersonic; 1 at Mach 0.</summary>
    public static double StagnationPressure(double mach)
    {
        if (mach < 1e-3) return 1;
        var m2 = mach * mach;
        if (mach <= 1) return PressureCoefficient(Math.Pow(1 + 0.2 * m2, 3.5), mach);
        return PressureCoefficient(Math.Pow(1.2 * m2, 3.5) * Math.Pow(2.4 / (2.8 * m2 - 0.4), 2.5), mach);
    }

    /// <summary>p/p∞ behind an oblique shock at a shock angle, rad.</summary>
    public static double ShockPressure(double mach, double shockAngle)
    {
        var n = mach * Math.Sin(shockAngle);
        return 1 + 2.8 / 2.4 * (n * n - 1);
    }

    /// <summary>Flow turned by an oblique shock, rad (eq. 138).</summary>
    public static double ShockTurning(double mach, double shockAngle)
    {
        var n2 = Math.Pow(mach * Math.Sin(shockAngle), 2);
        return Math.Atan(2 / Math.Tan(shockAngle) * (n2 - 1) / (mach * mach * (Gamma + Math.Cos(2 * shockAngle)) + 2));
    }

    /// <summary>Angle of the weak oblique shock that turns the flow by an angle, rad; null where the shock detaches.</summary>
    public static double? WeakShock(double mach, double turning)
    {
        var low = Math.Asin(1 / mach);
        // Greatest turning (eq. 168).
        var m2 = mach * mach;
        var high = Math.Asin(Math.Sqrt((2.4 * m2 - 4 + Math.Sqrt(2.4 * (2.4 * m2 * m2 + 1.6 * m2 + 16))) / (5.6 * m2)));
        if (turning > ShockTurning(mach, high)) return null;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (ShockTurning(mach, middle) < turning) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }
}
