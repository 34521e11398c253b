using Scribeline.Engine.Air;
using Scribeline.Engine.Design;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>Turns the typed motor, site, weather and rail into a day.</summary>
internal static class DayResolver
{
    // Turbulence is drawn to this height on a grid of this spacing, m.
    private const double GustTop = 3000;
    private const double GustSpacing = 15;
    private const double TwentyFeet = 6.096;

    /// <summary>The day; null where something is missing (named in <paramref name="missing"/>) or wrong.</summary>
    /// <param name="design">As typed.</param>
    /// <param name="motor">The motor, resolved; null where there is none.</param>
    /// <param name="draw">Value to take for a measure.</param>
    /// <param name="gusts">Stream of the turbulence; null for none.</param>
    /// <param name="missing">Added to: what to type.</param>
    /// <param name="problems">Added to.</param>
    public static Day? Resolve(RocketDesign design, Motor? motor, Func<IMeasure, double> draw, RandomStream? gusts, List<string> missing, List<Problem> problems)
    {
        if (design.Motor is null) missing.Add("motor: a motor file, or its data");
        var rail = Rail(design.Rail, draw, missing);
        var site = design.Site?.Value;
        if (design.Site is null) missing.Add("site: a site file, or at least its name and elevation");
        if (site is null) return null;

        var weather = design.Weather?.Value;
        var elevation = draw(site.Elevation);
        double? latitude = site.Latitude is { } l ? draw(l) : null;
        var air = WeatherResolver.Air(weather, elevation, latitude, draw, problems);
        var wind = WeatherResolver.Wind(weather, draw, problems);
        if (motor is null || rail is null || air is null) return null;
        var known = WeatherResolver.Known(weather);
        var place = FieldResolver.Plane(site, elevation);
        List<string> fieldMissing = [];
        var field = FieldResolver.Resolve(site.Boundary?.Value, place, draw, fieldMissing, problems);
        return new(
            motor, latitude, site.Ceiling is { } c ? draw(c) : null, air, wind, known,
            gusts is { } stream && known.Wind ? Turbulence(wind, stream) : null,
            weather?.Gust is { } gust ? draw(gust) : null, rail)
        {
            ShortestSide = site.ShortestSide is { } side ? draw(side) : null,
            Site = Described(site, draw),
            Sky = new(Of(weather?.CloudCover), Of(weather?.CloudBase), Of(weather?.Visibility)),
            Field = field,
            FieldMissing = fieldMissing.ToValueList(),
            Plane = place,
        };

        double? Of(IMeasure? typed) => typed is null ? null : draw(typed);
    }

    private static SiteOfDay Described(SiteDesign site, Func<IMeasure, double> draw)
    {
        var far = site.Distances;
        return new(
            site.Name, site.Rules, site.OwnConditions, Of(far?.People), Of(far?.Outsiders), Of(far?.Building), Of(far?.Highway), Of(far?.Edge), Of(far?.Airport),
            Of(far?.Cleared), site.RocketsAtOnce);

        double? Of(IMeasure? typed) => typed is null ? null : draw(typed);
    }

    /// <summary>The air, its motion and the rail alone, as <see cref="Resolve"/> gives them; null where they make no day.</summary>
    /// <param name="design">As typed, nothing in it missing.</param>
    /// <param name="draw">Value to take for a measure.</param>
    /// <param name="gusts">Stream of the turbulence.</param>
    /// <param name="top">Height above the pad to which turbulence is wanted, m: below it the same whatever the top.</param>
    public static (DayAir Air, AirMotion Wind, RailOfDay Rail)? Around(RocketDesign design, Func<IMeasure, double> draw, RandomStream gusts, double top)
    {
        List<Problem> problems = [];
        var (site, weather) = (design.Site!.Value!, design.Weather?.Value);
        var elevation = draw(site.Elevation);
        var air = WeatherResolver.Air(weather, elevation, site.Latitude is { } l ? draw(l) : null, draw, problems);
        var wind = WeatherResolver.Wind(weather, draw, problems);
        if (air is null || problems.Count > 0 || Rail(design.Rail, draw, []) is not { } rail) return null;
        return (air, new AirMotion(wind, WeatherResolver.Known(weather).Wind ? Turbulence(wind, gusts, Math.Min(top, GustTop)) : null), rail);
    }

    private static GustField Turbulence(Wind wind, RandomStream stream, double top = GustTop)
    {
        var low = wind.At<Scalar>(TwentyFeet);
        return GustField.Draw(low.Speed(), low.Direction(), top, stream.Normal, GustSpacing);
    }

    private static RailOfDay? Rail(RailDesign? rail, Func<IMeasure, double> draw, List<string> missing)
    {
        if (rail is null)
        {
            missing.Add("rail: usable length, and tilt or elevation");
            return null;
        }

        double? elevation = rail.Elevation is { } e ? draw(e) : rail.Tilt is { } t ? (Math.PI / 2) - Math.Abs(draw(t)) : null;
        if (elevation is null) missing.Add("rail: tilt, or elevation");
        var leans = elevation < (Math.PI / 2) - 1e-6;
        if (leans && rail.Azimuth is null) missing.Add("rail: azimuth, the direction it leans towards");
        if (elevation is null || (leans && rail.Azimuth is null)) return null;
        return new(draw(rail.UsableLength), Math.Min(elevation.Value, Math.PI / 2), rail.Azimuth is { } a ? draw(a) : 0, rail.Friction is { } f ? Math.Max(draw(f), 0) : 0);
    }
}
