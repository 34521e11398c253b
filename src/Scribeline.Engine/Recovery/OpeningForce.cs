namespace Scribeline.Engine.Recovery;

/// <summary>
/// Peak opening force by the handbook: F = CdS q1 Cx X1, q1 = ½ρv1² at line stretch (Knacke, Parachute Recovery Systems Design Manual, 1991,
/// 5.4, from memory). X1 is the closed solution of a mass slowed by a drag area that grows as (t/t_f)^n, without gravity and without added
/// mass (Doherr, AIAA 2003-2173, treats the same theory). SI.
/// </summary>
/// <param name="DragArea">CdS, m².</param>
/// <param name="Speed">v1, m/s.</param>
/// <param name="Density">ρ, kg/m³.</param>
/// <param name="Mass">Of everything that hangs on it, kg.</param>
/// <param name="FillTime">t_f, s.</param>
/// <param name="Coefficient">Cx: opening-force coefficient at infinite mass.</param>
/// <param name="Growth">n: 1 ribbon and ringslot, 2 solid cloth, 1/2 where the area rises early (from memory).</param>
public readonly record struct OpeningForce(double DragArea, double Speed, double Density, double Mass, double FillTime, double Coefficient, double Growth)
{
    /// <summary>q1, Pa.</summary>
    public double DynamicPressure => Density * Speed * Speed / 2;

    /// <summary>A = 2 m/(CdS ρ v1 t_f).</summary>
    public double BallisticParameter => 2 * Mass / (DragArea * Density * Speed * FillTime);

    /// <summary>X1: force over that at infinite mass.</summary>
    public double Reduction => ReductionAt(BallisticParameter, Growth);

    /// <summary>Peak force, N.</summary>
    public double Peak => AtInfiniteMass * Reduction;

    /// <summary>The same if the load did not slow at all, N.</summary>
    public double AtInfiniteMass => DragArea * DynamicPressure * Coefficient;

    /// <summary>Fill time, s: n D0/v1.</summary>
    /// <param name="fillConstant">n: fill distance in nominal diameters.</param>
    /// <param name="nominalDiameter">D0, m.</param>
    /// <param name="speed">v1, m/s.</param>
    public static double FillTimeOf(double fillConstant, double nominalDiameter, double speed) => fillConstant * nominalDiameter / speed;

    /// <summary>Fill time by the velocity-power form, s: 4.0 D0/v^0.85 in feet and feet per second, for a flat circular canopy of standard porosity (from memory).</summary>
    /// <param name="nominalDiameter">D0, m.</param>
    /// <param name="speed">v1, m/s.</param>
    public static double FillTimeByPower(double nominalDiameter, double speed) => 4.0 * (nominalDiameter / 0.3048) / Math.Pow(speed / 0.3048, 0.85);

    /// <summary>G = g t_f/v1: above 0.1 on a steep path gravity adds to the force, and the form without it is unsafe.</summary>
    /// <param name="gravity">m/s².</param>
    public double GravityNumber(double gravity = 9.80665) => gravity * FillTime / Speed;

    /// <summary>A from which the force peaks at full inflation: (n+2)/(n(n+1)).</summary>
    /// <param name="growth">n.</param>
    public static double TurningPoint(double growth) => (growth + 2) / (growth * (growth + 1));

    /// <summary>X1 at a ballistic parameter.</summary>
    /// <param name="ballistic">A, more than 0.</param>
    /// <param name="growth">n.</param>
    public static double ReductionAt(double ballistic, double growth)
    {
        var (A, n) = (ballistic, growth);
        return A < TurningPoint(n)
            ? Math.Pow((n + 2) / (2 * (n + 1)), 2) * Math.Pow(n * (n + 1) * A / (n + 2), n / (n + 1))
            : Math.Pow(1 + (1 / (A * (n + 1))), -2);
    }
}
