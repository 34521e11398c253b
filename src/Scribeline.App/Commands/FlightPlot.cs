using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Commands;

/// <summary>The plot of the fly command.</summary>
internal static class FlightPlot
{
    private const int Points = 600;

    /// <summary>Height over time of every body, with the events of the whole rocket.</summary>
    public static Plot Height(FlightResult flight)
    {
        var step = Math.Max(flight.End / Points, 0.01);
        return new Plot(
            "Height through the flight",
            new Axis("time after ignition", Unit.Time),
            new Axis("height above the pad", Unit.Height),
            flight.Bodies.GroupBy(Name).Select(bodies => Line(bodies.Key, [.. bodies.SelectMany(b => flight.Series(step, b.Index))])).ToValueList(),
            flight.Events.Where(IsMarked).Select(e => new Mark(e.Name, e.Time)).ToValueList());
    }

    // A body that goes on under a canopy with all its pieces is one line.
    private static string Name(FlightBody body) => string.Join(", ", body.Pieces);

    private static Series Line(string name, IReadOnlyList<FlightSample> samples) =>
        new(name, samples.Select(s => s.Time).ToValueList(), samples.Select(s => s.Height).ToValueList());

    // The others stand too near these to be read, or where the line ends anyway.
    private static bool IsMarked(FlightEvent e) => e.Kind is FlightEventKind.AftGuideExit or FlightEventKind.Burnout or FlightEventKind.Apogee
        or FlightEventKind.LineStretch;
}
