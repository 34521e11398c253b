using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions.Logs;

/// <summary>What changes for next time? Drag, thrust, canopies and ports as the flights show them; nothing counts before its builder accepts it.</summary>
public sealed class Teaches() : Question("teaches", "What changes for next time?", Place.Log)
{
    private const string Product = "product of normal densities";

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Flown);
        if (WhatHappened.Recorded(draft, study) is null) return draft.Done();
        if (study.Teachings.Count == 0)
        {
            draft.Miss("a record up to apogee or of a steady descent, and a design of its day that can be flown");
            foreach (var note in study.Recorded!.Lesson?.Notes ?? []) draft.Note(note);
            return draft.Done();
        }

        var n = 0;
        foreach (var teaching in study.Teachings) Combine(draft, teaching, ref n);
        foreach (var flown in study.RecordedFlights.Where(f => f.Lesson is not null)) Details(draft, flown);
        draft.List(() => new(
            "What flights teach",
            [new("what"), new("name to accept it by"), new("before any flight"), new("with the flights"), new("in the design now")],
            study.Teachings.Select(t => TableRow.Of(
                t.Contradicting.Any() ? Verdict.Watch : null, t.Name, t.Id, Words(t, t.Prior, study), Words(t, t.Posterior, study), t.Accepted ? $"{Number(t, t.Now, study)}, flown" : Number(t, t.Now, study))).ToValueList()));
        draft.Note("Nothing of it counts until you accept it, each by itself: scribeline log FILE --accept NAME, or at the Log place. It is then written into the design as flown, and --take-back NAME takes it out again.");
        draft.Note("A limit that is not met without what flights taught stays a watch at best: flights alone clear nothing.");
        return draft.Done();
    }

    private static void Combine(Draft draft, Teaching teaching, ref int n)
    {
        var w = draft.Working;
        var si = teaching.Unit switch { Unit.Area => "m²", Unit.Time => "s", _ => "" };
        n++;
        w.Given($"m_{n}", teaching.Prior.Value, si, $"{teaching.Name}, before any flight", teaching.Unit == Unit.Area ? "design" : "prediction");
        w.Given($"s_{n}", teaching.Prior.Sigma, si, "its standard uncertainty", teaching.Id is "drag-scale" or "port-lag" ? "assumption" : "half the tolerance that is typed, or an assumption");
        var (m, s, before) = (teaching.Prior.Value, teaching.Prior.Sigma, $"{n}");
        var f = 0;
        foreach (var says in teaching.Flights)
        {
            var at = $"{n}_{++f}";
            var y = w.Simulated($"y_{at}", says.Alone.Value, si, $"the same by {says.Flight} alone", teaching.Unit == Unit.Area ? "2 m g0/(rho V²) of a steady descent, less what else hangs" : "climb fitted by the flight equations, least squares");
            var a = w.Simulated($"a_{at}", says.Alone.Sigma, si, "its standard uncertainty", teaching.Unit == Unit.Area ? "law of propagation, JCGM 100:2008" : "covariance of the fit");
            var b = w.Given($"b_{at}", teaching.Scatter, si, "scatter from flight to flight, so much and no more one flight can tell", "assumption");
            (string, string)[] names = [("y", $"y_{at}"), ("a", $"a_{at}"), ("b", $"b_{at}"), ("u", $"u_{at}"), ("m", $"m_{before}"), ("s", $"s_{before}")];
            var u = w.StepOf($"u_{at}", Math.Sqrt((a * a) + (b * b)), si, "both together", "root of the sum of squares", names);
            if (!teaching.Counting.Contains(says))
            {
                draft.Note($"{says.Flight} contradicts what was known of {teaching.Name} by more than {Teaching.Contradiction} standard uncertainties: it is shown and not averaged in. Look for what was different that day, or wrong in the design.");
                continue;
            }

            var mean = w.StepOf($"m_{at}", m + (s * s / ((s * s) + (u * u)) * (y - m)), si, $"with {says.Flight}", Product, names);
            s = w.StepOf($"s_{at}", s * u / Math.Sqrt((s * s) + (u * u)), si, "its standard uncertainty", Product, names);
            (m, before) = (mean, at);
        }

        draft.Find(teaching.Name, m, teaching.Unit);
        var far = teaching.Flights.Max(x => Math.Abs(x.Value.Apart(teaching.Prior)));
        draft.Find($"{teaching.Name}: farthest flight from what was known, in standard uncertainties", far, Unit.Ratio, "teaches.contradiction");
        Estimate[] all = [teaching.Prior, .. teaching.Counting.Select(x => x.Value)];
        if (all.Length > 2 && Estimate.BirgeRatio(all) > 1.5) draft.Note(FormattableString.Invariant($"Flights differ more in {teaching.Name} than assumed (Birge ratio {Estimate.BirgeRatio(all):F1}): take its uncertainty as larger by that."));
    }

    private static void Details(Draft draft, FlownFlight flown)
    {
        var lesson = flown.Lesson!;
        foreach (var note in lesson.Notes) draft.Note($"{flown.Name}: {note}");
        if (lesson.Climb is { } climb)
        {
            if (climb.Scatter > 2) draft.Note(FormattableString.Invariant($"{flown.Name}: the climb fits with residuals {climb.Scatter:F1} times their uncertainty; something else differs too, and the uncertainties above are stretched by it."));
            if (climb.PortLag is null) draft.Note($"{flown.Name}: without an accelerometer the lag of the ports cannot be told.");
        }
    }

    private static string Words(Teaching teaching, Estimate value, Study study) => $"{Number(teaching, value.Value, study)} ± {Number(teaching, 2 * value.Sigma, study)}";

    private static string Number(Teaching teaching, double value, Study study) => Shown.Text(value, teaching.Unit, study.Rocket.Inch);
}
