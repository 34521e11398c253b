using Scribeline.Engine.Air;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Range;

namespace Scribeline.Engine.Resolving;

/// <summary>The day: motor, site, weather and rail. SI.</summary>
/// <param name="Motor">The motor of the day.</param>
/// <param name="Latitude">Of the site, rad; null takes 45° for gravity and leaves the Earth's turning out.</param>
/// <param name="Ceiling">Above the pad, m; null where the site states none.</param>
/// <param name="Air">Pressure, temperature and humidity at the pad and aloft.</param>
/// <param name="Wind">Mean wind.</param>
/// <param name="Weather">What is known of the weather.</param>
/// <param name="Turbulence">On top of the mean wind; null for none.</param>
/// <param name="Gust">Speed of gusts as reported, m/s; null where none is.</param>
/// <param name="Rail">The rail.</param>
public sealed record Day(
    Motor Motor, double? Latitude, double? Ceiling, DayAir Air, Wind Wind, WeatherKnown Weather, GustField? Turbulence, double? Gust, RailOfDay Rail)
{
    /// <summary>Shortest side of the field, m; null where the site states none.</summary>
    public double? ShortestSide { get; init; }

    /// <summary>What the site says of itself besides.</summary>
    public SiteOfDay Site { get; init; } = SiteOfDay.Unknown;

    /// <summary>What the sky is like.</summary>
    public SkyOfDay Sky { get; init; }

    /// <summary>The field; null where the site has no outline, or none that can be placed.</summary>
    public LandingField? Field { get; init; }

    /// <summary>What to type so that the field can be placed; empty where it is, or where the site states no outline at all.</summary>
    public ValueList<string> FieldMissing { get; init; } = [];

    /// <summary>Where the pad is, for maps; null where the site does not say.</summary>
    public LandingPlane? Plane { get; init; }

    /// <summary>The same rail and motor on a standard day without wind: what is planned before the weather is known.</summary>
    public Day Planned() => this with { Air = DayAir.Standard(Air.Elevation), Wind = new CalmWind(), Weather = default, Turbulence = null, Gust = null };
}

/// <summary>What the design and its files say of the weather.</summary>
/// <param name="Wind">Whether a wind is given; without it the wind is calm and questions that need one are open.</param>
/// <param name="Air">Whether a temperature is given; without it the day is the standard one.</param>
public readonly record struct WeatherKnown(bool Wind, bool Air);

/// <summary>The rail as set up.</summary>
/// <param name="Length">Usable length, m.</param>
/// <param name="Elevation">Above the horizon, rad.</param>
/// <param name="Azimuth">Towards which it leans, rad clockwise from north.</param>
/// <param name="Friction">Coefficient of the guides.</param>
public sealed record RailOfDay(double Length, double Elevation, double Azimuth, double Friction);
