using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// Absolute parts of the step tolerance: a magnitude for each number of a state below which its relative error is of no interest.
/// A step's error is held to the relative tolerance times (magnitude + |value|).
/// </summary>
internal static class FlightTolerance
{
    private const double Position = 100, Velocity = 10, Attitude = 1, Rate = 1;

    /// <summary>Of the whole rocket.</summary>
    public static double[] Whole(double totalImpulse)
    {
        double[] scale = new double[FlightState<Scalar>.Size];
        scale.AsSpan(0, 3).Fill(Position);
        scale.AsSpan(3, 3).Fill(Velocity);
        scale.AsSpan(6, 4).Fill(Attitude);
        scale.AsSpan(10, 3).Fill(Rate);
        scale[13] = totalImpulse;
        return scale;
    }

    /// <summary>Of a body without attitude.</summary>
    public static double[] Point() => [Position, Position, Position, Velocity, Velocity, Velocity];
}
