namespace Scribeline.Engine.Air;

/// <summary>A point by WGS 84 latitude, longitude and height.</summary>
/// <param name="Latitude">Geodetic, rad, north positive.</param>
/// <param name="Longitude">rad, east positive.</param>
/// <param name="Height">m above the ellipsoid.</param>
public readonly record struct Geodetic(double Latitude, double Longitude, double Height)
{
    /// <summary>The same point by Earth-centred, Earth-fixed axes, m (NIMA TR8350.2, equation 4-14).</summary>
    public EarthFixed ToEarthFixed()
    {
        var (sinPhi, cosPhi) = Math.SinCos(Latitude);
        var (sinLambda, cosLambda) = Math.SinCos(Longitude);
        var N = EarthRadii.PrimeVertical(Latitude);
        return new(
            (N + Height) * cosPhi * cosLambda,
            (N + Height) * cosPhi * sinLambda,
            ((N * (1 - Wgs84.EccentricitySquared)) + Height) * sinPhi);
    }
}
