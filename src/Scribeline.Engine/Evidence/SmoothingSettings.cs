namespace Scribeline.Engine.Evidence;

/// <summary>How a flight is smoothed.</summary>
/// <param name="HeightSigma">Standard error of a height from pressure, m.</param>
/// <param name="AccelerationSigma">Standard error of an acceleration, m/s².</param>
/// <param name="Jerk">Density of the jerk's noise, m²/s⁵: common practice is 500 to 2000 under thrust, 1 to 50 under a canopy.</param>
public sealed record SmoothingSettings(double HeightSigma, double AccelerationSigma, double Jerk)
{
    /// <summary>Density of the jerk's noise in a quiet descent, m²/s⁵; the same as <see cref="Jerk"/> where none is given.</summary>
    public double? QuietJerk { get; init; }

    /// <summary>Spans of time in which the descent is quiet, s.</summary>
    public Func<double, bool> Quiet { get; init; } = _ => false;

    /// <summary>Time by which the pressure at the altimeter is behind that outside, s.</summary>
    public double PortLag { get; init; }

    /// <summary>Normalised innovation squared beyond which a height is left out: 25 is five standard deviations.</summary>
    public double Gate { get; init; } = 25;

    /// <summary>Heights left out one after the other, after which the next is taken whatever it says; common practice.</summary>
    public int MostLeftOut { get; init; } = 5;

    /// <summary>Between these Mach numbers shocks cross the ports (Gracey, NASA RP-1046, 1980), and heights count less.</summary>
    public (double From, double To) Transonic { get; init; } = (0.8, 1.25);

    /// <summary>Factor on the error of heights there; common practice.</summary>
    public double TransonicFactor { get; init; } = 10;

    /// <summary>Speed of sound, m/s, at a height above the pad, m.</summary>
    public Func<double, double> SoundSpeed { get; init; } = _ => 340.294;
}
