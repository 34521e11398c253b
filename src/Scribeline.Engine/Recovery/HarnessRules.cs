namespace Scribeline.Engine.Recovery;

/// <summary>What a harness must be worth beyond its peak load, and how it takes up the energy of parting pieces. SI.</summary>
public static class HarnessRules
{
    /// <summary>Abrasion, moisture and fatigue each leave this share of the strength (Knacke 1991, chapter 6, from memory).</summary>
    public const double WearShare = 0.95;

    /// <summary>Share a load that is not shared evenly adds (Knacke 1991, chapter 6, from memory).</summary>
    public const double Asymmetric = 1.05;

    /// <summary>
    /// Breaking strength over peak load: SF c s/(u e o k) (Knacke 1991, chapter 6, from memory); 1.5 × 1.05 × 1.05/(0.80 × 0.95³) by default.
    /// </summary>
    /// <param name="safety">SF.</param>
    /// <param name="convergence">c = 1/cos φ of the lines.</param>
    /// <param name="joint">u: share that seams or knots leave.</param>
    public static double DesignFactor(double safety = 1.5, double convergence = 1.05, double joint = 0.80) =>
        safety * convergence * Asymmetric / (joint * WearShare * WearShare * WearShare);

    /// <summary>Length of a cord of one stiffness that holds the peak to a force, m: μ u² EA/F².</summary>
    /// <param name="speed">u: of the pieces from one another, m/s.</param>
    /// <param name="reducedMass">μ = m1 m2/(m1 + m2), kg.</param>
    /// <param name="stiffness">EA: breaking load over stretch at break, N.</param>
    /// <param name="force">F, N.</param>
    public static double LengthFor(double speed, double reducedMass, double stiffness, double force) =>
        reducedMass * speed * speed * stiffness / (force * force);

    /// <summary>Rebounds until the pieces move no faster from one another than a speed.</summary>
    /// <param name="speed">u at first, m/s.</param>
    /// <param name="slow">m/s.</param>
    /// <param name="restitution">Speed after a rebound over that before it, 0.3 to 0.6 (common practice).</param>
    public static int Rebounds(double speed, double slow, double restitution) =>
        speed <= slow ? 0 : (int)Math.Ceiling(Math.Log(slow / speed) / Math.Log(restitution));

    /// <summary>Taped bundles that take a share of an energy.</summary>
    /// <param name="energy">J.</param>
    /// <param name="share">Of it, 0 to 1.</param>
    /// <param name="force">That tears one bundle open, N.</param>
    /// <param name="length">Over which it tears, m.</param>
    public static int Bundles(double energy, double share, double force, double length) => (int)Math.Ceiling(share * energy / (force * length));
}
