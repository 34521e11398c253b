using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>
/// Gravity: normal gravity of the WGS 84 ellipsoid with height (centrifugal part included), the standard atmosphere's form, and
/// gravitation with J2 in inertial axes. Heights in m, gravity in m/s², positive down unless a vector.
/// </summary>
public static class Gravity
{
    /// <summary>
    /// Normal gravity at a latitude and height above the ellipsoid: Somigliana's closed form (NIMA TR8350.2, equation 4-1) and the
    /// second-order height term (equation 4-3). Good to 1e-7 m/s² up to 10 km or so.
    /// </summary>
    /// <param name="latitude">Geodetic latitude, rad.</param>
    /// <param name="height">m above the ellipsoid.</param>
    public static double Normal(double latitude, double height) => new SiteGravity(latitude).At<Scalar>(height);

    /// <summary>The standard atmosphere's gravity g0 (r0/(r0 + Z))² at geometric height Z.</summary>
    public static T Standard<T>(T heightAboveSea)
        where T : struct, IReal<T>
    {
        var ratio = T.From(AirConstants.EarthRadius) / (T.From(AirConstants.EarthRadius) + heightAboveSea);
        return T.From(AirConstants.StandardGravity) * ratio * ratio;
    }

    /// <summary>
    /// Gravitation (no centrifugal part) with the J2 term at a position in Earth-centred inertial axes, m; z towards the north pole
    /// (NASA/TM-2015-218675, equations 29 to 31). <paramref name="j2"/> = 0 gives the inverse square.
    /// </summary>
    public static (T X, T Y, T Z) Gravitation<T>(T x, T y, T z, double j2 = Wgs84.J2)
        where T : struct, IReal<T>
    {
        var (z2, r2) = (z * z, (x * x) + (y * y) + (z * z));
        var central = -(T.From(Wgs84.GravitationalConstant) / (r2 * T.Sqrt(r2)));
        var oblate = T.From(1.5 * j2 * Wgs84.SemiMajorAxis * Wgs84.SemiMajorAxis) / (r2 * r2);
        var across = central * (T.From(1) - (oblate * ((T.From(5) * z2) - r2)));
        var along = central * (T.From(1) - (oblate * ((T.From(5) * z2) - (T.From(3) * r2))));
        return (across * x, across * y, along * z);
    }
}
