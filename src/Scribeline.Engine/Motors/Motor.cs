using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Motors;

/// <summary>
/// A solid motor as certified: its sizes, masses and thrust. Propellant burns in proportion to impulse (constant exhaust velocity),
/// so mass and balance follow from the thrust curve. Balances are measured from the motor's forward end.
/// </summary>
/// <param name="Name">As printed by its maker.</param>
/// <param name="Curve">Thrust by time.</param>
/// <param name="Diameter">m.</param>
/// <param name="Length">m.</param>
/// <param name="LoadedMass">kg, ready to fly.</param>
/// <param name="PropellantMass">kg.</param>
/// <param name="LoadedBalance">Balance of the loaded motor, m from its forward end; null takes the middle (estimated).</param>
/// <param name="BurntBalance">Balance of the burnt motor, m from its forward end; null takes the middle (estimated).</param>
/// <param name="NozzleExitDiameter">m, or null when not known.</param>
/// <param name="Delays">Delays on offer, s from burnout to the motor's own ejection charge.</param>
/// <param name="Plugged">Whether it has no ejection charge.</param>
/// <param name="Basis">How masses and thrust are known.</param>
public sealed record Motor(
    string Name,
    ThrustHistory Curve,
    double Diameter,
    double Length,
    double LoadedMass,
    double PropellantMass,
    double? LoadedBalance,
    double? BurntBalance,
    double? NozzleExitDiameter,
    ValueList<double> Delays,
    bool Plugged,
    Basis Basis)
{
    /// <summary>Mass after burnout, kg.</summary>
    public double BurntMass => LoadedMass - PropellantMass;

    /// <summary>Exhaust velocity, m/s: total impulse over propellant mass.</summary>
    public double ExhaustVelocity => Curve.TotalImpulse / PropellantMass;

    /// <summary>Delivered specific impulse, s: exhaust velocity over 9.80665 m/s².</summary>
    public double SpecificImpulse => ExhaustVelocity / 9.80665;

    /// <summary>Letter class of its total impulse, or null beyond the table.</summary>
    public MotorClass? Class => MotorClass.Of(Curve.TotalImpulse);

    /// <summary>Balance of loaded and burnt motor, m from the forward end, with how well they are known.</summary>
    public (double Loaded, double Burnt, Basis Basis) Balances =>
        (LoadedBalance ?? Length / 2, BurntBalance ?? Length / 2, LoadedBalance is null || BurntBalance is null ? Basis.Estimated : Basis);

    /// <summary>Balance of the propellant, m from the forward end, from those of loaded and burnt motor.</summary>
    public double PropellantBalance => ((LoadedMass * Balances.Loaded) - (BurntMass * Balances.Burnt)) / PropellantMass;

    /// <summary>Thrust, N, at a time in s after first thrust.</summary>
    public T ThrustAt<T>(T t)
        where T : struct, IReal<T> => Curve.ThrustAt(t);

    /// <summary>Propellant left, kg, at a time in s after first thrust.</summary>
    public T PropellantAt<T>(T t)
        where T : struct, IReal<T> =>
        T.From(PropellantMass) - (T.From(PropellantMass / Curve.TotalImpulse) * Curve.ImpulseAt(t));

    /// <summary>Rate at which propellant leaves, kg/s, at a time in s after first thrust.</summary>
    public T MassFlowAt<T>(T t)
        where T : struct, IReal<T> => T.From(PropellantMass / Curve.TotalImpulse) * Curve.ThrustAt(t);

    /// <summary>Mass, kg, at a time in s after first thrust.</summary>
    public T MassAt<T>(T t)
        where T : struct, IReal<T> => T.From(BurntMass) + PropellantAt(t);

    /// <summary>Balance of motor and remaining propellant, m from the forward end.</summary>
    public T BalanceAt<T>(T t)
        where T : struct, IReal<T>
    {
        var left = PropellantAt(t);
        return (T.From(BurntMass * Balances.Burnt) + (left * T.From(PropellantBalance))) / (T.From(BurntMass) + left);
    }
}
