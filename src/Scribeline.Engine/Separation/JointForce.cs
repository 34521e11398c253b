namespace Scribeline.Engine.Separation;

/// <summary>What a joint carries at a moment.</summary>
/// <param name="Tension">Pulls it apart when positive, pushes it together when negative, N.</param>
/// <param name="ShearY">Of what is behind on what is ahead, body axes, N.</param>
/// <param name="ShearZ">As above, N.</param>
/// <param name="BendingY">Moment of what is behind on what is ahead about the joint, body axes, N·m.</param>
/// <param name="BendingZ">As above, N·m.</param>
public readonly record struct JointForce(double Tension, double ShearY, double ShearZ, double BendingY, double BendingZ)
{
    /// <summary>Magnitude of the shear, N.</summary>
    public double Shear => double.Hypot(ShearY, ShearZ);

    /// <summary>Magnitude of the bending moment, N·m.</summary>
    public double Bending => double.Hypot(BendingY, BendingZ);

    /// <summary>
    /// Force of each coupler end against the tube, N: 1.5 M/L, a pressure that rises in a straight line from the middle of the engagement.
    /// </summary>
    /// <param name="engagement">L, m, more than 0.</param>
    public double Contact(double engagement) => 1.5 * Bending / engagement;

    /// <summary>Pull on the most loaded of n equal fasteners that carry the bending too: F/n + 2M/(n r).</summary>
    /// <param name="count">n, 3 or more.</param>
    /// <param name="radius">r, of the circle they stand on, m.</param>
    public double MostLoaded(int count, double radius) => (Tension / count) + (2 * Bending / (count * radius));
}
