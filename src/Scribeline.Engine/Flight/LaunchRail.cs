namespace Scribeline.Engine.Flight;

/// <summary>The rail and how the rocket sits on it.</summary>
/// <param name="Length">Usable length, from the rocket's aft end at rest to the rail's tip, m, more than 0.</param>
/// <param name="Elevation">Above the horizon, rad, 0 to π/2.</param>
/// <param name="Azimuth">Direction it leans towards, rad clockwise from north.</param>
/// <param name="ForwardGuide">Station of the forward guide, m aft of the nose tip.</param>
/// <param name="AftGuide">Station of the aft guide, m aft of the nose tip, not less than <paramref name="ForwardGuide"/>.</param>
/// <param name="Friction">Coefficient of friction of the guides on the rail, 0 or more.</param>
/// <param name="ScribeHeading">
/// Turn of the rocket about its axis, rad, clockwise looking forward from the tail; at 0 the scribe line is on the rocket's upper
/// side, away from <paramref name="Azimuth"/>.
/// </param>
public sealed record LaunchRail(
    double Length,
    double Elevation,
    double Azimuth,
    double ForwardGuide,
    double AftGuide,
    double Friction = 0,
    double ScribeHeading = 0);
