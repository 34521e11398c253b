using System.Globalization;
using Scribeline.App.Json;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Shop;

namespace Scribeline.App.Web;

/// <summary>
/// A flight to be looked at in time, for the script of a page: where every body is at close moments, and in words what it does. Seen from
/// the side, at right angles to the line from the pad to the farthest place it reaches.
/// </summary>
/// <param name="Times">Moments in order, s after ignition: equal steps, and everything that happens.</param>
/// <param name="Clock">The moments in words.</param>
/// <param name="Along">What the axis across is, in words.</param>
/// <param name="Far">Axis across.</param>
/// <param name="High">Axis up.</param>
/// <param name="Bodies">What flies as one.</param>
/// <param name="Pieces">What they look like, nose to tail.</param>
/// <param name="Breaks">When the joint behind each piece lets go, s; null where it never does. One fewer than pieces.</param>
/// <param name="Canopies">In the order they open.</param>
/// <param name="Events">In order of time.</param>
internal sealed record FlightFilm(
    IReadOnlyList<double> Times,
    IReadOnlyList<string> Clock,
    string Along,
    FilmAxis Far,
    FilmAxis High,
    IReadOnlyList<FilmBody> Bodies,
    IReadOnlyList<FilmPiece> Pieces,
    IReadOnlyList<double?> Breaks,
    IReadOnlyList<FilmCanopy> Canopies,
    IReadOnlyList<FilmEvent> Events)
{
    // A tenth of a second is as fine as an eye follows; a very long flight takes longer steps.
    private const double Fine = 0.1;
    private const int MostSteps = 3000;

    /// <summary>The film of the flight of a rocket as planned, or of one that has failed.</summary>
    /// <param name="study">One with a day: nothing missing.</param>
    /// <param name="inch">Whether inch and pound units are shown.</param>
    /// <param name="differences">In what it differs from the flight as planned.</param>
    public static FlightFilm Of(Study study, bool inch, IReadOnlyList<FlightDifference>? differences = null)
    {
        var flight = study.Flight;
        differences ??= [];
        var times = Moments(flight, differences);
        var samples = flight.Bodies.Select(b => times.Where(t => t >= b.Start && t <= b.End).Select(t => flight.At(t, b.Index)).ToList()).ToList();
        var farthest = samples.SelectMany(s => s).MaxBy(s => Math.Pow(s.Position.X, 2) + Math.Pow(s.Position.Y, 2))!.Position;
        var bearing = (Math.Atan2(farthest.X, farthest.Y) + (2 * Math.PI)) % (2 * Math.PI);
        FilmPlane plane = new(Math.Sin(bearing), Math.Cos(bearing));
        var all = samples.SelectMany(s => s).ToList();
        return new(
            [.. times.Select(t => Math.Round(t, 4))],
            [.. times.Select(t => Shown.Text(t, Unit.Time, inch))],
            string.Create(CultureInfo.InvariantCulture, $"from the pad towards {bearing * 180 / Math.PI:000}°"),
            FilmAxis.Of(all.Select(s => plane.Along(s.Position)), inch),
            FilmAxis.Of(all.Select(s => s.Height), inch),
            [.. flight.Bodies.Zip(samples, (b, s) => FilmBody.Of(flight, b, s, times.IndexOf(b.Start), plane, inch))],
            Looks(study),
            Parting(study),
            [.. flight.Openings.Select(o => FilmCanopy.Of(study, o))],
            [.. Told(flight, differences, times, inch)]);
    }

    /// <summary>As JSON.</summary>
    public string Text() => JsonText.Of(this);

    // What does not happen, and what follows from a failure, stands among what happens.
    private static IEnumerable<FilmEvent> Told(FlightResult flight, IReadOnlyList<FlightDifference> differences, List<double> times, bool inch)
    {
        var marked = differences.Where(d => d.Kind is FlightDifferenceKind.Added or FlightDifferenceKind.Moved).ToDictionary(d => d.What, StringComparer.Ordinal);
        var happens = flight.Events.Select(e => (e.Time, Event: FilmEvent.Of(times.IndexOf(e.Time), e.Time, e.Name, marked.GetValueOrDefault(e.Name), inch)));
        var others = differences.Where(d => d.Kind is FlightDifferenceKind.Follows or FlightDifferenceKind.Absent).Select(d => (d.Time, Event: FilmEvent.Of(times.IndexOf(Math.Min(d.Time, times[^1])), d.Time, d.What, d, inch)));
        return happens.Concat(others).OrderBy(e => e.Time).Select(e => e.Event);
    }

    private static List<double> Moments(FlightResult flight, IReadOnlyList<FlightDifference> differences)
    {
        var step = Math.Max(Fine, flight.End / MostSteps);
        var steps = Enumerable.Range(0, (int)Math.Ceiling(flight.End / step)).Select(i => i * step);
        return [.. steps.Concat(flight.Events.Select(e => e.Time)).Concat(flight.Bodies.SelectMany(b => new[] { b.Start, b.End })).Concat(differences.Select(d => d.Time).Where(t => t >= 0 && t < flight.End)).Distinct().Order()];
    }

    private static FilmPiece[] Looks(Study study)
    {
        var pieces = study.Vehicle.PiecesAfter(RecoveryPlanner.Joints(study.Rocket));
        var seen = study.SideView.Shapes.Where(s => s.Kind is SideKind.Body or SideKind.Fin && s.Layer != SideLayer.Inside).ToList();
        return [.. pieces.Select(p => new FilmPiece(
            study.Vehicle.NameOf(p),
            study.Vehicle.Parts[p.First].Front,
            study.Vehicle.Parts[p.Last].Rear,
            [.. seen.Where(s => p.Has(s.Part)).Select(s => s.Outline.SelectMany(o => new[] { Round(o.Station), Round(o.Across) }).ToList())]))];
    }

    // A joint parts with the first charge that opens it.
    private static double?[] Parting(Study study) =>
    [
        .. Enumerable.Range(0, Math.Max(0, study.Plan.Pieces.Count - 1)).Select(joint =>
        {
            var charges = study.Plan.Actions.Where(a => a.Joint == joint).Select(a => a.Name).ToHashSet(StringComparer.Ordinal);
            return study.Flight.Events.FirstOrDefault(e => e.Kind == FlightEventKind.Charge && charges.Contains(e.Name)) is { } parts ? Math.Round(parts.Time, 4) : (double?)null;
        }),
    ];

    private static double Round(double metres) => Math.Round(metres, 4);
}

/// <summary>The upright plane a flight is shown in: a unit vector east and north.</summary>
internal readonly record struct FilmPlane(double East, double North)
{
    /// <summary>Distance along it, m.</summary>
    public double Along(Vector3<Scalar> v) => (v.X * East) + (v.Y * North);
}

/// <summary>An axis of the picture.</summary>
/// <param name="Low">Least value, SI.</param>
/// <param name="High">Greatest value, SI.</param>
/// <param name="Ticks">Round values, SI, with their words.</param>
internal sealed record FilmAxis(double Low, double High, IReadOnlyList<FilmTick> Ticks)
{
    public static FilmAxis Of(IEnumerable<double> values, bool inch)
    {
        var all = values.Where(double.IsFinite).Append(0).ToList();
        var (low, high) = (all.Min(), all.Max());
        var (symbol, factor, _) = Shown.In(Unit.Height, inch, high);
        var rough = Math.Max(high - low, 1) * factor / 5;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var step = power * (rough / power) switch { < 1.5 => 1, < 3.5 => 2, < 7.5 => 5, _ => 10 };
        var first = (int)Math.Ceiling(low * factor / step);
        var last = (int)Math.Floor(high * factor / step);
        return new(low, high, [.. Enumerable.Range(first, last - first + 1).Select(i => new FilmTick(i * step / factor, (i * step).ToString("0.##", CultureInfo.InvariantCulture).Replace('-', '−') + " " + symbol))]);
    }
}

/// <summary>A tick of an axis.</summary>
internal sealed record FilmTick(double At, string Words);

/// <summary>What a piece looks like.</summary>
/// <param name="Name">In words.</param>
/// <param name="Front">Station of its forward end, m.</param>
/// <param name="Rear">Station of its aft end, m.</param>
/// <param name="Outlines">Station and distance from the axis by turns, m.</param>
internal sealed record FilmPiece(string Name, double Front, double Rear, IReadOnlyList<IReadOnlyList<double>> Outlines);

/// <summary>A canopy that opens.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Piece">Index of the piece it hangs on.</param>
/// <param name="Stretch">s after ignition at which it begins to fill.</param>
/// <param name="Fill">s it takes to fill.</param>
/// <param name="Diameter">Nominal, m.</param>
internal sealed record FilmCanopy(string Name, int Piece, double Stretch, double Fill, double Diameter)
{
    public static FilmCanopy Of(Study study, CanopyOpening opening)
    {
        var canopy = study.Plan.Actions.SelectMany(a => a.Canopies).First(c => c.Name == opening.Name);
        return new(opening.Name, canopy.Piece, Math.Round(opening.LineStretch.Time, 4), Math.Round(opening.FillTime, 4), canopy.NominalDiameter);
    }
}

/// <summary>What happens.</summary>
/// <param name="Moment">Index of the moment.</param>
/// <param name="When">In words.</param>
/// <param name="Name">In words.</param>
/// <param name="Differs">In what way it is not as planned: "follows", "added", "moved" or "absent"; null where it is.</param>
/// <param name="Says">The same in words, with the time of the plan.</param>
internal sealed record FilmEvent(int Moment, string When, string Name, string? Differs = null, string? Says = null)
{
    public static FilmEvent Of(int moment, double time, string name, FlightDifference? difference, bool inch) => new(
        moment,
        Shown.Text(time, Unit.Time, inch),
        name,
        difference?.Kind switch
        {
            FlightDifferenceKind.Follows => "follows",
            FlightDifferenceKind.Added => "added",
            FlightDifferenceKind.Moved => "moved",
            FlightDifferenceKind.Absent => "absent",
            _ => null,
        },
        difference is null ? null : SaysOf(difference, inch));

    /// <summary>In what way something differs from the plan, in words.</summary>
    public static string SaysOf(FlightDifference difference, bool inch) => difference.Kind switch
    {
        FlightDifferenceKind.Follows => "follows from the failure",
        FlightDifferenceKind.Added => "not in the plan",
        FlightDifferenceKind.Moved => $"planned at {Shown.Text(difference.Planned!.Value, Unit.Time, inch)}",
        _ => "planned here, does not happen",
    };
}
