using Scribeline.Engine.Air;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Range;
using static System.Math;

namespace Scribeline.Engine.Questions.Field;

/// <summary>Where does it come down? Many flights over the outline of the field, as planned and with each failure: counted, with confidence.</summary>
public sealed class LandsInside() : Question("lands-inside", "Where does it come down?", Place.Field)
{
    private const string Outline =
        "site: boundary: a GeoJSON or KML file of the field, or its corners about the pad, such as {corners: [[-400 m, -300 m], [500 m, -300 m], [450 m, 600 m]]}";

    private const string Counted = "many flights, see method landing";
    private const int PointsDrawn = 1500, FailurePoints = 150;

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    public override bool FliesMany => true;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(study.CanopyBasis);
        draft.RestsOn(Basis.Estimated);
        if (!Sound(draft, study)) return draft.Done();
        var field = study.Day.Field;
        if (field is null)
        {
            if (study.Day.FieldMissing.Count == 0) draft.Miss(Outline);
            foreach (var missing in study.Day.FieldMissing) draft.Miss(missing);
        }

        AsTyped(draft, study, field);
        if (study.Flights > 0) Flown(draft, study, field);
        else draft.Note("No flights were drawn from the tolerances, so no share can be told: ask with --samples 1000.");
        Remarks(draft, study);
        return draft.Done();
    }

    /// <summary>What a landing cannot be told without; nothing stands in for it.</summary>
    internal static bool Sound(Draft draft, Study study)
    {
        foreach (var missing in study.Rocket.RecoveryMissing) draft.Miss(missing);
        if (study.Rocket.RecoveryMissing.Count == 0 && study.Rocket.Firings.Count == 0) draft.Miss("firing: an altimeter with the charges it fires");
        if (!study.WindIsKnown) draft.Miss("weather: wind speed and wind from, at the ground and aloft");
        if (study.Rocket.RecoveryMissing.Count > 0 || study.Rocket.Firings.Count == 0 || !study.WindIsKnown) return false;
        if (study.Flight is { Failure: FlightFailure.None, Landings.Count: > 0 }) return true;
        draft.Find("distance of the landing from the rail", double.NaN, Unit.Height);
        draft.Note("As planned it does not fly to the ground: see question rail-exit.");
        return false;
    }

    private static void AsTyped(Draft draft, Study study, LandingField? field)
    {
        var w = draft.Working;
        foreach (var (landing, i) in study.Flight.Landings.Select((l, i) => (l, i + 1)))
        {
            var name = Named(study, landing);
            (string, string)[] names = [("e", $"e_{i}"), ("n", $"n_{i}")];
            var e = w.Simulated($"e_{i}", landing.East, "m", $"{name} as typed: east of the rail", "flight as planned, method flight");
            var n = w.Simulated($"n_{i}", landing.North, "m", "north of the rail", "flight as planned, method flight");
            if (study.Flights == 0 && field is not null)
                draft.Find($"{name}: room to the edge of the field, as typed", w.Simulated($"d_{i}", field.Boundary.Inside(new(landing.East, landing.North)), "m", "inside the outline", "nearest edge"), Unit.Height, "lands-inside.room");
            var away = w.StepOf($"r_{i}", Sqrt((e * e) + (n * n)), "m", "from the rail", "definition", names);
            if (study.Flights == 0) draft.Find($"{name}: distance from the rail, as typed", away, Unit.Height);
        }

        if (study.Flights == 0) draft.Chart(() => Map(study, "Landing as typed", [.. study.Flight.Landings.Select(l => new LandingCloud(Named(study, l), [new(l.East, l.North)], []))]));
    }

    private static void Flown(Draft draft, Study study, LandingField? field)
    {
        var planned = study.Landings;
        if (field is not null)
        {
            draft.Find(Share(draft, "o", "share of flights with anything outside the field", planned.Outside, study.Limits["lands-inside.outside"]));
            foreach (var ((area, share), i) in planned.Kept.Select((k, i) => (k, i + 1)))
                draft.Find(Share(draft, $"a_{i}", $"share of flights with anything on: {area.Name}", share, study.Limits[area.People ? "lands-inside.people" : "lands-inside.no-go"]));
        }

        foreach (var (body, i) in planned.Bodies.Select((b, i) => (b, i + 1)))
        {
            if (body.Scatter is { } scatter) Ellipses(draft, scatter, planned.Bodies.Count == 1 ? "" : $"{body.Name}: ", i);
        }

        draft.Chart(() => Map(study, "Landings as planned", [.. planned.Clouds("as planned", PointsDrawn)]));
        Failures(draft, study, field, planned);
        if (planned.Failed > 0) draft.Note($"{planned.Failed} of {planned.Flights} flights could not be computed to the ground; they count as outside.");
        draft.Note($"{planned.Flights} flights as planned{(field is null ? "" : $", {planned.Outside.Count} of them outside the field; with 95 % confidence fewer than 1 in {Max(1, Floor(1 / planned.Outside.AtMost)):0}")}. The confidence is that of counting, for the tolerances typed; it says nothing of what the model leaves out.");
    }

    /// <summary>A counted share, judged at the share itself and at what it may be with 95 % confidence.</summary>
    private static Finding Share(Draft draft, string symbol, string name, LandingShare share, Limit? limit)
    {
        var w = draft.Working;
        (string, string)[] names = [("k", $"k_{symbol}"), ("N", $"N_{symbol}"), ("p", $"p_{symbol}")];
        var k = w.Simulated($"k_{symbol}", share.Count, "", $"{name}: flights", Counted);
        var N = w.Simulated($"N_{symbol}", share.Of, "", "of so many", "samples asked for");
        var p = w.StepOf($"p_{symbol}", k / N, "", "share", "definition", names);
        w.StepOf($"s_{symbol}", Sqrt(p * (1 - p) / N), "", "its standard error", "binomial distribution", names);
        if (share.Count == 0) w.StepOf($"b_{symbol}", 1 - Pow(0.05, 1 / N), "", "not more than this with 95 % confidence", "Clopper and Pearson, Biometrika 26 (1934) 404, none seen", names);
        else w.Simulated($"b_{symbol}", share.AtMost, "", "not more than this with 95 % confidence", "Clopper and Pearson, Biometrika 26 (1934) 404");
        var judged = limit is null ? null : limit with { LeastShare = 1 - limit.Value };
        return Finding.Of(name, p, Unit.Share, judged).With(new Spread(p, share.AtLeast, share.AtMost, judged is null ? null : 1 - share.AtMost, share.Of));
    }

    private static void Ellipses(Draft draft, LandingScatter scatter, string of, int i)
    {
        var w = draft.Working;
        (string, string)[] names = [("A", $"A_{i}"), ("B", $"B_{i}"), ("C", $"C_{i}"), ("l", $"l_{i}"), ("m", $"m_{i}"), ("E", $"E_{i}"), ("N", $"M_{i}")];
        var E = w.Simulated($"E_{i}", scatter.Mean.East, "m", $"{of}mean landing, east of the rail", Counted);
        var N = w.Simulated($"M_{i}", scatter.Mean.North, "m", "north of the rail", Counted);
        var A = w.Simulated($"A_{i}", scatter.EastVariance, "m²", "variance to the east", Counted);
        var B = w.Simulated($"B_{i}", scatter.NorthVariance, "m²", "variance to the north", Counted);
        var C = w.Simulated($"C_{i}", scatter.Covariance, "m²", "covariance", Counted);
        var l = w.StepOf($"l_{i}", ((A + B) / 2) + Sqrt((((A - B) / 2) * ((A - B) / 2)) + (C * C)), "m²", "greater eigenvalue of the covariance", "two by two matrix", names);
        var m = w.StepOf($"m_{i}", ((A + B) / 2) - Sqrt((((A - B) / 2) * ((A - B) / 2)) + (C * C)), "m²", "lesser eigenvalue", "two by two matrix", names);
        var (half, whole) = (scatter.Ellipse(0.5), scatter.Ellipse(0.95));
        draft.Find($"{of}mean distance from the rail", w.StepOf($"D_{i}", Sqrt((E * E) + (N * N)), "m", "distance of the mean", "definition", names), Unit.Height);
        draft.Find($"{of}bearing of the mean, from north", (Atan2(E, N) + (2 * PI)) % (2 * PI), Unit.Angle);
        draft.Find($"{of}95 % ellipse: longer half axis", w.StepOf($"x_{i}", Sqrt(-2 * Log(1 - 0.95) * l), "m", "longer half axis of the 95 % ellipse", "chi-square, 2 degrees of freedom", names), Unit.Height);
        draft.Find($"{of}95 % ellipse: shorter half axis", w.StepOf($"y_{i}", Sqrt(-2 * Log(1 - 0.95) * m), "m", "shorter half axis of the 95 % ellipse", "chi-square, 2 degrees of freedom", names), Unit.Height);
        draft.Find($"{of}50 % ellipse: longer half axis", w.StepOf($"u_{i}", Sqrt(-2 * Log(1 - 0.5) * l), "m", "longer half axis of the 50 % ellipse", "chi-square, 2 degrees of freedom", names), Unit.Height);
        draft.Note($"{(of.Length == 0 ? "The" : of + "the")} 50 % ellipse holds {100 * scatter.Inside(half):0} % of these landings, the 95 % ellipse {100 * scatter.Inside(whole):0} %, leaning {whole.Azimuth * 180 / PI:0}° from north. Shares are counted, not read off the ellipse.");
    }

    private static void Failures(Draft draft, Study study, LandingField? field, LandingTally planned)
    {
        var failures = study.FailureLandings;
        if (field is not null && failures.Count > 0)
        {
            if (failures.Where(f => f.Outcome.Failure.Things == 1).OrderByDescending(f => f.Tally.Outside.Value).FirstOrDefault() is { Tally: { } tally } worst)
                draft.Find(Share(draft, "f", $"single failure that most often ends outside the field: {worst.Outcome.Failure.Name}", tally.Outside, null));
            var people = failures.SelectMany(f => f.Tally.Kept.Where(k => k.Area.People).Select(k => (f.Outcome.Failure, k.Share))).OrderByDescending(x => x.Share.Value).FirstOrDefault();
            if (people.Failure is not null) draft.Find(Share(draft, "h", $"failure that most often ends where people are: {people.Failure.Name}", people.Share, study.Limits["lands-inside.people-failure"]));
        }

        draft.List(() => Where(failures, planned, field));
        if (field is { Kept.Count: > 0 }) draft.List(() => OnKept(failures, planned, field));
        if (failures.Count > 0) draft.Chart(() => Map(study, "Landings of each failure", [.. failures.SelectMany(f => f.Tally.Clouds(f.Outcome.Failure.Name, FailurePoints))]));
    }

    private static AnswerTable Where(ValueList<(FailureOutcome Outcome, LandingTally Tally)> failures, LandingTally planned, LandingField? field)
    {
        List<TableColumn> columns = [new("flight")];
        if (field is not null) columns.AddRange([new("outside", Unit.Share), new("at most", Unit.Share)]);
        columns.AddRange([new("mean away", Unit.Height), new("bearing", Unit.Angle), new("95 % ellipse", Unit.Height), new("across", Unit.Height)]);
        return new("Where each flight comes down", columns.ToValueList(), Rows("As planned", planned).Concat(failures.SelectMany(f => Rows(f.Outcome.Failure.Name, f.Tally))).ToValueList());

        IEnumerable<TableRow> Rows(string name, LandingTally tally)
        {
            foreach (var body in tally.Bodies)
            {
                List<TableCell> cells = [tally.Bodies.Count == 1 ? name : $"{name}: {body.Name}"];
                if (field is not null) cells.AddRange([tally.Outside.Value, tally.Outside.AtMost]);
                var mean = body.Scatter?.Mean ?? body.Points[0];
                var ellipse = body.Scatter?.Ellipse(0.95);
                cells.AddRange([double.Hypot(mean.East, mean.North), (Atan2(mean.East, mean.North) + (2 * PI)) % (2 * PI), ellipse?.Major, ellipse?.Minor]);
                yield return new(cells.ToValueList());
            }
        }
    }

    private static AnswerTable OnKept(ValueList<(FailureOutcome Outcome, LandingTally Tally)> failures, LandingTally planned, LandingField field)
    {
        TableColumn[] columns = [new("flight"), .. field.Kept.Select(k => new TableColumn(k.Name, Unit.Share))];
        IEnumerable<(string Name, LandingTally Tally)> all = [("As planned", planned), .. failures.Select(f => (f.Outcome.Failure.Name, f.Tally))];
        return new("On areas to keep clear of", columns.ToValueList(), all.Select(f => new TableRow(((TableCell[])[f.Name, .. f.Tally.Kept.Select(k => (TableCell)k.Share.Value)]).ToValueList())).ToValueList());
    }

    private static void Remarks(Draft draft, Study study)
    {
        draft.Note("A flight counts as outside with any piece of it outside. Weather, motor lot and assembly differ from the model; the field, the crowd and the range safety officer decide.");
        if (study.Flights == 0) return;
        draft.Note("Failures are flown fewer times, with all that follows from them in the flight as typed; how likely a failure is, is not told. At most is with 95 % confidence; of the 95 % ellipse the longer and the shorter half axis are given. Not included: a fin lost, a motor that bursts, gliding pieces.");
    }

    internal static GroundMap Map(Study study, string title, ValueList<LandingCloud> clouds)
    {
        var wind = study.Day.Wind.At<Numerics.Scalar>(10);
        return new(title, study.Day.Field?.Boundary.Corners ?? [], study.Day.Field?.Kept ?? [], clouds, (wind.Speed(), wind.Direction()), study.Day.Plane);
    }

    private static string Named(Study study, Landing landing) => landing.Pieces.Count == 0 ? study.Vehicle.NameOf(study.Vehicle.Whole) : string.Join(" and ", landing.Pieces);
}
