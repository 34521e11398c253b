using Scribeline.Engine.Flight;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Web;

/// <summary>A body in time; all lists are as long as it has samples.</summary>
/// <param name="Name">In words.</param>
/// <param name="First">Index of its first piece.</param>
/// <param name="Last">Index of its last piece.</param>
/// <param name="From">Index of the moment of its first sample; the others follow one by one.</param>
/// <param name="Lands">Whether it ends on the ground.</param>
/// <param name="Whole">Whether it flies as a rocket, with a nose that points somewhere.</param>
/// <param name="X">m along the axis across.</param>
/// <param name="Z">m above the pad.</param>
/// <param name="Turn">Of the nose from upright, clockwise as seen, degrees.</param>
/// <param name="Middle">Station of the centre of mass, m.</param>
/// <param name="Height">In words.</param>
/// <param name="Speed">In words.</param>
/// <param name="Does">Index of what it does, into <paramref name="Doing"/>.</param>
/// <param name="Doing">What it does, in words.</param>
internal sealed record FilmBody(
    string Name,
    int First,
    int Last,
    int From,
    bool Lands,
    bool Whole,
    IReadOnlyList<double> X,
    IReadOnlyList<double> Z,
    IReadOnlyList<double> Turn,
    double Middle,
    IReadOnlyList<string> Height,
    IReadOnlyList<string> Speed,
    IReadOnlyList<int> Does,
    IReadOnlyList<string> Doing)
{
    public static FilmBody Of(FlightResult flight, FlightBody body, IReadOnlyList<FlightSample> samples, int from, FilmPlane plane, bool inch)
    {
        var pieces = flight.Inputs!.Recovery.Pieces.Select(p => p.Name).ToList();
        var first = body.Parent is null ? 0 : pieces.IndexOf(body.Pieces[0]);
        var last = body.Parent is null ? Math.Max(0, pieces.Count - 1) : first + body.Pieces.Count - 1;
        var doing = samples.Select(s => Words(flight, first, last, s)).ToList();
        var distinct = doing.Distinct().ToList();
        return new(
            body.Parent is null ? "the rocket" : string.Join(" and ", body.Pieces),
            first,
            last,
            from,
            flight.Landings.Any(l => l.Body == body.Index),
            body.Parent is null,
            [.. samples.Select(s => Math.Round(plane.Along(s.Position), 1))],
            [.. samples.Select(s => Math.Round(s.Height, 1))],
            [.. samples.Select(s => Turned(s, plane))],
            samples[samples.Count / 2].CentreOfMass is var middle && double.IsFinite(middle) ? middle : 0,
            [.. samples.Select(s => Shown.Text(s.Height, Unit.Height, inch))],
            [.. samples.Select(s => Shown.Text(s.Speed, Unit.Speed, inch))],
            [.. doing.Select(d => distinct.IndexOf(d))],
            distinct);
    }

    private static double Turned(FlightSample sample, FilmPlane plane)
    {
        var nose = sample.Attitude.ToFrame(new(1, 0, 0));
        return Math.Round(Math.Atan2(plane.Along(nose), nose.Z) * 180 / Math.PI, 1);
    }

    private static string Words(FlightResult flight, int first, int last, FlightSample sample) => sample.Phase switch
    {
        FlightPhase.Held => "motor alight, not moving yet",
        FlightPhase.OnRail => "on the rail",
        FlightPhase.Pivoting => "leaving the rail",
        FlightPhase.Boost => "motor burning",
        FlightPhase.Coast => sample.VerticalSpeed >= 0 ? "coasting up" : "falling whole",
        FlightPhase.Dive => "falling whole, nose first",
        _ => UnderCanopies(flight, first, last, sample.Time),
    };

    private static string UnderCanopies(FlightResult flight, int first, int last, double time)
    {
        var tied = flight.Inputs!.Recovery.Actions.SelectMany(a => a.Canopies).Where(c => c.Piece >= first && c.Piece <= last).Select(c => c.Name).ToHashSet(StringComparer.Ordinal);
        var open = flight.Openings.Where(o => tied.Contains(o.Name) && o.LineStretch.Time <= time).Select(o => o.Name).Distinct().ToList();
        return open.Count == 0 ? "in pieces, nothing open" : $"under {string.Join(" and ", open)}";
    }
}
