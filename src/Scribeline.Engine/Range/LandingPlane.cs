using Scribeline.Engine.Air;

namespace Scribeline.Engine.Range;

/// <summary>
/// The plane on which landings are told: east and north of the pad in the plane that touches the ellipsoid's level there, points of the ground
/// taken to lie at the pad's height (the exact transform of NIMA TR8350.2, without series). Within 1 mm of the distance over the ground
/// up to 5 km, and 13 mm at 12 km: a plane shortens an arc d by d³/6R².
/// </summary>
/// <param name="Latitude">Of the pad, rad.</param>
/// <param name="Longitude">Of the pad, rad.</param>
/// <param name="Elevation">Of the pad, m above sea.</param>
public sealed record LandingPlane(double Latitude, double Longitude, double Elevation)
{
    private readonly LocalFrame frame = new(new(Latitude, Longitude, Elevation));

    /// <summary>The point of the plane below or above a place.</summary>
    /// <param name="placeLatitude">rad.</param>
    /// <param name="placeLongitude">rad.</param>
    public LandingPoint ToPlane(double placeLatitude, double placeLongitude)
    {
        var (east, north, _) = frame.ToLocal(new(placeLatitude, placeLongitude, Elevation));
        return new(east, north);
    }

    /// <summary>Latitude and longitude of a point of the plane, rad.</summary>
    public (double Latitude, double Longitude) ToPlace(LandingPoint point)
    {
        // The ground falls away below the plane; its drop does not depend on the drop worth telling.
        var up = 0.0;
        for (var i = 0; i < 4; i++) up -= frame.ToGeodetic(point.East, point.North, up).Height - Elevation;
        var place = frame.ToGeodetic(point.East, point.North, up);
        return (place.Latitude, place.Longitude);
    }
}
