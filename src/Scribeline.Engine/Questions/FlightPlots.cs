using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>Plots of a flight shared by the questions of flight and by whoever shows a flight.</summary>
public static class FlightPlots
{
    /// <summary>Height of every body over the whole flight, and what fires.</summary>
    public static Plot Heights(Study study) => new(
        "Height and what fires",
        new Axis("time", Unit.Time),
        new Axis("height", Unit.Height),
        study.Flight.Bodies.Select(b => Height(study.Flight, b)).ToValueList(),
        study.Flight.Events.Where(e => e.Kind == FlightEventKind.Charge && study.Rocket.Firings.Any(f => f.Name == e.Name)).DistinctBy(e => e.Name).Select(e => new Mark(e.Name, e.Time)).ToValueList());

    /// <summary>Speed from ignition to apogee.</summary>
    public static Plot Speeds(Study study) => Against("Speed on the way up", "speed", Unit.Speed, study, s => s.Speed);

    /// <summary>A quantity of the climb from ignition to apogee against time.</summary>
    internal static Plot Against(string title, string name, Unit unit, Study study, Func<FlightSample, double> value) =>
        new(title, new Axis("time", Unit.Time), new Axis(name, unit), [Line(name, study.Ascent, value)], Marks(study));

    /// <summary>A quantity of the free climb, from the rail until the air no longer steers, with a limit drawn.</summary>
    internal static Plot Free(string title, string name, Unit unit, Study study, Func<FlightSample, double> value, double? bound = null) =>
        new(title, new Axis("time", Unit.Time), new Axis(name, unit), [Line(name, study.FreeAscent, value)], Marks(study), bound);

    /// <summary>One line of a plot.</summary>
    internal static Series Line(string name, IReadOnlyList<FlightSample> samples, Func<FlightSample, double> value) =>
        new(name, samples.Select(s => s.Time).ToValueList(), samples.Select(value).ToValueList());

    /// <summary>Burnout and apogee.</summary>
    internal static ValueList<Mark> Marks(Study study) =>
        study.Flight.Events
            .Where(e => e.Body == 0 && e.Kind is FlightEventKind.AftGuideExit or FlightEventKind.Burnout or FlightEventKind.Apogee)
            .Select(e => new Mark(e.Name, e.Time))
            .ToValueList();

    private static Series Height(FlightResult flight, FlightBody body)
    {
        var samples = Enumerable.Range(0, 101).Select(i => flight.At(body.Start + ((body.End - body.Start) * i / 100), body.Index)).ToArray();
        return Line(body.Parent is null ? "the rocket" : string.Join(" and ", body.Pieces), samples, s => s.Height);
    }
}
