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
        where T : struct, IReal<T>
    {
        T m0 = T.From(Rigid.Mass), left = T.From(Propellant) * (T.From(1) - burned), mass = m0 + left, share = left / mass;
        T squares = T.From(OuterSquare + CoreSquare) + T.From(CoreGrowth) * burned;
        T across = left * (T.From(0.25) * squares + T.From(GrainLength * GrainLength / 12));
        return new(
            mass,
            T.From(Rigid.Station) + share * T.From(Arm),
            (T.From(1) - share) * T.From(Rigid.OffsetY),
            (T.From(1) - share) * T.From(Rigid.OffsetZ),
            Tensor(Rigid.Inertia, left * T.From(0.5) * squares, across, m0 * share));
    }

    /// <summary>Rates of the state with the share of the impulse; times thrust over total impulse they are rates with time.</summary>
    /// <param name="burned">0 (loaded) to 1 (burnout).</param>
    /// <typeparam name="T">One flight or many.</typeparam>
    public MassState<T> RateAt<T>(T burned)
        where T : struct, IReal<T>
    {
        T m0 = T.From(Rigid.Mass), flow = T.From(-Propellant), left = T.From(Propellant) * (T.From(1) - burned), mass = m0 + left;
        T squares = T.From(OuterSquare + CoreSquare) + T.From(CoreGrowth) * burned, growth = T.From(CoreGrowth);
        T across = flow * (T.From(0.25) * squares + T.From(GrainLength * GrainLength / 12)) + left * T.From(0.25) * growth;

        // share = left/(m0 + left), so its rate is m0·flow/mass².
        T shareRate = m0 * flow / (mass * mass);
        return new(
            flow,
            shareRate * T.From(Arm),
            -shareRate * T.From(Rigid.OffsetY),
            -shareRate * T.From(Rigid.OffsetZ),
            Tensor(default, T.From(0.5) * (flow * squares + left * growth), across, m0 * shareRate));
    }

    /// <summary>Middle of the propellant aft of the rigid body's centre of mass, m.</summary>
    private double Arm => GrainStation - Rigid.Station;

    private MassTensor<T> Tensor<T>(InertiaTensor rigid, T axial, T across, T reducedMass)
        where T : struct, IReal<T>
    {
        InertiaTensor apart = InertiaTensor.OfPoint(Arm, Rigid.OffsetY, Rigid.OffsetZ);
        return new(
            T.From(rigid.Xx) + axial + reducedMass * T.From(apart.Xx),
            T.From(rigid.Yy) + across + reducedMass * T.From(apart.Yy),
            T.From(rigid.Zz) + across + reducedMass * T.From(apart.Zz),
            T.From(rigid.Xy) + reducedMass * T.From(apart.Xy),
            T.From(rigid.Xz) + reducedMass * T.From(apart.Xz),
            T.From(rigid.Yz) + reducedMass * T.From(apart.Yz));
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
