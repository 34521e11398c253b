using System.Runtime.CompilerServices;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>State of the whole rocket, or its rate of change.</summary>
/// <param name="Position">Centre of mass, m east, north, up.</param>
/// <param name="Velocity">m/s.</param>
/// <param name="Attitude">Body axes to east, north, up.</param>
/// <param name="Rate">Angular rate in body axes, rad/s.</param>
/// <param name="Impulse">Impulse the motor has delivered, N·s; its share of the total is the share of propellant burnt.</param>
/// <typeparam name="T">The number type.</typeparam>
internal readonly record struct FlightState<T>(
    Vector3<T> Position, Vector3<T> Velocity, Quaternion<T> Attitude, Vector3<T> Rate, T Impulse)
    where T : struct, IReal<T>
{
    /// <summary>Numbers in a state.</summary>
    public const int Size = 14;

    /// <summary>Reads <see cref="Size"/> numbers.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FlightState<T> Read(ReadOnlySpan<T> y) => new(
        new(y[0], y[1], y[2]), new(y[3], y[4], y[5]), new(y[6], y[7], y[8], y[9]), new(y[10], y[11], y[12]), y[13]);

    /// <summary>With the attitude's norm, which integration lets drift, put back to 1.</summary>
    public FlightState<T> Settled() => this with { Attitude = Attitude.Normalised() };

    /// <summary>Writes <see cref="Size"/> numbers.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Write(Span<T> y)
    {
        y[13] = Impulse;
        (y[0], y[1], y[2]) = (Position.X, Position.Y, Position.Z);
        (y[3], y[4], y[5]) = (Velocity.X, Velocity.Y, Velocity.Z);
        (y[6], y[7], y[8], y[9]) = (Attitude.W, Attitude.X, Attitude.Y, Attitude.Z);
        (y[10], y[11], y[12]) = (Rate.X, Rate.Y, Rate.Z);
    }
}
