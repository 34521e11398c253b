using System.Runtime.CompilerServices;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Airframe;

/// <summary>The numbers of a <see cref="MassHistory"/>, each lane with its own, and its equations.</summary>
/// <param name="Rigid">Mass of what does not burn, kg.</param>
/// <param name="Station">Its centre of mass, m aft of the nose tip.</param>
/// <param name="OffsetY">m.</param>
/// <param name="OffsetZ">m.</param>
/// <param name="Inertia">About its centre of mass, kg·m².</param>
/// <param name="Propellant">kg.</param>
/// <param name="GrainStation">Middle of the propellant, m.</param>
/// <param name="GrainLength">m.</param>
/// <param name="OuterSquare">m².</param>
/// <param name="CoreSquare">m².</param>
/// <param name="CoreGrowth">m².</param>
/// <typeparam name="T">One flight or many.</typeparam>
internal readonly record struct MassLaw<T>(
    T Rigid, T Station, T OffsetY, T OffsetZ, MassTensor<T> Inertia,
    T Propellant, T GrainStation, T GrainLength, T OuterSquare, T CoreSquare, T CoreGrowth)
    where T : struct, IReal<T>
{
    /// <summary>State at a share of the impulse.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public MassState<T> At(T burned)
    {
        T left = Propellant * (T.From(1) - burned), mass = Rigid + left, share = left / mass;
        T squares = OuterSquare + CoreSquare + CoreGrowth * burned;
        T across = left * (T.From(0.25) * squares + GrainLength * GrainLength * T.From(1.0 / 12));
        return new(
            mass,
            Station + share * Arm,
            (T.From(1) - share) * OffsetY,
            (T.From(1) - share) * OffsetZ,
            Tensor(Inertia, left * T.From(0.5) * squares, across, Rigid * share));
    }

    /// <summary>Rates of the state with the share of the impulse.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public MassState<T> RateAt(T burned)
    {
        T flow = -Propellant, left = Propellant * (T.From(1) - burned), mass = Rigid + left, zero = T.From(0);
        T squares = OuterSquare + CoreSquare + CoreGrowth * burned;
        T across = flow * (T.From(0.25) * squares + GrainLength * GrainLength * T.From(1.0 / 12)) + left * T.From(0.25) * CoreGrowth;

        // share = left/(m0 + left), so its rate is m0·flow/mass².
        T shareRate = Rigid * flow / (mass * mass);
        return new(
            flow,
            shareRate * Arm,
            -shareRate * OffsetY,
            -shareRate * OffsetZ,
            Tensor(new(zero, zero, zero, zero, zero, zero), T.From(0.5) * (flow * squares + left * CoreGrowth), across, Rigid * shareRate));
    }

    /// <summary>Middle of the propellant aft of the rigid body's centre of mass, m.</summary>
    private T Arm => GrainStation - Station;

    // The two bodies turn about each other with their reduced mass.
    private MassTensor<T> Tensor(in MassTensor<T> rigid, T axial, T across, T reduced)
    {
        T x = Arm, y = OffsetY, z = OffsetZ;
        return new(
            rigid.Xx + axial + reduced * (y * y + z * z),
            rigid.Yy + across + reduced * (x * x + z * z),
            rigid.Zz + across + reduced * (x * x + y * y),
            rigid.Xy + reduced * x * y,
            rigid.Xz + reduced * x * z,
            rigid.Yz + reduced * y * z);
    }
}
