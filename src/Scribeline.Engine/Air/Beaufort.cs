namespace Scribeline.Engine.Air;

/// <summary>The Beaufort scale of mean wind 10 m above ground (WMO table).</summary>
public static class Beaufort
{
    // Upper ends of forces 0 to 11 as printed, m/s to a tenth.
    private static readonly double[] Highest = [0.2, 1.5, 3.3, 5.4, 7.9, 10.7, 13.8, 17.1, 20.7, 24.4, 28.4, 32.6];

    /// <summary>Force, 0 to 12, of a mean wind in m/s (rounded to a tenth as the table is).</summary>
    public static int Force(double speed)
    {
        var tenths = Math.Round(speed, 1, MidpointRounding.AwayFromZero);
        var force = Array.FindIndex(Highest, h => tenths <= h);
        return force < 0 ? 12 : force;
    }

    /// <summary>Speed, m/s, that stands for a force: 0.836 B^1.5 (from memory).</summary>
    public static double EquivalentSpeed(double force) => 0.836 * Math.Pow(force, 1.5);
}
