using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>Plots of the climb shared by the questions of flight.</summary>
internal static class FlightPlots
{
    /// <summary>A quantity of the climb from ignition to apogee against time.</summary>
    public static Plot Against(string title, string name, Unit unit, Study study, Func<FlightSample, double> value) =>
        new(title, new Axis("time", Unit.Time), new Axis(name, unit), [Line(name, study.Ascent, value)], Marks(study));

    /// <summary>A quantity of the free climb, from the rail until the air no longer steers, with a limit drawn.</summary>
    public static Plot Free(string title, string name, Unit unit, Study study, Func<FlightSample, double> value, double? bound = null) =>
        new(title, new Axis("time", Unit.Time), new Axis(name, unit), [Line(name, study.FreeAscent, value)], Marks(study), bound);

    /// <summary>One line of a plot.</summary>
    public static Series Line(string name, IReadOnlyList<FlightSample> samples, Func<FlightSample, double> value) =>
        new(name, samples.Select(s => s.Time).ToValueList(), samples.Select(value).ToValueList());

    /// <summary>Burnout and apogee.</summary>
    public static ValueList<Mark> Marks(Study study) =>
        study.Flight.Events
            .Where(e => e.Body == 0 && e.Kind is FlightEventKind.AftGuideExit or FlightEventKind.Burnout or FlightEventKind.Apogee)
            .Select(e => new Mark(e.Name, e.Time))
            .ToValueList();
}
