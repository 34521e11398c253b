namespace Scribeline.Engine.Separation;

/// <summary>
/// How several pins share the load of one joint. No scatter of nylon screws in this use is published; a coefficient of variation of 0.10
/// is an assumption (0.08 to 0.15 is plausible).
/// </summary>
public static class PinSharing
{
    /// <summary>Coefficient of variation taken where nothing better is known: an assumption.</summary>
    public const double UsualScatter = 0.10;

    /// <summary>δ_u: travel over which a nylon pin takes up its full force, m: an assumption.</summary>
    public const double UsualYield = 0.3e-3;

    /// <summary>δ_f: travel at which it is cut, m: an assumption.</summary>
    public const double UsualFailure = 0.6e-3;

    /// <summary>Quantile of the normal distribution for one side of 5 %.</summary>
    private const double FivePerCent = 1.645;

    /// <summary>Force that 95 of 100 joints exceed, N: n F - 1.645 √n c F, pins independent and equally loaded.</summary>
    /// <param name="pin">Mean force of one pin, N.</param>
    /// <param name="count">Pins.</param>
    /// <param name="scatter">Coefficient of variation.</param>
    public static double Weak(double pin, int count, double scatter = UsualScatter) =>
        (count * pin) - (FivePerCent * Math.Sqrt(count) * scatter * pin);

    /// <summary>Force that 95 of 100 joints stay below, N: n F + 1.645 √n c F.</summary>
    /// <inheritdoc cref="Weak"/>
    public static double Strong(double pin, int count, double scatter = UsualScatter) =>
        (count * pin) + (FivePerCent * Math.Sqrt(count) * scatter * pin);

    /// <summary>
    /// Greatest force of a joint whose pins take up load one after the other, N: the greatest over x of Σ F_i min((x - g_i)/δ_u, 1),
    /// each pin counting while 0 &lt; x - g_i ≤ δ_f. Plays that differ by more than δ_f leave one pin at a time to hold: the joint unzips.
    /// </summary>
    /// <param name="forces">Strength of each pin, N.</param>
    /// <param name="plays">Play of each before it bears, m.</param>
    /// <param name="yield">δ_u: travel to its full force, m.</param>
    /// <param name="failure">δ_f: travel at which it is cut, m, at least δ_u.</param>
    public static double JointPeak(ReadOnlySpan<double> forces, ReadOnlySpan<double> plays, double yield, double failure)
    {
        double peak = 0;
        foreach (var play in plays)
        {
            // A rising polygon with drops: its peaks lie where a pin reaches its full force or is about to be cut.
            peak = Math.Max(peak, Math.Max(At(play + yield, forces, plays, yield, failure), At(play + failure, forces, plays, yield, failure)));
        }

        return peak;
    }

    /// <summary>
    /// Share of the pins' joint strength that is left when their plays differ, 0 to 1: the last pin bears when the first has travelled the
    /// whole play, the others evenly between.
    /// </summary>
    /// <param name="count">Pins, 1 or more.</param>
    /// <param name="play">Hole less screw, m, 0 or more.</param>
    public static double ShareUnderPlay(int count, double play)
    {
        if (count == 1 || play <= 0) return 1;
        Span<double> forces = stackalloc double[count], plays = stackalloc double[count];
        for (var i = 0; i < count; i++) (forces[i], plays[i]) = (1.0 / count, play * i / (count - 1));
        return JointPeak(forces, plays, UsualYield, UsualFailure);
    }

    /// <summary>Force of the most loaded of n ≥ 3 evenly spaced pins, N: F/n + 2 M/(n r).</summary>
    /// <param name="force">Tension of the joint, N.</param>
    /// <param name="moment">Bending moment, N·m.</param>
    /// <param name="count">Pins.</param>
    /// <param name="radius">Axis to pin, m.</param>
    public static double MostLoaded(double force, double moment, int count, double radius) => (force / count) + (2 * moment / (count * radius));

    /// <summary>
    /// Force that cuts a pin across a gap between the shear planes, N: (F/(A τ))² + (16 F g/(π d³ σ_b))² = 1. A snug hole has no gap.
    /// </summary>
    /// <param name="thread">Of the pin; d and A are those of its root.</param>
    /// <param name="shearStrength">τ, Pa.</param>
    /// <param name="gap">g, m.</param>
    /// <param name="bendingStrength">σ_b, Pa; about 1.5 times the yield stress, 125 MPa for nylon (assumption).</param>
    public static double AcrossGap(ThreadGeometry thread, double shearStrength, double gap, double bendingStrength = 125e6)
    {
        var shear = 1 / (thread.MinorArea * shearStrength);
        var bending = 16 * gap / (Math.PI * Math.Pow(thread.MinorDiameter, 3) * bendingStrength);
        return 1 / Math.Sqrt((shear * shear) + (bending * bending));
    }

    private static double At(double x, ReadOnlySpan<double> forces, ReadOnlySpan<double> plays, double yield, double failure)
    {
        double sum = 0;
        for (var i = 0; i < forces.Length; i++)
        {
            var travel = x - plays[i];
            if (travel > 0 && travel <= failure * (1 + 1e-12)) sum += forces[i] * Math.Min(travel / yield, 1);
        }

        return sum;
    }
}
