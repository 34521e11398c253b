using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Separation;

/// <summary>What holds a separable joint: its shear pins and the friction of its fit.</summary>
/// <param name="Joint">Index of the joint of the vehicle.</param>
/// <param name="Kind">Pinned or sliding.</param>
/// <param name="Pins">Its pins; null for none.</param>
/// <param name="Friction">How tightly it slides.</param>
public sealed record JointRetention(int Joint, JointKind Kind, PinSet? Pins, FrictionFit Friction)
{
    /// <summary>
    /// Least force that may pull it apart, N: weakest pins; a friction that was measured counts, a supposed one does not.
    /// </summary>
    /// <param name="temperature">Of the pins, K.</param>
    public double Weakest(double temperature) => (Pins?.Weakest(temperature) ?? 0) + (Friction.Measured ? Friction.Least : 0);

    /// <summary>Force expected, N.</summary>
    /// <inheritdoc cref="Weakest"/>
    public double Nominal(double temperature) => (Pins?.Nominal(temperature) ?? 0) + Friction.Force;

    /// <summary>Greatest force that may be needed, N.</summary>
    /// <inheritdoc cref="Weakest"/>
    public double Strongest(double temperature) => (Pins?.Strongest(temperature) ?? 0) + Friction.Most;

    /// <summary>How it is known.</summary>
    public Basis Basis => Pins is { Basis: Basis.Estimated } || !Friction.Measured ? Basis.Estimated : Basis.Tested;
}

/// <summary>
/// Shear pins in single shear through the thread, F = τ A_minor each. Bounds cover moisture and lot; scatter between pins and unequal
/// sharing are in <see cref="PinSharing"/>.
/// </summary>
/// <param name="Name">Screw as typed.</param>
/// <param name="Count">1 or more.</param>
/// <param name="Low">Force that cuts the weakest pin, N, at 23 °C.</param>
/// <param name="Middle">Force that cuts one pin, N, at 23 °C.</param>
/// <param name="High">Force that cuts the strongest, N, at 23 °C.</param>
/// <param name="Material">Of the table; null where the force was tested or typed.</param>
/// <param name="Basis">How it is known.</param>
public sealed record PinSet(string Name, int Count, double Low, double Middle, double High, PinMaterial? Material, Basis Basis)
{
    /// <summary>Hole less screw, m: how far one pin may travel before the last takes up load.</summary>
    public double Play { get; init; }

    /// <summary>All pins at their weakest and loaded one after the other, N. Cold does not raise it above the planning value.</summary>
    /// <param name="temperature">K.</param>
    public double Weakest(double temperature) => Count * Low * Math.Min(Factor(temperature), 1) * PinSharing.ShareUnderPlay(Count, Play);

    /// <summary>All pins as expected, N.</summary>
    /// <inheritdoc cref="Weakest"/>
    public double Nominal(double temperature) => Count * Middle * Factor(temperature);

    /// <summary>All pins at their strongest, N. Heat does not lower it below the planning value.</summary>
    /// <inheritdoc cref="Weakest"/>
    public double Strongest(double temperature) => Count * High * Math.Max(Factor(temperature), 1);

    /// <summary>Pins of a material of the table.</summary>
    /// <param name="name">Screw as typed.</param>
    /// <param name="count">1 or more.</param>
    /// <param name="thread">Of the screw.</param>
    /// <param name="material">What it is made of.</param>
    public static PinSet Of(string name, int count, ThreadGeometry thread, PinMaterial material) => new(
        name, count, thread.MinorArea * material.Low, thread.MinorArea * material.Nominal, thread.MinorArea * material.High, material,
        Basis.Estimated);

    /// <summary>Pins whose cutting force is typed. Without a tolerance the usual scatter sets the bounds, at 5 and 95 of 100 joints.</summary>
    /// <param name="name">Screw as typed.</param>
    /// <param name="count">1 or more.</param>
    /// <param name="force">Of one pin, N.</param>
    /// <param name="tolerance">What was typed behind ±, N; 0 for nothing.</param>
    /// <param name="basis">How it is known.</param>
    public static PinSet Tested(string name, int count, double force, double tolerance, Basis basis) => tolerance > 0
        ? new(name, count, Math.Max(force - tolerance, 0), force, force + tolerance, null, basis)
        : new(name, count, PinSharing.Weak(force, count) / count, force, PinSharing.Strong(force, count) / count, null, basis);

    private double Factor(double temperature) => Material?.FactorAt(temperature) ?? 1;
}

/// <summary>How tightly a joint slides.</summary>
/// <param name="Force">That starts it, N.</param>
/// <param name="Least">N.</param>
/// <param name="Most">N.</param>
/// <param name="Measured">Whether it was typed; otherwise it stands in and does not count as retention.</param>
public readonly record struct FrictionFit(double Force, double Least, double Most, bool Measured)
{
    /// <summary>Friction of an unmeasured fit per metre of bore, N/m: an assumption, 60 N at 100 mm.</summary>
    public const double Supposed = 600;

    /// <summary>Friction in motion over that which starts it: an assumption.</summary>
    public const double SlidingShare = 2.0 / 3;
}
