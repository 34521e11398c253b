namespace Scribeline.Engine.Recovery;

/// <summary>The jerk as lines run taut and the canopy takes the speed of its load: F = Δv √(k μ), a spring between two masses. SI.</summary>
public static class Snatch
{
    /// <summary>Stiffness of lines side by side, N/m: N EA/ls, EA the strength of one over its stretch at break.</summary>
    /// <param name="lines">N.</param>
    /// <param name="strength">Breaking load of one, N.</param>
    /// <param name="stretch">At break, as a share of the length.</param>
    /// <param name="length">ls, m.</param>
    public static double Stiffness(int lines, double strength, double stretch, double length) => lines * strength / stretch / length;

    /// <summary>Stiffness of two lengths one behind the other, N/m.</summary>
    /// <param name="one">N/m.</param>
    /// <param name="other">N/m.</param>
    public static double InSeries(double one, double other) => 1 / ((1 / one) + (1 / other));

    /// <summary>Peak force, N.</summary>
    /// <param name="difference">Δv: of the speeds as the lines run taut, m/s.</param>
    /// <param name="stiffness">k, N/m.</param>
    /// <param name="canopy">Mass that is jerked first, kg.</param>
    /// <param name="body">Mass behind it, kg.</param>
    public static double Force(double difference, double stiffness, double canopy, double body) =>
        difference * Math.Sqrt(stiffness * canopy * body / (canopy + body));
}
