namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Cone flow for the build-up: Taylor–Maccoll solutions over Mach number and half-angle, made once. Between them C_p/sin² is
/// interpolated, which varies slowly; small cones and those that would detach are held at the nearest solution.
/// </summary>
internal static class ConeTable
{
    private static readonly double[] Angles = [.. new[] { 1.0, 2, 4, 6, 8, 10, 12.5, 15, 17.5, 20, 22.5, 25, 27.5, 30, 33, 36, 40, 45, 50 }
        .Select(d => d * Math.PI / 180)];

    private static readonly double[] Machs = [1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.8, 2, 2.25, 2.5, 3, 3.5, 4, 5, 6];

    private static readonly Lazy<(Curve Pressure, Curve Mach, Curve Slope, double Steepest)[]> Rows = new(() => [.. Machs.Select(Row)]);

    /// <summary>C_p, surface Mach number and C_Nα of a cone; Mach numbers are held within 1.1 to 6, angles below detachment.</summary>
    public static (double Pressure, double SurfaceMach, double NormalForceSlope) At(double mach, double halfAngle)
    {
        var m = Math.Clamp(mach, Machs[0], Machs[^1]);
        var i = 1;
        while (i < Machs.Length - 1 && m > Machs[i]) i++;
        static double Key(double x) => Math.Log(x * x - 1);
        var u = (Key(m) - Key(Machs[i - 1])) / (Key(Machs[i]) - Key(Machs[i - 1]));
        var (a, b) = (Value(i - 1, halfAngle), Value(i, halfAngle));
        var sine = Math.Sin(halfAngle);
        return ((a.Item1 + u * (b.Item1 - a.Item1)) * sine * sine, a.Item2 + u * (b.Item2 - a.Item2), a.Item3 + u * (b.Item3 - a.Item3));
    }

    /// <summary>Steepest tabulated attached cone at a Mach number, rad.</summary>
    public static double Steepest(double mach)
    {
        var i = 0;
        while (i < Machs.Length - 1 && mach >= Machs[i + 1]) i++;
        return Rows.Value[i].Steepest;
    }

    private static (double, double, double) Value(int row, double angle) =>
        (Rows.Value[row].Pressure.At(angle), Rows.Value[row].Mach.At(angle), Rows.Value[row].Slope.At(angle));

    private static (Curve, Curve, Curve, double) Row(double mach)
    {
        var solutions = Angles.Select(a => (Angle: a, Solution: ConeFlow.Solve(mach, a))).TakeWhile(s => s.Solution is not null).ToList();
        double[] angles = [.. solutions.Select(s => s.Angle)];
        return (
            new(angles, [.. solutions.Select(s => s.Solution!.Value.PressureCoefficient / Math.Pow(Math.Sin(s.Angle), 2))]),
            new(angles, [.. solutions.Select(s => s.Solution!.Value.SurfaceMach)]),
            // From the slender limit 2 at zero: the weakest shocks are hard on the disturbance equations.
            new(
                [0, .. angles.Skip(2)],
                [2, .. solutions.Skip(2).Select(s => ConeIncidence.NormalForceSlope(mach, s.Angle, s.Solution!.Value))]),
            angles[^1]);
    }
}
