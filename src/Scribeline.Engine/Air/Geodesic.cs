namespace Scribeline.Engine.Air;

/// <summary>The shortest line over the WGS 84 ellipsoid between two points, at height 0.</summary>
/// <param name="Distance">m. At a field h above the ellipsoid multiply by 1 + h/R, R about 6371 km.</param>
/// <param name="Azimuth">Direction at the first point, rad clockwise from north, 0 up to 2π.</param>
/// <param name="ReverseAzimuth">Direction at the second point back to the first, rad clockwise from north, 0 up to 2π.</param>
public readonly record struct Geodesic(double Distance, double Azimuth, double ReverseAzimuth)
{
    /// <summary>
    /// Distance and azimuths, to 0.5 mm (T. Vincenty, <i>Survey Review</i> 23 (176), 1975, inverse formula).
    /// Null for nearly antipodal points, where the iteration does not settle.
    /// </summary>
    public static Geodesic? Between(Geodetic from, Geodetic to)
    {
        const double a = Wgs84.SemiMajorAxis, b = Wgs84.SemiMinorAxis, f = Wgs84.Flattening;
        var L = Math.IEEERemainder(to.Longitude - from.Longitude, Math.Tau);
        var (sinU1, cosU1) = Math.SinCos(Math.Atan((1 - f) * Math.Tan(from.Latitude)));
        var (sinU2, cosU2) = Math.SinCos(Math.Atan((1 - f) * Math.Tan(to.Latitude)));
        var lambda = L;
        for (var i = 0; i < 100; i++)
        {
            var (sinLambda, cosLambda) = Math.SinCos(lambda);
            var east = cosU2 * sinLambda;
            var north = (cosU1 * sinU2) - (sinU1 * cosU2 * cosLambda);
            var sinSigma = double.Hypot(east, north);
            if (sinSigma == 0) return new(0, 0, 0);
            var cosSigma = (sinU1 * sinU2) + (cosU1 * cosU2 * cosLambda);
            var sigma = Math.Atan2(sinSigma, cosSigma);
            var sinAlpha = cosU1 * cosU2 * sinLambda / sinSigma;
            var cos2Alpha = 1 - (sinAlpha * sinAlpha);
            var cos2SigmaM = cos2Alpha < 1e-15 ? 0 : cosSigma - (2 * sinU1 * sinU2 / cos2Alpha);
            var C = f / 16 * cos2Alpha * (4 + (f * (4 - (3 * cos2Alpha))));
            var previous = lambda;
            var inner = cos2SigmaM + (C * cosSigma * ((2 * cos2SigmaM * cos2SigmaM) - 1));
            lambda = L + ((1 - C) * f * sinAlpha * (sigma + (C * sinSigma * inner)));
            if (Math.Abs(lambda - previous) > 1e-13) continue;

            var u2 = cos2Alpha * ((a * a) - (b * b)) / (b * b);
            var A = 1 + (u2 / 16384 * (4096 + (u2 * (-768 + (u2 * (320 - (175 * u2)))))));
            var B = u2 / 1024 * (256 + (u2 * (-128 + (u2 * (74 - (47 * u2))))));
            var deltaSigma = B * sinSigma * (cos2SigmaM + (B / 4 * ((cosSigma * ((2 * cos2SigmaM * cos2SigmaM) - 1))
                - (B / 6 * cos2SigmaM * ((4 * sinSigma * sinSigma) - 3) * ((4 * cos2SigmaM * cos2SigmaM) - 3)))));
            var reverse = Math.Atan2(-cosU1 * sinLambda, (sinU1 * cosU2) - (cosU1 * sinU2 * cosLambda));
            return new(b * A * (sigma - deltaSigma), Turned(Math.Atan2(east, north)), Turned(reverse));
        }
        return null;
    }

    /// <summary>Distance over a sphere of 6371 km, m: within 0.6 % of the ellipsoid's, for a first look only (haversine formula).</summary>
    public static double SphericalDistance(Geodetic from, Geodetic to)
    {
        var (sinPhi, sinLambda) = (Math.Sin((to.Latitude - from.Latitude) / 2), Math.Sin((to.Longitude - from.Longitude) / 2));
        var haversine = (sinPhi * sinPhi) + (Math.Cos(from.Latitude) * Math.Cos(to.Latitude) * sinLambda * sinLambda);
        return 2 * 6_371_000 * Math.Asin(Math.Min(Math.Sqrt(haversine), 1));
    }

    private static double Turned(double azimuth) => azimuth < 0 ? azimuth + Math.Tau : azimuth;
}
