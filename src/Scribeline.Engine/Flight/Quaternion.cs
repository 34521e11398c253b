using System.Runtime.CompilerServices;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// Unit quaternion, scalar first, that turns body axes into the frame of flight.
/// Source: Stevens, Lewis and Johnson, Aircraft Control and Simulation, quaternion kinematics (from memory).
/// </summary>
/// <typeparam name="T">The number type.</typeparam>
public readonly record struct Quaternion<T>(T W, T X, T Y, T Z)
    where T : struct, IReal<T>
{
    /// <summary>No rotation.</summary>
    public static Quaternion<T> Identity => new(T.From(1), T.From(0), T.From(0), T.From(0));

    /// <summary>Euclidean norm, 1 but for the drift of integration.</summary>
    public T Norm => T.Sqrt(W * W + X * X + Y * Y + Z * Z);

    /// <summary>The same rotation with norm 1.</summary>
    public Quaternion<T> Normalised()
    {
        T k = T.From(1) / Norm;
        return new(k * W, k * X, k * Y, k * Z);
    }

    /// <summary>The vector, given in body axes, in the frame of flight.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector3<T> ToFrame(Vector3<T> body)
    {
        // v + 2w(u × v) + 2u × (u × v), u the vector part.
        Vector3<T> u = new(X, Y, Z);
        T two = T.From(2);
        Vector3<T> t = two * Vector3<T>.Cross(u, body);
        return body + W * t + Vector3<T>.Cross(u, t);
    }

    /// <summary>The vector, given in the frame of flight, in body axes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector3<T> ToBody(Vector3<T> frame)
    {
        Vector3<T> u = new(-X, -Y, -Z);
        T two = T.From(2);
        Vector3<T> t = two * Vector3<T>.Cross(u, frame);
        return frame + W * t + Vector3<T>.Cross(u, t);
    }

    /// <summary>Rate of change at body rate <paramref name="rate"/>, rad/s in body axes: half of q ⊗ (0, ω).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Quaternion<T> Derivative(Vector3<T> rate)
    {
        T half = T.From(0.5);
        return new(
            -half * (X * rate.X + Y * rate.Y + Z * rate.Z),
            half * (W * rate.X + Y * rate.Z - Z * rate.Y),
            half * (W * rate.Y + Z * rate.X - X * rate.Z),
            half * (W * rate.Z + X * rate.Y - Y * rate.X));
    }

    /// <summary>The rotation whose body x, y, z axes are the given perpendicular unit vectors of the frame.</summary>
    public static Quaternion<Scalar> FromAxes(Vector3<Scalar> x, Vector3<Scalar> y, Vector3<Scalar> z)
    {
        // Shepperd's choice of the largest element keeps the square root away from zero.
        double trace = x.X + y.Y + z.Z;
        if (trace > 0)
        {
            double s = 2 * Math.Sqrt(1 + trace);
            return new(s / 4, (y.Z - z.Y) / s, (z.X - x.Z) / s, (x.Y - y.X) / s);
        }

        if (x.X >= y.Y && x.X >= z.Z)
        {
            double s = 2 * Math.Sqrt(1 + x.X - y.Y - z.Z);
            return new((y.Z - z.Y) / s, s / 4, (y.X + x.Y) / s, (z.X + x.Z) / s);
        }

        if (y.Y >= z.Z)
        {
            double s = 2 * Math.Sqrt(1 + y.Y - x.X - z.Z);
            return new((z.X - x.Z) / s, (y.X + x.Y) / s, s / 4, (z.Y + y.Z) / s);
        }

        double r = 2 * Math.Sqrt(1 + z.Z - x.X - y.Y);
        return new((x.Y - y.X) / r, (z.X + x.Z) / r, (z.Y + y.Z) / r, r / 4);
    }
}
