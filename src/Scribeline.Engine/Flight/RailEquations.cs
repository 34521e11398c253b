using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// The rocket on its rail: held by both guides, then by the aft guide alone, about which it turns.
/// With both guides attitude is fixed and m s'' = F_x − μ|N|, N the force across the rail that the guides must carry.
/// With one guide at ℓ behind the centre of mass, moving along the unit vector u: I_A ω' + ω × I_A ω + m ℓ × s'' u = M_A and
/// m u·(s'' u + ω' × ℓ + ω × (ω × ℓ)) = u·F − μ|N|; the rail holds roll. For small angles this is
/// (I_t + m l²) θ'' = l[(T − D) θ + m g cos(elevation)]. Derived from Newton and Euler; no published standard for guided tip-off.
/// </summary>
internal static class RailEquations
{
    /// <summary>Both guides on the rail. Until it moves, a net force down the rail is carried by the stop.</summary>
    public static FlightState<T> Guided<T, TModel>(in FlightEquations<TModel> equations, T time, in FlightState<T> s, T burning, T friction)
        where T : struct, IReal<T>
        where TModel : struct, IFlightModel
    {
        FlightLoads<T> loads = equations.Loads(time, s, burning);
        T zero = T.From(0), a = NetForce(s, loads, friction) / loads.Mass.Mass;
        Vector3<T> up = s.Attitude.ToFrame(new(T.From(1), zero, zero));
        a = T.SelectLess(zero, Vector3<T>.Dot(up, s.Velocity), a, T.Max(a, zero));
        return new(s.Velocity, a * up, Still<T>(), Vector3<T>.Zero, loads.TestThrust);
    }

    /// <summary>Held on the stop while the thrust builds up.</summary>
    public static FlightState<T> Held<T, TModel>(in FlightEquations<TModel> equations, T time, T burning)
        where T : struct, IReal<T>
        where TModel : struct, IFlightModel =>
        new(Vector3<T>.Zero, Vector3<T>.Zero, Still<T>(), Vector3<T>.Zero, burning * equations.Model.Thrust(time));

    /// <summary>Force up the rail after friction, N: lift-off when it turns positive.</summary>
    public static T NetForce<T>(in FlightState<T> s, in FlightLoads<T> loads, T friction)
        where T : struct, IReal<T>
    {
        Vector3<T> total = loads.Force + Weight(s, loads);
        return total.X - friction * T.Sqrt(total.Y * total.Y + total.Z * total.Z);
    }

    /// <summary>Only the aft guide on the rail.</summary>
    /// <param name="equations">Rocket and day.</param>
    /// <param name="time">s.</param>
    /// <param name="s">State.</param>
    /// <param name="burning">1 while the motor burns.</param>
    /// <param name="friction">μ.</param>
    /// <param name="rail">Unit vector up the rail, east, north, up.</param>
    /// <param name="guide">Station of the aft guide, m.</param>
    public static FlightState<T> Pivoting<T, TModel>(
        in FlightEquations<TModel> equations, T time, in FlightState<T> s, T burning, T friction, Vector3<T> rail, T guide)
        where T : struct, IReal<T>
        where TModel : struct, IFlightModel
    {
        T zero = T.From(0);
        FlightLoads<T> loads = equations.Loads(time, s, burning);
        T m = loads.Mass.Mass;
        Vector3<T> u = s.Attitude.ToBody(rail);
        Vector3<T> force = loads.Force + Weight(s, loads);

        // All about the guide; its arm to the centre of mass lies on the axis.
        T l = guide - loads.Mass.Station;
        Vector3<T> arm = new(l, zero, zero);
        Inertia<T> about = loads.Mass.Inertia with { Yy = loads.Mass.Inertia.Yy + m * l * l, Zz = loads.Mass.Inertia.Zz + m * l * l };
        Vector3<T> moment = loads.Moment + Vector3<T>.Cross(arm, force) - Vector3<T>.Cross(s.Rate, about * s.Rate);
        Vector3<T> swing = Vector3<T>.Cross(s.Rate, Vector3<T>.Cross(s.Rate, arm));

        Vector3<T> c = Vector3<T>.Cross(arm, u);
        Vector3<T> ofMoment = Transverse(about, moment), ofArm = Transverse(about, c);
        T alongRail = Vector3<T>.Dot(u, force) - m * (Vector3<T>.Dot(ofMoment, c) + Vector3<T>.Dot(u, swing));
        T inertia = m - m * m * Vector3<T>.Dot(ofArm, c);

        // The guide's load follows from the motion without friction; friction is too small a part of it to go round again.
        Vector3<T> free = Motion(alongRail / inertia, out _);
        Vector3<T> load = m * free - force;
        load -= Vector3<T>.Dot(load, u) * u;
        Vector3<T> a = Motion((alongRail - friction * load.Length) / inertia, out Vector3<T> turn);
        return new(s.Velocity, s.Attitude.ToFrame(a), s.Attitude.Derivative(s.Rate), turn, loads.TestThrust);

        Vector3<T> Motion(T along, out Vector3<T> angular)
        {
            angular = ofMoment - (m * along) * ofArm;
            return along * u + Vector3<T>.Cross(angular, arm) + swing;
        }
    }

    /// <summary>Angular acceleration across the axis alone: the rail holds roll.</summary>
    private static Vector3<T> Transverse<T>(in Inertia<T> i, Vector3<T> moment)
        where T : struct, IReal<T>
    {
        T k = T.From(1) / (i.Yy * i.Zz - i.Yz * i.Yz);
        return new(T.From(0), k * (i.Zz * moment.Y + i.Yz * moment.Z), k * (i.Yz * moment.Y + i.Yy * moment.Z));
    }

    private static Vector3<T> Weight<T>(in FlightState<T> s, in FlightLoads<T> loads)
        where T : struct, IReal<T>
    {
        T zero = T.From(0);
        return s.Attitude.ToBody(new(zero, zero, -loads.Mass.Mass * loads.Gravity));
    }

    private static Quaternion<T> Still<T>()
        where T : struct, IReal<T>
    {
        T zero = T.From(0);
        return new(zero, zero, zero, zero);
    }
}
