using System.Runtime.CompilerServices;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>Inertia tensor about the centre of mass, kg·m²: moments, and products as the integrals of xy, xz, yz.</summary>
/// <typeparam name="T">The number type.</typeparam>
public readonly record struct Inertia<T>(T Xx, T Yy, T Zz, T Xy, T Xz, T Yz)
    where T : struct, IReal<T>
{
    /// <summary>Principal axes along the body's, kg·m².</summary>
    public static Inertia<T> Principal(T xx, T yy, T zz) => new(xx, yy, zz, T.From(0), T.From(0), T.From(0));

    /// <summary>The tensor times a vector: angular momentum of an angular rate.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3<T> operator *(Inertia<T> i, Vector3<T> w) => new(
        i.Xx * w.X - i.Xy * w.Y - i.Xz * w.Z,
        i.Yy * w.Y - i.Xy * w.X - i.Yz * w.Z,
        i.Zz * w.Z - i.Xz * w.X - i.Yz * w.Y);

    /// <summary>The angular acceleration a moment gives, by Cramer's rule.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector3<T> Solve(Vector3<T> m)
    {
        T a = Yy * Zz - Yz * Yz, b = Xy * Zz + Xz * Yz, c = Xy * Yz + Xz * Yy;
        T d = Xx * Zz - Xz * Xz, e = Xx * Yz + Xy * Xz, f = Xx * Yy - Xy * Xy;
        T k = T.From(1) / (Xx * a - Xy * b - Xz * c);
        return new(k * (a * m.X + b * m.Y + c * m.Z), k * (b * m.X + d * m.Y + e * m.Z), k * (c * m.X + e * m.Y + f * m.Z));
    }
}
