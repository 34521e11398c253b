using Scribeline.Engine.Air;
using Scribeline.Engine.Design;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>Turns typed weather into the air and wind of a day.</summary>
internal static class WeatherResolver
{
    // Neutral one-seventh law; the height at which surface winds are reported (WMO-No. 8).
    private const double NeutralExponent = 1.0 / 7;
    private const double ReportHeight = 10;

    /// <summary>The air over a pad; the standard day's where nothing is typed. Null with problems where it is no atmosphere.</summary>
    public static DayAir? Air(WeatherDesign? weather, double elevation, double? latitude, Func<IMeasure, double> draw, List<Problem> problems)
    {
        var standard = StandardAtmosphere.At<Scalar>(elevation);
        var pressure = weather?.Pressure is { } p ? draw(p)
            : weather?.AltimeterSetting is { } q ? Altimetry.StationPressure(draw(q), elevation)
            : (double)standard.Pressure;
        var temperature = weather?.Temperature is { } t ? draw(t) : (double)standard.Temperature;
        var humidity = weather?.Humidity is { } h ? Math.Clamp(draw(h), 0, 1) : 0;
        var aloft = (weather?.Layers ?? []).Where(l => l is { Temperature: not null, Pressure: not null })
            .Select(l => new SoundingLevel(elevation + l.Height.Si, draw(l.Temperature!), draw(l.Pressure!))).ToValueList();
        var wrong = AirProblems.In(elevation, pressure, temperature, humidity, AirConstants.LapseRate, latitude, aloft);
        problems.AddRange(wrong.Select(w => w with { At = w.At is "elevation" or "latitude" ? "site." + w.At : "weather", Suggestion = w.At == "pressure" ? "Pressure is the one at the pad itself; one reduced to sea level goes under altimeter setting." : w.Suggestion }));
        return wrong.Count > 0 ? null : new DayAir(elevation, pressure, temperature, humidity, AirConstants.LapseRate, latitude, aloft);
    }

    /// <summary>The mean wind; calm where none is typed.</summary>
    public static Wind Wind(WeatherDesign? weather, Func<IMeasure, double> draw, List<Problem> problems)
    {
        if (weather is null) return new CalmWind();
        var rows = new List<WindLayer>();
        var height = weather.MeasuredAt is { } at ? Math.Max(draw(at), 2) : ReportHeight;
        if (weather is { WindSpeed: { } speed, WindFrom: { } from }) rows.Add(new(height, Math.Max(draw(speed), 0), draw(from)));
        rows.AddRange(weather.Layers.Where(l => l is { WindSpeed: not null, WindFrom: not null })
            .Select(l => new WindLayer(draw(l.Height), Math.Max(draw(l.WindSpeed!), 0), draw(l.WindFrom!))));
        if (rows.Count == 0) return new CalmWind();
        if (rows.Zip(rows.Skip(1)).FirstOrDefault(p => p.Second.Height <= p.First.Height) is { Second.Height: > 0 } pair)
        {
            problems.Add(new Problem("weather.layers", $"The layers do not go upwards: {pair.Second.Height:0.#} m follows {pair.First.Height:0.#} m.", "List them from the lowest to the highest, above the height where the surface wind was measured."));
            return new CalmWind();
        }

        if (rows.Count > 1) return new LayeredWind(rows.ToValueList(), NeutralExponent);
        return weather.GroundRoughness is { } z0
            ? new LogWind(rows[0].Speed, rows[0].From, draw(z0), height)
            : new PowerLawWind(rows[0].Speed, rows[0].From, NeutralExponent, height);
    }

    /// <summary>What is typed of it.</summary>
    public static WeatherKnown Known(WeatherDesign? weather) => new(
        weather is { WindSpeed: not null, WindFrom: not null } || (weather?.Layers.Any(l => l is { WindSpeed: not null, WindFrom: not null }) ?? false),
        weather?.Temperature is not null);
}
