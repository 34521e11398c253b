namespace Scribeline.Engine.Air;

/// <summary>Radii of curvature of the WGS 84 ellipsoid, m, by geodetic latitude, rad (NIMA TR8350.2, section 4).</summary>
public static class EarthRadii
{
    /// <summary>M, in the meridian: metres of north per radian of latitude.</summary>
    public static double Meridian(double latitude) =>
        Wgs84.SemiMajorAxis * (1 - Wgs84.EccentricitySquared) / Math.Pow(Root(latitude), 3);

    /// <summary>N, across the meridian: N cos φ metres of east per radian of longitude.</summary>
    public static double PrimeVertical(double latitude) => Wgs84.SemiMajorAxis / Root(latitude);

    private static double Root(double latitude) => Math.Sqrt(1 - (Wgs84.EccentricitySquared * Math.Pow(Math.Sin(latitude), 2)));
}
