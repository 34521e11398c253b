using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Design;

/// <summary>Contradictions of motor, field, weather, rail and records.</summary>
internal static class OtherChecks
{
    internal static void In(RocketDesign design, DesignNames names, List<Problem> problems)
    {
        if (design.Motor?.Value is { } motor) Motor(motor, problems);
        if (design.Site?.Value is { } site) Site(site, problems);
        if (design.Weather?.Value is { } weather) Weather(weather, problems);
        if (design.Rail is { } rail) Rail(rail, problems);
        foreach (var weighed in design.Records?.Weighed ?? []) Weighed(weighed, names, problems);
        if (design.Records?.Measured is { Count: > 0 } measured) Measured(measured, DesignMeasures.Of(design), names, problems);
        foreach (var shot in design.Records?.Shots ?? []) ShotChecks.In(shot, design.Charges.Select(c => c.Name).ToValueList(), names.Whole, problems);
        foreach (var swung in design.Records?.Swung ?? []) Neighbours(swung.Parts, swung.At, "The parts that hung do not follow each other.", names, problems);
    }

    private static void Measured(ValueList<MeasuredDesign> measured, ValueList<PlannedMeasure> known, DesignNames names, List<Problem> problems)
    {
        foreach (var record in measured)
        {
            if (DesignMeasures.Find(known, record.What) is not { } planned)
            {
                // What it belongs to may be among what could not be read.
                if (names.Whole) problems.Add(new($"{record.At}.what", $"Nothing here is called '{record.What}'.", DesignMeasures.Suggest(known, record.What)));
            }
            else if (planned.Read(record.Value) is { Good: false } reading)
            {
                problems.Add(new($"{record.At}.value", $"'{planned.Name}': {reading.Problem.Message}", reading.Problem.Suggestion));
            }
        }
    }

    private static void Neighbours(ValueList<string> parts, string at, string message, DesignNames names, List<Problem> problems)
    {
        for (var i = 0; i < parts.Count; i++) names.Need(parts[i], names.Parts, "part", $"{at}.parts[{i}]", problems);
        var places = parts.Select(p => names.Parts.ToList().IndexOf(p)).ToList();
        if (names.Whole && !places.Contains(-1) && places.Zip(places.Skip(1)).Any(p => p.Second != p.First + 1))
            problems.Add(new($"{at}.parts", message, "List neighbours, nose to tail."));
    }

    private static void Motor(MotorDesign motor, List<Problem> problems)
    {
        PartChecks.Either(motor.PropellantMass, "propellant mass", motor.EmptyMass, "empty mass", motor.At, problems);
        var part = motor.PropellantMass ?? motor.EmptyMass;
        if (part is not null && part.Si >= motor.LoadedMass.Si)
            problems.Add(new(part.At, $"{part.Text} is not less than the loaded mass, {motor.LoadedMass.Text}.", "Check the masses and their units."));
        if (motor.Plugged && motor.Delays.Count > 0) problems.Add(new($"{motor.At}.delays", "A plugged motor has no delays.", "Remove them, or write plugged: no"));
    }

    private static void Site(SiteDesign site, List<Problem> problems)
    {
        if (site.Latitude is { } latitude && Math.Abs(latitude.Si) > Math.PI / 2) problems.Add(new(latitude.At, $"{latitude.Text} is no latitude.", "Type -90° to 90°, north positive."));
        if (site.Longitude is { } longitude && Math.Abs(longitude.Si) > Math.PI) problems.Add(new(longitude.At, $"{longitude.Text} is no longitude.", "Type -180° to 180°, east positive."));
        if (site.Latitude is null != site.Longitude is null) problems.Add(new(site.At, "Latitude and longitude belong together.", "Type both or neither."));
        for (var i = 0; i < site.Rules.Count; i++)
        {
            if (RuleSet.Find(site.Rules[i]) is not null) continue;
            var names = RuleSet.All.Select(r => r.Name).ToArray();
            problems.Add(new(
                $"{site.At}.rules[{i}]", $"No rules are known by the name '{site.Rules[i]}'.",
                Spelling.Nearest(site.Rules[i], names) is { } near ? $"Did you mean {near}?" : $"Known are {string.Join(", ", names)}. Others go under own conditions, in words for a person to confirm."));
        }
    }

    private static void Weather(WeatherDesign weather, List<Problem> problems)
    {
        if (weather.Pressure is not null && weather.AltimeterSetting is not null)
            problems.Add(new(weather.At, "'pressure' and 'altimeter setting' are both typed.", "Keep the one that was read; the other follows."));
        if (weather.Humidity is { Si: > 1 } humidity) problems.Add(new(humidity.At, $"A humidity of {humidity.Text} is above all.", $"Write it as a share, such as 60 %."));
        if (weather.CloudCover is { Si: > 1 } cover) problems.Add(new(cover.At, $"A cloud cover of {cover.Text} is above all.", "Write it as a share, such as 30 %."));
        if (weather.WindSpeed is { Si: > 0 } wind && weather.WindFrom is null) problems.Add(new(weather.At, $"Nothing says where the wind of {wind.Text} comes from.", "Add wind from: 270°"));
        if (weather.Gust is { } gust && weather.WindSpeed is { } mean && gust.Si < mean.Si)
            problems.Add(new(gust.At, $"The gust, {gust.Text}, is weaker than the mean wind, {mean.Text}.", "Check the two."));
        for (var i = 1; i < weather.Layers.Count; i++)
        {
            var (below, above) = (weather.Layers[i - 1].Height, weather.Layers[i].Height);
            if (above.Si <= below.Si) problems.Add(new(above.At, $"Heights must rise: {above.Text} follows {below.Text}.", "Sort the layers, lowest first."));
        }
    }

    private static void Rail(RailDesign rail, List<Problem> problems)
    {
        PartChecks.Either(rail.Elevation, "elevation", rail.Tilt, "tilt", rail.At, problems);
        if (rail.Elevation is { Si: > (Math.PI / 2) + 1e-9 } elevation) problems.Add(new(elevation.At, $"{elevation.Text} is beyond the vertical.", "Type up to 90°, and turn the azimuth."));
        if (rail.Tilt is { Si: >= Math.PI / 2 } tilt) problems.Add(new(tilt.At, $"A tilt of {tilt.Text} lies flat.", "Type the angle off the vertical."));
    }

    private static void Weighed(WeighedDesign weighed, DesignNames names, List<Problem> problems)
    {
        if (weighed.Mass is null && weighed.Balance is null) problems.Add(new(weighed.At, "Nothing was weighed or balanced.", "Add mass, balance or both."));
        Neighbours(weighed.Parts, weighed.At, "The parts on the scale do not follow each other.", names, problems);
    }
}
