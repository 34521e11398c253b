namespace Scribeline.Engine.Evidence.Shots;

/// <summary>What holds a joint during one firing.</summary>
/// <param name="Unsure">Nominal part that the strength scales, N: the pins, or the friction where there are none.</param>
/// <param name="Known">Part that it leaves alone, N: the friction beside pins.</param>
/// <param name="Scatter">Standard deviation of ln of the unsure part from shot to shot.</param>
public readonly record struct JointHold(double Unsure, double Known, double Scatter)
{
    /// <summary>All of it, N.</summary>
    /// <param name="strength">Of the unsure part.</param>
    public double At(double strength) => (strength * Unsure) + Known;

    /// <summary>Standard deviation of ln of all of it from shot to shot.</summary>
    /// <inheritdoc cref="At"/>
    public double ScatterAt(double strength) => At(strength) > 0 ? Scatter * strength * Unsure / At(strength) : 0;
}
