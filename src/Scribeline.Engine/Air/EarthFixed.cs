namespace Scribeline.Engine.Air;

/// <summary>A point by Earth-centred, Earth-fixed axes, m: x to the prime meridian on the equator, z to the north pole.</summary>
public readonly record struct EarthFixed(double X, double Y, double Z)
{
    /// <summary>
    /// The same point by latitude, longitude and height, to 1e-13 rad; from 5000 km from the centre outward, poles included.
    /// Iterates tan φ = (Z + e² N sin φ)/p.
    /// </summary>
    public Geodetic ToGeodetic()
    {
        var p = double.Hypot(X, Y);
        var phi = Math.Atan2(Z, p * (1 - Wgs84.EccentricitySquared));
        for (var i = 0; i < 20; i++)
        {
            var next = Math.Atan2(Z + (Wgs84.EccentricitySquared * EarthRadii.PrimeVertical(phi) * Math.Sin(phi)), p);
            var change = Math.Abs(next - phi);
            phi = next;
            if (change < 1e-14) break;
        }

        // Height along the normal, sound at the poles and the equator alike.
        var (sin, cos) = Math.SinCos(phi);
        var height = (p * cos) + (Z * sin) - (Wgs84.SemiMajorAxis * Wgs84.SemiMajorAxis / EarthRadii.PrimeVertical(phi));
        return new(phi, Math.Atan2(Y, X), height);
    }
}
