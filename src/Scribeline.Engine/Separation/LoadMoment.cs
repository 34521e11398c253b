using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Separation;

/// <summary>A moment of the whole rocket's flight, with what the forces in its joints need beyond the sample.</summary>
/// <param name="Sample">The moment.</param>
/// <param name="Turning">Angular acceleration in body axes, rad/s².</param>
/// <param name="Flow">Velocity through the air in body axes, m/s.</param>
/// <param name="Axial">Force of the air along the axis, towards the tail, N.</param>
/// <param name="Burned">Share of the impulse given, 0 to 1.</param>
public readonly record struct LoadMoment(
    FlightSample Sample, Vector3<Scalar> Turning, Vector3<Scalar> Flow, double Axial, double Burned)
{
    // Short against every oscillation of a rocket, long against rounding.
    private const double Step = 1e-4;

    /// <summary>Reads a moment from a flight.</summary>
    /// <param name="flight">The flight.</param>
    /// <param name="time">s after ignition, before anything lets go.</param>
    /// <param name="burned">Share of the impulse given then.</param>
    public static LoadMoment Of(FlightResult flight, double time, double burned)
    {
        FlightSample at = flight.At(time), before = flight.At(time - Step), after = flight.At(time + Step);

        // A difference across the end of a phase would be of two different motions.
        if (before.Phase != at.Phase) before = at;
        if (after.Phase != at.Phase) after = at;
        var span = after.Time - before.Time;
        var turning = span > 0 ? (1 / span) * (after.Rate - before.Rate) : Vector3<Scalar>.Zero;
        return new(at, turning, at.Attitude.ToBody(at.Velocity - at.Wind), AxialOf(at), burned);
    }

    // In free flight it is what the accelerometer misses of the thrust; on the rail, where friction is felt too, it comes from the drag.
    private static double AxialOf(FlightSample s)
    {
        if (s.Phase is FlightPhase.Boost or FlightPhase.Coast or FlightPhase.Dive) return s.Thrust - (s.Mass * s.ProperAcceleration.X);
        double along = Math.Cos(s.AngleOfAttack), across = Math.Sin(s.AngleOfAttack);
        return along > 0.2 ? (s.Drag - (s.NormalForce * across)) / along : 0;
    }
}
