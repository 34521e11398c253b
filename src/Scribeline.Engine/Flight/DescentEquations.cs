using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// A body without attitude: pieces on cords, under canopies or not, as a point mass. m v' = m g − ½ρ CdS |v_rel| v_rel − 2mΩ × v.
/// Source: Knacke, Parachute Recovery Systems Design Manual, 1992, chapter 5 (from memory).
/// </summary>
internal static class DescentEquations
{
    /// <summary>Numbers in a state: position and velocity.</summary>
    public const int Size = 6;

    /// <summary>Acceleration, east, north, up, m/s².</summary>
    /// <param name="model">The day.</param>
    /// <param name="position">m.</param>
    /// <param name="velocity">m/s.</param>
    /// <param name="mass">kg.</param>
    /// <param name="dragArea">m².</param>
    public static Vector3<T> Acceleration<T, TModel>(in TModel model, Vector3<T> position, Vector3<T> velocity, T mass, T dragArea)
        where T : struct, IReal<T>
        where TModel : struct, IFlightModel
    {
        T height = position.Z;
        model.Around(height, out FlightAir<T> air, out Vector3<T> wind);
        Vector3<T> flow = velocity - wind;
        T k = T.From(0.5) * air.Density * dragArea * flow.Length / mass;
        Vector3<Scalar> earth = model.EarthRate;
        Vector3<T> turning = T.From(2) * Vector3<T>.Cross(new(T.From(earth.X), T.From(earth.Y), T.From(earth.Z)), velocity);
        return new(-k * flow.X - turning.X, -k * flow.Y - turning.Y, -k * flow.Z - model.Gravity(height) - turning.Z);
    }
}
