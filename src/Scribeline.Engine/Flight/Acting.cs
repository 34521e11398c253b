using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>Velocity through the air in body axes.</summary>
/// <param name="Velocity">m/s.</param>
/// <param name="Airspeed">m/s.</param>
/// <param name="Sine">Of the angle of attack, 0 or more.</param>
/// <param name="Cosine">Of the angle of attack.</param>
internal readonly record struct Flow<T>(Vector3<T> Velocity, T Airspeed, T Sine, T Cosine)
    where T : struct, IReal<T>
{
    // Airspeed below which the angle of attack is of no consequence, m/s.
    private const double Still = 1e-12;

    /// <param name="attitude">Of the rocket.</param>
    /// <param name="velocity">East, north, up, m/s.</param>
    /// <param name="wind">East, north, up, m/s.</param>
    /// <param name="flow">Relative to the air.</param>
    public static void Of(in Quaternion<T> attitude, in Vector3<T> velocity, in Vector3<T> wind, out Flow<T> flow)
    {
        Vector3<T> v = attitude.ToBody(velocity - wind);
        T cross = T.Sqrt(v.Y * v.Y + v.Z * v.Z);
        T airspeed = T.Sqrt(cross * cross + v.X * v.X);
        T moving = T.From(1) / T.Max(airspeed, T.From(Still));
        flow = new(v, airspeed, cross * moving, T.SelectLess(airspeed, T.From(Still), T.From(1), v.X * moving));
    }
}

/// <summary>Air and motor together, in body axes.</summary>
/// <param name="Force">N.</param>
/// <param name="Moment">About the centre of mass, jet damping included, N·m.</param>
/// <param name="Thrust">Ambient pressure considered, N.</param>
/// <param name="TestThrust">As tested, N.</param>
/// <param name="Outflow">Mass leaving, kg/s.</param>
/// <param name="TransverseInertiaRate">kg·m²/s.</param>
internal readonly record struct Acting<T>(Vector3<T> Force, Vector3<T> Moment, T Thrust, T TestThrust, T Outflow, T TransverseInertiaRate)
    where T : struct, IReal<T>
{
    /// <param name="nozzle">Where the thrust acts.</param>
    /// <param name="mass">Of the rocket.</param>
    /// <param name="rate">Of turning, rad/s.</param>
    /// <param name="test">Thrust as tested, N.</param>
    /// <param name="burnRate">Share of the impulse a second.</param>
    /// <param name="burning">1 while the motor burns.</param>
    /// <param name="pressure">Ambient, Pa.</param>
    /// <param name="air">Force of the air, on the axis.</param>
    /// <param name="moment">Of the air about a point on the axis at the centre of mass.</param>
    /// <param name="acting">All of it.</param>
    public static void Of(
        in NozzleGeometry nozzle, in FlightMass<T> mass, in Vector3<T> rate, in T test, in T burnRate, in T burning, in T pressure,
        in Vector3<T> air, in Vector3<T> moment, out Acting<T> acting)
    {
        T zero = T.From(0);
        T corrected = test + burning * T.From(nozzle.ExitArea) * (T.From(nozzle.TestPressure) - pressure);
        T thrust = T.SelectLess(zero, test, corrected, zero);
        Push(nozzle, mass, thrust, air, moment, out Vector3<T> force, out Vector3<T> turning);

        T outflow = -mass.MassSlope * burnRate;
        T transverse = mass.TransverseInertiaSlope * burnRate;
        T arm = T.From(nozzle.Station) - mass.Station;
        Vector3<T> damping = RigidBody.JetDamping(
            rate, outflow, arm, T.From(nozzle.ExitArea / (2 * Math.PI)), mass.AxialInertiaSlope * burnRate, transverse);
        acting = new(force, turning + damping, thrust, test, outflow, transverse);
    }

    private static void Push(
        in NozzleGeometry nozzle, in FlightMass<T> mass, in T thrust, in Vector3<T> air, in Vector3<T> moment, out Vector3<T> force, out Vector3<T> turning)
    {
        T y = T.From(nozzle.TiltY), z = T.From(nozzle.TiltZ);
        T along = thrust * T.From(1 / Math.Sqrt(1 + (nozzle.TiltY * nozzle.TiltY) + (nozzle.TiltZ * nozzle.TiltZ)));
        Vector3<T> push = new(along, along * y, along * z);
        T arm = T.From(nozzle.Station) - mass.Station;
        Vector3<T> exit = new(-arm, T.From(nozzle.OffsetY) - mass.OffsetY, T.From(nozzle.OffsetZ) - mass.OffsetZ);

        // Aerodynamic forces act on the axis, which the centre of mass may miss.
        Vector3<T> missed = new(T.From(0), mass.OffsetY, mass.OffsetZ);
        turning = moment - Vector3<T>.Cross(missed, air) + Vector3<T>.Cross(exit, push);
        force = air + push;
    }
}
