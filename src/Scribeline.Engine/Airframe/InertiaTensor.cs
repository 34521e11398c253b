namespace Scribeline.Engine.Airframe;

/// <summary>Symmetric inertia tensor, kg·m²; products are the integrals of xy, xz, yz (so the tensor's off-diagonals are their negatives).</summary>
/// <param name="Xx">About the long axis: ∫(y²+z²)dm.</param>
/// <param name="Yy">∫(x²+z²)dm.</param>
/// <param name="Zz">∫(x²+y²)dm.</param>
/// <param name="Xy">∫xy dm.</param>
/// <param name="Xz">∫xz dm.</param>
/// <param name="Yz">∫yz dm.</param>
public readonly record struct InertiaTensor(double Xx, double Yy, double Zz, double Xy = 0, double Xz = 0, double Yz = 0)
{
    /// <summary>Mean of the two inertias across the long axis, kg·m².</summary>
    public double Lateral => (Yy + Zz) / 2;

    /// <summary>Of a unit mass at a point, m².</summary>
    public static InertiaTensor OfPoint(double x, double y, double z) => new(y * y + z * z, x * x + z * z, x * x + y * y, x * y, x * z, y * z);

    /// <summary>
    /// From second moments in the frame of a clock angle: axes forward (x), radially outward (r) and tangential towards growing clock angle (t).
    /// </summary>
    /// <param name="clock">rad from the scribe line, clockwise looking forward from the tail.</param>
    /// <param name="xx">∫x²dm.</param>
    /// <param name="rr">∫r²dm.</param>
    /// <param name="tt">∫t²dm.</param>
    /// <param name="xr">∫xr dm.</param>
    public static InertiaTensor AtClock(double clock, double xx, double rr, double tt, double xr)
    {
        // Outward is (sin, -cos) in (y, z); tangential is (cos, sin).
        (double s, double c) = Math.SinCos(clock);
        double yy = rr * s * s + tt * c * c, zz = rr * c * c + tt * s * s;
        return new(yy + zz, xx + zz, xx + yy, xr * s, -xr * c, (tt - rr) * s * c);
    }

    public static InertiaTensor operator +(InertiaTensor a, InertiaTensor b) =>
        new(a.Xx + b.Xx, a.Yy + b.Yy, a.Zz + b.Zz, a.Xy + b.Xy, a.Xz + b.Xz, a.Yz + b.Yz);

    public static InertiaTensor operator -(InertiaTensor a, InertiaTensor b) => a + -1 * b;

    public static InertiaTensor operator *(double k, InertiaTensor a) => new(k * a.Xx, k * a.Yy, k * a.Zz, k * a.Xy, k * a.Xz, k * a.Yz);
}
