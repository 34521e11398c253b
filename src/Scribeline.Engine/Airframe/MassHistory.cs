using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Airframe;

/// <summary>
/// Mass, balance and inertia against the share of the impulse already given. Propellant leaves in proportion to impulse; a cored grain burns
/// outwards from its core at constant length, an even one keeps its shape. What does not burn is one rigid body.
/// </summary>
/// <param name="Mass0">What does not burn, kg.</param>
/// <param name="Station0">Its balance, m.</param>
/// <param name="Axial0">Its inertia about its own centre, kg·m².</param>
/// <param name="Lateral0">Mean of its two inertias across the axis, about its own centre, kg·m².</param>
/// <param name="OffsetSquare">Square of its distance from the axis, on which the propellant lies, m².</param>
/// <param name="Propellant">Mass that burns, kg.</param>
/// <param name="GrainStation">Middle of the propellant, m.</param>
/// <param name="GrainLength">m.</param>
/// <param name="OuterSquare">Square of the grain's outer radius, m².</param>
/// <param name="CoreSquare">Square of its inner radius before the burn, m².</param>
/// <param name="CoreGrowth">Growth of the inner radius squared over the whole burn, m²; 0 for an even grain.</param>
/// <remarks>
/// Sources: hollow cylinder m(R²+r²)/2 and m(3R²+3r²+L²)/12, Beer and Johnston, Vector Mechanics for Engineers, inside cover, from memory;
/// reduced mass form of the parallel axes of two bodies. For offsets and products of inertia see <see cref="MassProperties"/>.
/// </remarks>
public sealed record MassHistory(
    double Mass0, double Station0, double Axial0, double Lateral0, double OffsetSquare,
    double Propellant, double GrainStation, double GrainLength, double OuterSquare, double CoreSquare, double CoreGrowth)
{
    /// <summary>History of a body with a motor in it, or with none.</summary>
    /// <param name="dry">Everything but the motor.</param>
    /// <param name="motor">The motor; null for a body that keeps its mass.</param>
    public static MassHistory Of(MassProperties dry, MotorLoad? motor)
    {
        MassProperties rigid = motor is null ? dry : MassProperties.Sum(dry, motor.Burnt);
        double R2 = motor is null ? 0 : motor.GrainDiameter * motor.GrainDiameter / 4, r2 = motor is null ? 0 : motor.CoreDiameter * motor.CoreDiameter / 4;
        return new(
            rigid.Mass, rigid.Station, rigid.Inertia.Xx, rigid.Inertia.Lateral, rigid.OffsetY * rigid.OffsetY + rigid.OffsetZ * rigid.OffsetZ,
            motor?.PropellantMass ?? 0, motor?.GrainStation ?? rigid.Station, motor?.GrainLength ?? 0, R2, r2, r2 > 0 ? R2 - r2 : 0);
    }

    /// <summary>State at a share of the impulse.</summary>
    /// <param name="burned">0 (loaded) to 1 (burnout).</param>
    /// <typeparam name="T">One flight or many.</typeparam>
    public MassState<T> At<T>(T burned)
        where T : struct, IReal<T>
    {
        T m0 = T.From(Mass0), left = T.From(Propellant) * (T.From(1) - burned), mass = m0 + left;
        T share = left / mass, arm = T.From(GrainStation - Station0);
        T squares = T.From(OuterSquare + CoreSquare) + T.From(CoreGrowth) * burned;
        T axial = T.From(Axial0) + left * T.From(0.5) * squares + m0 * share * T.From(OffsetSquare);
        T lateral = T.From(Lateral0) + left * (T.From(0.25) * squares + T.From(GrainLength * GrainLength / 12))
            + m0 * share * (arm * arm + T.From(OffsetSquare / 2));
        return new(mass, T.From(Station0) + share * arm, axial, lateral);
    }

    /// <summary>Rates of the state with the share of the impulse; times thrust over total impulse they are rates with time.</summary>
    /// <param name="burned">0 (loaded) to 1 (burnout).</param>
    /// <typeparam name="T">One flight or many.</typeparam>
    public MassState<T> RateAt<T>(T burned)
        where T : struct, IReal<T>
    {
        T m0 = T.From(Mass0), flow = T.From(-Propellant), left = T.From(Propellant) * (T.From(1) - burned), mass = m0 + left;
        T arm = T.From(GrainStation - Station0);
        T squares = T.From(OuterSquare + CoreSquare) + T.From(CoreGrowth) * burned, growth = T.From(CoreGrowth);

        // share = left/(m0 + left), so its rate is m0·flow/mass².
        T shareRate = m0 * flow / (mass * mass);
        T axial = T.From(0.5) * (flow * squares + left * growth) + m0 * shareRate * T.From(OffsetSquare);
        T lateral = flow * (T.From(0.25) * squares + T.From(GrainLength * GrainLength / 12)) + left * T.From(0.25) * growth
            + m0 * shareRate * (arm * arm + T.From(OffsetSquare / 2));
        return new(flow, shareRate * arm, axial, lateral);
    }
}

/// <summary>Mass, balance and inertia at an instant, or their rates.</summary>
/// <param name="Mass">kg.</param>
/// <param name="Station">Centre of mass, m aft of the nose tip.</param>
/// <param name="Axial">About the long axis, kg·m².</param>
/// <param name="Lateral">Across it, about the centre of mass, kg·m².</param>
/// <typeparam name="T">One flight or many.</typeparam>
public readonly record struct MassState<T>(T Mass, T Station, T Axial, T Lateral)
    where T : struct, IReal<T>;
