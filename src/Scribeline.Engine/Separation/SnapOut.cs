namespace Scribeline.Engine.Separation;

/// <summary>Two pieces flying apart until their harness is taut: what it must take up, how hard it pulls, what each piece feels.</summary>
/// <param name="Speed">Of the pieces from one another, m/s.</param>
/// <param name="ForwardMass">kg.</param>
/// <param name="AftMass">kg.</param>
/// <param name="Cord">The harness.</param>
public readonly record struct SnapOut(double Speed, double ForwardMass, double AftMass, StretchingCord Cord)
{
    /// <summary>Energy of the motion from one another, J: ½ m1 m2/(m1 + m2) v².</summary>
    public double Energy => ForwardMass * AftMass / (ForwardMass + AftMass) * Speed * Speed / 2;

    /// <summary>Greatest pull of the harness, N.</summary>
    public double Tension => Cord.PeakTension(Energy);

    /// <summary>Of the piece ahead, m/s².</summary>
    public double ForwardDeceleration => Tension / ForwardMass;

    /// <summary>Of the piece behind, m/s².</summary>
    public double AftDeceleration => Tension / AftMass;

    /// <summary>Force that a pull on a body puts on a section of it, N: the pull times the share of the mass beyond the section.</summary>
    /// <param name="pull">N.</param>
    /// <param name="beyond">Mass on the far side of the section, with what leans on it, kg.</param>
    /// <param name="body">Mass of the whole body, kg.</param>
    public static double AtSection(double pull, double beyond, double body) => pull * beyond / body;
}
