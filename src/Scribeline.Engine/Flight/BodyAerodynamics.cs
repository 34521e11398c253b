using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// Force and moment of the air on the whole rocket. Normal force acts at the centre of pressure, against the cross flow; turning adds to
/// each component's cross flow the speed it has about the centre of mass, which gives the damping moment −½ρVA Σ C_Nα,i (X_i − x)² ω
/// and the small force ½ρVA Σ C_Nα,i (x − X_i) ω.
/// Source: Mandell, Caporaso and Bengen, Topics in Advanced Model Rocketry, 1973, C1 and C2 (from memory).
/// </summary>
internal static class BodyAerodynamics
{
    /// <summary>Below this cross flow, m/s, its direction is of no consequence.</summary>
    private const double LeastCrossFlow = 1e-12;

    /// <param name="c">Coefficients at this flow.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="flow">Velocity through the air, body axes, m/s.</param>
    /// <param name="airspeed">Its magnitude.</param>
    /// <param name="rate">Body rate, rad/s.</param>
    /// <param name="centre">Station of the centre of mass, m.</param>
    /// <param name="area">Reference area, m².</param>
    /// <param name="calibre">Reference diameter, m.</param>
    /// <param name="acting">Force, N.</param>
    /// <param name="moment">About a point on the long axis at <paramref name="centre"/>, N·m.</param>
    public static void Force<T>(
        in FlightCoefficients<T> c, in T density, in Vector3<T> flow, in T airspeed, in Vector3<T> rate, in T centre, in T area, in T calibre,
        out Vector3<T> acting, out Vector3<T> moment)
        where T : struct, IReal<T>
    {
        T half = T.From(0.5);
        T va = half * density * airspeed * area;
        T qa = va * airspeed;
        T cross = T.Max(T.Sqrt(flow.Y * flow.Y + flow.Z * flow.Z), T.From(LeastCrossFlow));
        T normal = qa * c.NormalForce / cross;
        T force = va * (centre * c.Sum0 - c.Sum1);
        T damping = va * (c.Sum2 - T.From(2) * centre * c.Sum1 + centre * centre * c.Sum0);
        T arm = c.CentreOfPressure - centre;
        T y = -normal * flow.Y, z = -normal * flow.Z;
        T roll = qa * calibre * c.RollForcing + va * half * calibre * calibre * c.RollDamping * rate.X;
        moment = new(roll, arm * z - damping * rate.Y, -arm * y - damping * rate.Z);
        acting = new(-qa * c.Axial, y - force * rate.Z, z + force * rate.Y);
    }
}
