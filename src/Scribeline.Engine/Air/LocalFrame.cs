namespace Scribeline.Engine.Air;

/// <summary>East, north and up axes at an origin, with their exact relation to the WGS 84 ellipsoid.</summary>
/// <param name="Origin">Where the axes are tangent.</param>
public sealed record LocalFrame(Geodetic Origin)
{
    /// <summary>East, north and up, m, of a point.</summary>
    public (double East, double North, double Up) ToLocal(Geodetic point)
    {
        var (o, p) = (Origin.ToEarthFixed(), point.ToEarthFixed());
        var (x, y, z) = (p.X - o.X, p.Y - o.Y, p.Z - o.Z);
        var (sinPhi, cosPhi) = Math.SinCos(Origin.Latitude);
        var (sinLambda, cosLambda) = Math.SinCos(Origin.Longitude);
        var outward = (cosLambda * x) + (sinLambda * y);
        return ((cosLambda * y) - (sinLambda * x), (cosPhi * z) - (sinPhi * outward), (cosPhi * outward) + (sinPhi * z));
    }

    /// <summary>The point at east, north and up, m.</summary>
    public Geodetic ToGeodetic(double east, double north, double up)
    {
        var o = Origin.ToEarthFixed();
        var (sinPhi, cosPhi) = Math.SinCos(Origin.Latitude);
        var (sinLambda, cosLambda) = Math.SinCos(Origin.Longitude);
        var outward = (cosPhi * up) - (sinPhi * north);
        return new EarthFixed(
            o.X + (cosLambda * outward) - (sinLambda * east),
            o.Y + (sinLambda * outward) + (cosLambda * east),
            o.Z + (cosPhi * north) + (sinPhi * up)).ToGeodetic();
    }

    /// <summary>Metres of east and north per radian of longitude and latitude at the origin, for maps a few km wide.</summary>
    public (double East, double North) Scale =>
        ((EarthRadii.PrimeVertical(Origin.Latitude) + Origin.Height) * Math.Cos(Origin.Latitude),
        EarthRadii.Meridian(Origin.Latitude) + Origin.Height);
}
