using System.Runtime.CompilerServices;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>Three components in one right-handed frame; the doc of whoever holds it says which, and in what unit.</summary>
/// <typeparam name="T">The number type.</typeparam>
public readonly record struct Vector3<T>(T X, T Y, T Z)
    where T : struct, IReal<T>
{
    /// <summary>The null vector.</summary>
    public static Vector3<T> Zero => new(T.From(0), T.From(0), T.From(0));

    /// <summary>Euclidean length.</summary>
    public T Length
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => T.Sqrt(Dot(this, this));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3<T> operator +(Vector3<T> a, Vector3<T> b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3<T> operator -(Vector3<T> a, Vector3<T> b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3<T> operator -(Vector3<T> a) => new(-a.X, -a.Y, -a.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3<T> operator *(T k, Vector3<T> a) => new(k * a.X, k * a.Y, k * a.Z);

    /// <summary>Scalar product.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Dot(Vector3<T> a, Vector3<T> b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;

    /// <summary>Vector product.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3<T> Cross(Vector3<T> a, Vector3<T> b) =>
        new(a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);
}
