namespace Scribeline.Engine.Flight;

/// <summary>
/// How a canopy's drag area grows. CdS(τ) = CdS [(1 − √i) τ^(j/2) + √i]², τ = t / t_f.
/// Source: Ludtke, NOLTR 73-226 (1973) for j = 6 (from memory); Knacke, Parachute Recovery Systems Design Manual, 1992, 5.4, for n.
/// </summary>
internal static class Inflation
{
    /// <summary>
    /// Fill time n D0 / v1, s. A canopy let go nearly at rest, as at apogee, falls into its filling: v1 is not taken below
    /// √(g n D0 / 2), at which n D0 / v1 is the time of a free fall through the fill distance n D0.
    /// </summary>
    /// <param name="canopy">Its fill constant and nominal diameter.</param>
    /// <param name="speed">v1, through the air at line stretch, m/s.</param>
    /// <param name="gravity">m/s².</param>
    public static double FillTime(FlightCanopy canopy, double speed, double gravity)
    {
        double distance = canopy.FillConstant * canopy.NominalDiameter;
        return FillTimeOver(distance, speed, gravity);
    }

    /// <summary>The same by the fill distance n D0, m.</summary>
    public static double FillTimeOver(double distance, double speed, double gravity) =>
        distance == 0 ? 0 : distance / Math.Max(speed, Math.Sqrt(gravity * distance / 2));

    /// <summary>Drag area, m², a time after line stretch.</summary>
    public static double DragArea(FlightCanopy canopy, double sinceLineStretch, double fillTime)
    {
        if (sinceLineStretch < 0) return 0;
        if (sinceLineStretch >= fillTime) return canopy.DragArea;
        return Grown(canopy.InitialFraction * canopy.DragArea, canopy.DragArea, sinceLineStretch / fillTime, canopy.GrowthExponent);
    }

    /// <summary>Drag area, m², on the way from one to another.</summary>
    /// <param name="from">m².</param>
    /// <param name="to">m².</param>
    /// <param name="share">τ: of the fill time, 0 to 1.</param>
    /// <param name="exponent">j.</param>
    public static double Grown(double from, double to, double share, double exponent)
    {
        double start = Math.Sqrt(from);
        double root = (Math.Sqrt(to) - start) * Math.Pow(share, exponent / 2) + start;
        return root * root;
    }
}
