using System.Runtime.InteropServices;
using Scribeline.Engine.Air;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>
/// A body over a turning round Earth, in inertial axes that are the Earth's own at time 0: gravitation, atmosphere, attitude and rotation
/// of the engine, put together for the check-cases of NASA/TM-2015-218675. State: position, velocity, attitude to inertial, inertial body rate.
/// </summary>
internal readonly record struct RoundEarth() : IOdeSystem
{
    private const double SphereRadius = 6_371_007.1809;

    public bool Sphere { get; init; }

    /// <summary>rad/s.</summary>
    public double Turning { get; init; } = Wgs84.RotationRate;

    /// <summary>kg.</summary>
    public double Mass { get; init; } = 1;

    /// <summary>m².</summary>
    public double DragArea { get; init; }

    public Inertia<Scalar> Inertia { get; init; } = new(1, 1, 1, 0, 0, 0);

    /// <summary>Reference area times the squares of span, chord, span over two, m⁴: moments −½ρV of these times the rates.</summary>
    public Vector3<Scalar> Damping { get; init; }

    /// <summary>Wind to the east at height 0, m/s, and its slope with height, 1/s.</summary>
    public double Wind { get; init; }

    public double WindSlope { get; init; }

    public int Dimension => 13;

    public Geodetic Place(double time, Vector3<Scalar> inertial)
    {
        Vector3<Scalar> r = Turn(inertial, -Turning * time);
        if (!Sphere) return new EarthFixed(r.X, r.Y, r.Z).ToGeodetic();
        double radius = r.Length;
        return new(Math.Asin(r.Z / radius), Math.Atan2(r.Y, r.X), radius - SphereRadius);
    }

    public Vector3<Scalar> Inertial(Geodetic place)
    {
        if (!Sphere)
        {
            EarthFixed e = place.ToEarthFixed();
            return new(e.X, e.Y, e.Z);
        }

        (double s, double c) = Math.SinCos(place.Latitude);
        (double sl, double cl) = Math.SinCos(place.Longitude);
        return (Scalar)(SphereRadius + place.Height) * new Vector3<Scalar>(c * cl, c * sl, s);
    }

    /// <summary>North, east and down at a place, in inertial axes.</summary>
    public (Vector3<Scalar> North, Vector3<Scalar> East, Vector3<Scalar> Down) Axes(double time, Geodetic place)
    {
        (double s, double c) = Math.SinCos(place.Latitude);
        (double sl, double cl) = Math.SinCos(place.Longitude + Turning * time);
        return (new(-s * cl, -s * sl, c), new(-sl, cl, 0), new(-c * cl, -c * sl, -s));
    }

    /// <summary>Velocity over the turning Earth, inertial axes.</summary>
    public Vector3<Scalar> OverGround(Vector3<Scalar> r, Vector3<Scalar> v) => v - Vector3<Scalar>.Cross(new(0, 0, Turning), r);

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate)
    {
        Vector3<Scalar> r = new(y[0], y[1], y[2]), v = new(y[3], y[4], y[5]), w = new(y[10], y[11], y[12]);
        Quaternion<Scalar> q = new(y[6], y[7], y[8], y[9]);
        Geodetic place = Place(time, r);
        (_, Vector3<Scalar> east, _) = Axes(time, place);
        Vector3<Scalar> flow = OverGround(r, v) - (Scalar)(Wind + WindSlope * place.Height) * east;
        double density = StandardAtmosphere.At<Scalar>(place.Height).Density, speed = flow.Length;
        (Scalar gx, Scalar gy, Scalar gz) = Gravity.Gravitation<Scalar>(r.X, r.Y, r.Z, Sphere ? 0 : Wgs84.J2);
        Vector3<Scalar> a = new Vector3<Scalar>(gx, gy, gz) - (Scalar)(0.5 * density * speed * DragArea / Mass) * flow;

        // Half a foot per second is the least speed the definition divides by.
        Vector3<Scalar> turn = w - q.ToBody(new(0, 0, Turning));
        double k = -0.5 * density * speed * speed / Math.Max(speed, 0.5 * 0.3048);
        Vector3<Scalar> moment = new(k * Damping.X * turn.X, k * Damping.Y * turn.Y, k * Damping.Z * turn.Z);
        RigidBody.AngularAcceleration(Inertia, w, moment, out Vector3<Scalar> spin);
        Span<Scalar> all = stackalloc Scalar[FlightState<Scalar>.Size];
        new FlightState<Scalar>(v, a, q.Derivative(w), spin, 0).Write(all);
        MemoryMarshal.Cast<Scalar, double>(all)[..13].CopyTo(rate);
    }

    private static Vector3<Scalar> Turn(Vector3<Scalar> v, double angle)
    {
        (double s, double c) = Math.SinCos(angle);
        return new(c * v.X - s * v.Y, s * v.X + c * v.Y, v.Z);
    }
}
