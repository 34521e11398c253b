using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// Equations of motion of the whole rocket in a flat east-north-up frame: six degrees of freedom, variable mass, thrust off the axis,
/// wind, gravity by height, the turning Earth. Written once for a single flight and for lanes of many.
/// r' = v; v' = R(q)(F_a + F_t)/m − γ_h − 2Ω × v; q' = ½ q ⊗ (0, ω); I ω' = M − ω × Iω − İω − jet damping; J' = T.
/// Mass falls with delivered impulse J (constant specific impulse).
/// Source: Zipfel, Modeling and Simulation of Aerospace Vehicle Dynamics; Thomson, Introduction to Space Dynamics (from memory).
/// </summary>
/// <typeparam name="TModel">Rocket and day.</typeparam>
internal readonly struct FlightEquations<TModel>(TModel model)
    where TModel : struct, IFlightModel
{
    private readonly TModel model = model;

    /// <summary>The rocket and the day.</summary>
    public TModel Model => model;

    /// <summary>What acts on the rocket.</summary>
    /// <param name="time">s after ignition.</param>
    /// <param name="s">State.</param>
    /// <param name="burning">1 while the motor burns, 0 after: thrust exactly at burnout belongs to neither curve.</param>
    public FlightLoads<T> Loads<T>(T time, in FlightState<T> s, T burning)
        where T : struct, IReal<T>
    {
        model.Around(s.Position.Z, out FlightAir<T> air, out Vector3<T> wind);
        Act(time, s, burning, air, wind, out Acting<T> acting, out Flow<T> flow, out FlightMass<T> mass, out FlightCoefficients<T> c);
        return new(
            acting.Force, acting.Moment, model.Gravity(s.Position.Z), acting.Thrust, acting.TestThrust, acting.Outflow,
            acting.TransverseInertiaRate, mass, air, wind, flow.Velocity, flow.Airspeed, c);
    }

    // Small methods that hand large results over by reference: a method that holds all of this at once is more than the compiler
    // keeps in registers, and in lanes every number is a vector.
    private void Act<T>(
        in T time, in FlightState<T> s, in T burning, in FlightAir<T> air, in Vector3<T> wind,
        out Acting<T> acting, out Flow<T> flow, out FlightMass<T> mass, out FlightCoefficients<T> c)
        where T : struct, IReal<T>
    {
        Flow<T>.Of(s.Attitude, s.Velocity, wind, out flow);
        model.Mass(T.Min(model.ShareOfImpulse(s.Impulse), T.From(1)), out mass);
        model.Aerodynamics(flow.Airspeed / air.SoundSpeed, flow.Sine, flow.Cosine, air.Density * flow.Airspeed / air.Viscosity, burning, out c);
        BodyAerodynamics.Force(
            c, air.Density, flow.Velocity, flow.Airspeed, s.Rate, mass.Station, T.From(model.Area), T.From(model.Calibre),
            out Vector3<T> force, out Vector3<T> moment);
        T test = burning * model.Thrust(time);
        Acting<T>.Of(model.Nozzle, mass, s.Rate, test, model.ShareOfImpulse(test), burning, air.Pressure, force, moment, out acting);
    }

    /// <summary>Free flight.</summary>
    public FlightState<T> Free<T>(T time, in FlightState<T> s, T burning)
        where T : struct, IReal<T>
    {
        model.Around(s.Position.Z, out FlightAir<T> air, out Vector3<T> wind);
        Act(time, s, burning, air, wind, out Acting<T> acting, out _, out FlightMass<T> mass, out _);
        Acceleration(s, acting.Force, mass.Mass, out Vector3<T> acceleration);
        RigidBody.AngularAcceleration(mass.Inertia, s.Rate, acting.Moment, out Vector3<T> angular);
        return new(s.Velocity, acceleration, s.Attitude.Derivative(s.Rate), angular, acting.TestThrust);
    }

    /// <summary>Acceleration of the centre of mass in free flight, east, north, up, m/s².</summary>
    private void Acceleration<T>(in FlightState<T> s, in Vector3<T> force, in T mass, out Vector3<T> acceleration)
        where T : struct, IReal<T>
    {
        Vector3<T> a = (T.From(1) / mass) * s.Attitude.ToFrame(force);
        Vector3<T> turning = T.From(2) * Vector3<T>.Cross(Widen<T>(model.EarthRate), s.Velocity);
        acceleration = new(a.X - turning.X, a.Y - turning.Y, a.Z - model.Gravity(s.Position.Z) - turning.Z);
    }

    /// <summary>A dive: the nose into the air whatever the rocket would do, so that nothing acts but drag and weight.</summary>
    /// <returns>Acceleration, east, north, up, m/s².</returns>
    public Vector3<T> Dive<T>(Vector3<T> position, Vector3<T> velocity)
        where T : struct, IReal<T>
    {
        T zero = T.From(0), height = position.Z;
        model.Around(height, out FlightAir<T> air, out Vector3<T> wind);
        T airspeed = (velocity - wind).Length;
        model.Aerodynamics(
            airspeed / air.SoundSpeed, zero, T.From(1), air.Density * airspeed / air.Viscosity, zero, out FlightCoefficients<T> c);
        model.Mass(T.From(1), out FlightMass<T> mass);
        return DescentEquations.Acceleration(model, position, velocity, mass.Mass, T.From(model.Area) * c.Axial);
    }

    /// <summary>A state with the nose along its motion through the air, not turning.</summary>
    public FlightState<Scalar> IntoTheAir(in FlightState<Scalar> s)
    {
        model.Around<Scalar>(s.Position.Z, out _, out Vector3<Scalar> wind);
        Vector3<Scalar> through = s.Velocity - wind;
        double level = Math.Sqrt((through.X * through.X) + (through.Y * through.Y));
        return s with
        {
            Attitude = RailAttitude.Of(Math.Atan2(through.Z, level), Math.Atan2(through.X, through.Y), 0),
            Rate = Vector3<Scalar>.Zero,
        };
    }

    private static Vector3<T> Widen<T>(Vector3<Scalar> v)
        where T : struct, IReal<T> => new(T.From(v.X), T.From(v.Y), T.From(v.Z));
}
