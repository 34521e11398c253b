using System.Runtime.CompilerServices;
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
        T one = T.From(1), height = s.Position.Z;
        NozzleGeometry nozzle = model.Nozzle;

        FlightMass<T> mass = model.Mass(T.Min(s.Impulse / T.From(model.TotalImpulse), one));
        FlightAir<T> air = model.Air(height);
        Vector3<T> wind = model.Wind(height);
        Vector3<T> flow = s.Attitude.ToBody(s.Velocity - wind);

        T cross = T.Sqrt(flow.Y * flow.Y + flow.Z * flow.Z);
        T airspeed = T.Sqrt(cross * cross + flow.X * flow.X);
        T angle = T.Atan2(cross, flow.X);
        FlightCoefficients<T> c = model.Aerodynamics(airspeed / air.SoundSpeed, angle, air.Density * airspeed / air.Viscosity, burning);
        Vector3<T> force = BodyAerodynamics.Force(
            c, air.Density, flow, airspeed, s.Rate, mass.Station, T.From(model.Area), T.From(model.Calibre), out Vector3<T> moment);

        // Aerodynamic forces act on the axis, which the centre of mass may miss.
        moment -= Vector3<T>.Cross(new(T.From(0), mass.OffsetY, mass.OffsetZ), force);

        T test = burning * model.Thrust(time);
        T thrust = T.SelectLess(T.From(0), test, test + burning * T.From(nozzle.ExitArea) * (T.From(nozzle.TestPressure) - air.Pressure), T.From(0));
        Vector3<T> along = new(one, T.From(nozzle.TiltY), T.From(nozzle.TiltZ));
        Vector3<T> push = (thrust / along.Length) * along;
        T arm = T.From(nozzle.Station) - mass.Station;
        Vector3<T> exit = new(-arm, T.From(nozzle.OffsetY) - mass.OffsetY, T.From(nozzle.OffsetZ) - mass.OffsetZ);
        moment += Vector3<T>.Cross(exit, push);

        T burnRate = test / T.From(model.TotalImpulse);
        T outflow = -mass.MassSlope * burnRate;
        T transverse = mass.TransverseInertiaSlope * burnRate;
        moment += RigidBody.JetDamping(
            s.Rate, outflow, arm, T.From(nozzle.ExitArea / (2 * Math.PI)), mass.AxialInertiaSlope * burnRate, transverse);

        return new(
            force + push, moment, model.Gravity(height), thrust, test, outflow, transverse, mass, air, wind, flow, airspeed, angle, c);
    }

    /// <summary>Free flight.</summary>
    public FlightState<T> Free<T>(T time, in FlightState<T> s, T burning)
        where T : struct, IReal<T>
    {
        FlightLoads<T> loads = Loads(time, s, burning);
        return new(
            s.Velocity,
            Acceleration(s, loads),
            s.Attitude.Derivative(s.Rate),
            RigidBody.AngularAcceleration(loads.Mass.Inertia, s.Rate, loads.Moment),
            loads.TestThrust);
    }

    /// <summary>A dive: the nose into the air whatever the rocket would do, so that nothing acts but drag and weight.</summary>
    public FlightState<Scalar> Dive(double time, in FlightState<Scalar> s)
    {
        FlightState<Scalar> aligned = IntoTheAir(s);
        Vector3<Scalar> acceleration = Acceleration<Scalar>(aligned, Loads<Scalar>(time, aligned, 0));
        return new(s.Velocity, acceleration, new(0, 0, 0, 0), Vector3<Scalar>.Zero, 0);
    }

    /// <summary>A state with the nose along its motion through the air, not turning.</summary>
    public FlightState<Scalar> IntoTheAir(in FlightState<Scalar> s)
    {
        Vector3<Scalar> through = s.Velocity - model.Wind<Scalar>(s.Position.Z);
        double level = Math.Sqrt((through.X * through.X) + (through.Y * through.Y));
        return s with
        {
            Attitude = RailAttitude.Of(Math.Atan2(through.Z, level), Math.Atan2(through.X, through.Y), 0),
            Rate = Vector3<Scalar>.Zero,
        };
    }

    /// <summary>Acceleration of the centre of mass in free flight, east, north, up, m/s².</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector3<T> Acceleration<T>(in FlightState<T> s, in FlightLoads<T> loads)
        where T : struct, IReal<T>
    {
        Vector3<T> a = (T.From(1) / loads.Mass.Mass) * s.Attitude.ToFrame(loads.Force);
        Vector3<T> turning = T.From(2) * Vector3<T>.Cross(Widen<T>(model.EarthRate), s.Velocity);
        return new(a.X - turning.X, a.Y - turning.Y, a.Z - loads.Gravity - turning.Z);
    }

    private static Vector3<T> Widen<T>(Vector3<Scalar> v)
        where T : struct, IReal<T> => new(T.From(v.X), T.From(v.Y), T.From(v.Z));
}
