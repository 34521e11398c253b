using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Airframe;

/// <summary>
/// Mass, balance and inertia against the share of the impulse already given. Propellant leaves in proportion to impulse; a cored grain burns
/// outwards from its core at constant length, an even one keeps its shape. What does not burn is one rigid body.
/// </summary>
/// <param name="Rigid">What does not burn.</param>
/// <param name="Propellant">Mass that burns, kg.</param>
/// <param name="GrainStation">Middle of the propellant, which lies on the axis, m.</param>
/// <param name="GrainLength">m.</param>
/// <param name="OuterSquare">Square of the grain's outer radius, m².</param>
/// <param name="CoreSquare">Square of its inner radius before the burn, m².</param>
/// <param name="CoreGrowth">Growth of the inner radius squared over the whole burn, m²; 0 for an even grain.</param>
/// <remarks>
/// Sources: hollow cylinder m(R²+r²)/2 and m(3R²+3r²+L²)/12, Beer and Johnston, Vector Mechanics for Engineers, inside cover, from memory;
/// parallel axes of two bodies through their reduced mass.
/// </remarks>
public sealed record MassHistory(
    MassProperties Rigid, double Propellant, double GrainStation, double GrainLength, double OuterSquare, double CoreSquare, double CoreGrowth)
{
    /// <summary>History of a body with a motor in it, or with none.</summary>
    /// <param name="dry">Everything but the motor.</param>
    /// <param name="motor">The motor; null for a body that keeps its mass.</param>
    public static MassHistory Of(MassProperties dry, MotorLoad? motor)
    {
        if (motor is null) return new(dry, 0, dry.Station, 0, 0, 0, 0);
        double R2 = motor.GrainDiameter * motor.GrainDiameter / 4, r2 = motor.CoreDiameter * motor.CoreDiameter / 4;
        return new(
            MassProperties.Sum(dry, motor.Burnt), motor.PropellantMass, motor.GrainStation, motor.GrainLength, R2, r2, r2 > 0 ? R2 - r2 : 0);
    }

    /// <summary>State at a share of the impulse.</summary>
    /// <param name="burned">0 (loaded) to 1 (burnout).</param>
    /// <typeparam name="T">One flight or many.</typeparam>
    public MassState<T> At<T>(T burned)
        where T : struct, IReal<T> => Law<T>().At(burned);

    /// <summary>Rates of the state with the share of the impulse; times thrust over total impulse they are rates with time.</summary>
    /// <param name="burned">0 (loaded) to 1 (burnout).</param>
    /// <typeparam name="T">One flight or many.</typeparam>
    public MassState<T> RateAt<T>(T burned)
        where T : struct, IReal<T> => Law<T>().RateAt(burned);

    private MassLaw<T> Law<T>()
        where T : struct, IReal<T>
    {
        InertiaTensor i = Rigid.Inertia;
        return new(
            T.From(Rigid.Mass), T.From(Rigid.Station), T.From(Rigid.OffsetY), T.From(Rigid.OffsetZ),
            new(T.From(i.Xx), T.From(i.Yy), T.From(i.Zz), T.From(i.Xy), T.From(i.Xz), T.From(i.Yz)),
            T.From(Propellant), T.From(GrainStation), T.From(GrainLength), T.From(OuterSquare), T.From(CoreSquare), T.From(CoreGrowth));
    }
}

/// <summary>Mass, balance and inertia at an instant, or their rates. Axes as in <see cref="MassProperties"/>.</summary>
/// <param name="Mass">kg.</param>
/// <param name="Station">Centre of mass, m aft of the nose tip.</param>
/// <param name="OffsetY">Of the centre of mass, m.</param>
/// <param name="OffsetZ">Of the centre of mass, m.</param>
/// <param name="Inertia">About the centre of mass.</param>
/// <typeparam name="T">One flight or many.</typeparam>
public readonly record struct MassState<T>(T Mass, T Station, T OffsetY, T OffsetZ, MassTensor<T> Inertia)
    where T : struct, IReal<T>
{
    /// <summary>Inertia about the long axis, kg·m².</summary>
    public T Axial => Inertia.Xx;

    /// <summary>Mean of the two inertias across the long axis, kg·m².</summary>
    public T Lateral => T.From(0.5) * (Inertia.Yy + Inertia.Zz);
}

/// <summary>As <see cref="InertiaTensor"/>, kg·m², for one flight or many.</summary>
/// <typeparam name="T">The number type.</typeparam>
public readonly record struct MassTensor<T>(T Xx, T Yy, T Zz, T Xy, T Xz, T Yz)
    where T : struct, IReal<T>;
