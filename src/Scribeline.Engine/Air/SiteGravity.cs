using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>
/// WGS 84 normal gravity above one latitude as a quadratic in height, and the rotation of the Earth as felt there.
/// Source: NIMA TR8350.2, equations 4-1 and 4-3.
/// </summary>
public readonly record struct SiteGravity
{
    private readonly double surface, linear, quadratic, north, up;

    /// <param name="latitude">Geodetic latitude, rad.</param>
    public SiteGravity(double latitude)
    {
        var sin2 = Math.Pow(Math.Sin(latitude), 2);
        const double a = Wgs84.SemiMajorAxis, f = Wgs84.Flattening;
        surface = Wgs84.EquatorGravity * (1 + (Wgs84.SomiglianaConstant * sin2)) / Math.Sqrt(1 - (Wgs84.EccentricitySquared * sin2));
        linear = -2 / a * (1 + f + Wgs84.GravityRatio - (2 * f * sin2));
        quadratic = 3 / (a * a);
        (north, up) = (Wgs84.RotationRate * Math.Cos(latitude), Wgs84.RotationRate * Math.Sin(latitude));
    }

    /// <summary>Gravity, m/s² (down), at a height in m above the ellipsoid (above sea serves).</summary>
    public T At<T>(T height)
        where T : struct, IReal<T> =>
        T.From(surface) * (T.From(1) + (height * (T.From(linear) + (T.From(quadratic) * height))));

    /// <summary>Coriolis acceleration -2 Ω × v in east, north, up axes, m/s², for a velocity in the same axes, m/s.</summary>
    public (T East, T North, T Up) Coriolis<T>(T east, T north, T up)
        where T : struct, IReal<T>
    {
        var (twoNorth, twoUp) = (T.From(2 * this.north), T.From(2 * this.up));
        return ((twoUp * north) - (twoNorth * up), -(twoUp * east), twoNorth * east);
    }
}
