namespace Scribeline.Engine.Separation;

/// <summary>
/// A harness that stretches along two straight lines: stiffness k1 up to a knee, k2 beyond. Peak load of energy E:
/// √(F1² + 2 k2 (E - F1²/2 k1)) beyond the knee, √(2 k1 E) below it.
/// </summary>
/// <param name="Soft">k1, N/m, more than 0.</param>
/// <param name="Knee">F1, N; infinite for one straight line.</param>
/// <param name="Stiff">k2, N/m.</param>
/// <param name="Strength">Breaking load, N.</param>
public readonly record struct StretchingCord(double Soft, double Knee, double Stiff, double Strength)
{
    /// <summary>A cord of one stiffness.</summary>
    /// <param name="strength">Breaking load, N.</param>
    /// <param name="stretch">At the breaking load, as a share of the length.</param>
    /// <param name="length">m.</param>
    public static StretchingCord Linear(double strength, double stretch, double length) =>
        new(strength / (stretch * length), double.PositiveInfinity, strength / (stretch * length), strength);

    /// <summary>
    /// A woven nylon cord: a tenth of its length at a quarter of its strength, its full stretch at break (8 to 12 % and 25 to 30 %, from
    /// memory).
    /// </summary>
    /// <inheritdoc cref="Linear"/>
    public static StretchingCord Nylon(double strength, double stretch, double length)
    {
        var knee = strength / 4;
        var early = Math.Min(0.10, stretch / 2);
        return new(knee / (early * length), knee, (strength - knee) / ((stretch - early) * length), strength);
    }

    /// <summary>Peak tension when it must take up an energy, N.</summary>
    /// <param name="energy">J, 0 or more.</param>
    public double PeakTension(double energy)
    {
        var early = double.IsPositiveInfinity(Knee) ? double.PositiveInfinity : Knee * Knee / (2 * Soft);
        return energy <= early ? Math.Sqrt(2 * Soft * energy) : Math.Sqrt((Knee * Knee) + (2 * Stiff * (energy - early)));
    }

    /// <summary>Stretch at a tension, m.</summary>
    /// <param name="tension">N.</param>
    public double StretchAt(double tension) => tension <= Knee ? tension / Soft : (Knee / Soft) + ((tension - Knee) / Stiff);
}
