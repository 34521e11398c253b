using Scribeline.Engine.Evidence.Shots;
using Scribeline.Engine.Quantities;
using static System.Math;

namespace Scribeline.Engine.Questions.Yard;

/// <summary>What do the shots say? Effectiveness of the powder, strength of the pins, the probability that each charge lets go, and how many more shots would settle it.</summary>
public sealed class TestSays() : Question("test-says", "What do the shots say?", Place.Yard)
{
    private const string Bayes = "Bayes' rule on a grid, see method ground-tests";

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Tested);
        ChargeNotes.Missing(draft, study);
        foreach (var test in study.JointTests.Where(t => !t.Enough))
            draft.Miss($"records.shots: a shot at {test.Name}{(test.Counted.Any() ? ", one more at least: a single one proves nothing" : "")}");
        var shot = study.JointTests.Where(t => t.Counted.Any()).ToValueList();
        var (n, c) = (0, 0);
        foreach (var test in shot)
        {
            n++;
            foreach (var charge in test.Charges) LetsGo(draft, study, test, charge, n, ++c);
            Joint(draft, test, n);
        }

        if (study.Rocket.Shots.Count > 0) draft.List(() => All(study));
        if (shot.Count > 0)
        {
            draft.List(() => Rests(study, shot));
            draft.Draw(() => ByPowder(study, shot));
            draft.Draw(() => Powder(shot));
            if (shot.Any(t => t.After.HoldCurve.Values.Count > 0)) draft.Draw(() => Pins(shot));
        }

        Notes(draft, study, shot);
        ChargeNotes.OfCharges(draft);
        return draft.Done();
    }

    private static void LetsGo(Draft draft, Study study, JointTest test, ChargeTest charge, int joint, int n)
    {
        var w = draft.Working;
        var name = charge.Firing.Charge.Name;
        (string, string)[] names = [("F", $"F_{n}"), ("H", $"H_{n}"), ("s", $"s_{n}"), ("k", $"k_{n}"), ("h", $"h_{n}")];
        var F = w.Simulated($"F_{n}", charge.Firing.Held.PeakGauge * charge.Firing.Fired.Inputs.Area, "N", $"push of {name} in flight, joint held, powder as customary", "integrated, see method separation");
        var H = w.Given($"H_{n}", (charge.Firing.Retention.Pins?.Nominal(study.PinTemperature) ?? 0) + charge.Firing.Retention.Friction.Force, "N", "pins and friction in flight", "design");
        var s = w.Given($"s_{n}", JointPrior.UsualSpread, "", "spread of ln of the powder's effectiveness before any shot", "assumption");
        var k = w.Given($"k_{n}", JointPrior.UsualScatter, "", "scatter of it from shot to shot", "assumption");
        var h = w.Given($"h_{n}", test.Before.Prior.HoldSpread, "", "spread of ln of the hold's strength before any shot", "bounds of the design, taken as 5 % and 95 %");
        w.StepOf($"z_{n}", Log(F / H) / Sqrt((s * s) + (k * k) + (h * h)), "", "room before any shot in standard deviations, roughly: compare with the tables of the normal distribution", "difference of logarithms", names);
        w.Simulated($"b_{n}", charge.Before.Mean, "", "probability of letting go, before any shot", Bayes);
        var after = w.Simulated($"p_{n}", charge.After.Mean, "", $"the same after {test.Counted.Count()} shots", Bayes);
        draft.Find($"{name}: lets go in flight, by the shots", after, Unit.Share, test.Enough ? study.Limits["test-says.lets-go"] : null);
        draft.Find($"{name}: the same before any shot", charge.Before.Mean, Unit.Share);
        draft.Find($"{name}: nineteen in twenty that it is more than", w.Simulated($"l_{n}", charge.After.Low, "", "5 % quantile of the probability of letting go", Bayes), Unit.Share);
        if (charge.More is { } more) draft.Find($"{name}: more shots in a row for 95 % at 95 %, by all that is known", w.Simulated($"m_{n}", more, "", "least number of further shots after which the 5 % quantile reaches 95 %", Bayes), Unit.Count);
        else draft.Note($"{name}: two hundred more shots in a row would not bring 95 % with 95 % credibility; change the charge or the pins.");
        var run = test.Run(charge);
        draft.Find($"{name}: more shots in a row for 95 % at 95 %, by counting alone", Max(0, SuccessRun.Needed(0.95, 0.95) - run), Unit.Count);
        Counting(draft, name, run, n);
    }

    private static void Counting(Draft draft, string name, int run, int n)
    {
        var w = draft.Working;
        var r = w.Given($"r_{n}", run, "", $"shots in a row at which the joint let go with no more powder than {name} has", "records");
        var g = w.Given($"g_{n}", 0.05, "", "one less the confidence", "customary");
        w.StepOf($"N_{n}", Log(g) / Log(0.95), "", "length of a run that shows 95 % by itself", "success run: Clopper and Pearson (1934), no failure", [("g", $"g_{n}")]);
        if (run > 0) w.StepOf($"R_{n}", Pow(g, 1 / r), "", "reliability that this run shows by itself", "success run: Clopper and Pearson (1934), no failure", [("g", $"g_{n}"), ("r", $"r_{n}")]);
    }

    private static void Joint(Draft draft, JointTest test, int n)
    {
        var w = draft.Working;
        draft.Find($"{test.Name}: shots that count", test.Counted.Count(), Unit.Count);
        draft.Find($"{test.Name}: of them let go", test.Counted.Count(s => s.Shot.LetGo), Unit.Count);
        draft.Find($"{test.Name}: effectiveness of the powder", w.Simulated($"eta_{n}", test.After.Powder.Mean, "", $"{test.Name}: effectiveness of the powder over the customary one, mean", Bayes), Unit.Ratio);
        w.Simulated($"etal_{n}", test.After.Powder.Low, "", "5 % below", Bayes);
        w.Simulated($"etah_{n}", test.After.Powder.High, "", "5 % above", Bayes);
        if (test.After.Prior.HoldSpread <= 0) return;
        var what = test.Retention.Pins is null ? "friction" : "pins";
        draft.Find($"{test.Name}: strength of the {what}", w.Simulated($"kap_{n}", test.After.Hold.Mean, "", $"{test.Name}: strength of the {what} over the nominal one, mean", Bayes), Unit.Ratio);
        w.Simulated($"kapl_{n}", test.After.Hold.Low, "", "5 % below", Bayes);
        w.Simulated($"kaph_{n}", test.After.Hold.High, "", "5 % above", Bayes);
        w.Simulated($"rho_{n}", test.After.Correlation, "", "correlation of the two: what a shot cannot tell apart", Bayes);
    }

    private static AnswerTable All(Study study)
    {
        var judged = study.JointTests.SelectMany(t => t.Shots).ToDictionary(s => s.Shot);
        return new(
            "Shots",
            [new("shot"), new("load for"), new("powder", Unit.Powder), new("happened"), new("speed", Unit.Speed), new("pressure", Unit.Pressure), new("distance", Unit.Height), new("counts"), new("remarks")],
            study.Rocket.Shots.Select(s =>
            {
                var found = judged.GetValueOrDefault(s);
                return TableRow.Of(
                    null, $"{s.Name} {s.Date}".TrimEnd(), s.Charge, s.Powder, Word(s.Outcome), s.Speed?.Value, s.Pressure?.Value, s.Distance,
                    found is null ? "no: this design has no such charge that can be fired" : found.Evidence is null ? $"no longer of this joint: {found.Why}" : found.Why.Length > 0 ? $"yes; {found.Why}" : "yes",
                    string.Join("; ", new[] { s.Wadding, s.Temperature is { } t ? Shown.Text(t, Unit.Temperature, study.Rocket.Inch) : "", s.Note, s.Revision.Length > 0 ? $"revision {s.Revision}" : "" }.Where(x => x.Length > 0)));
            }).ToValueList());
    }

    private static string Word(ShotOutcome outcome) => outcome switch
    {
        ShotOutcome.Stayed => "did not part",
        ShotOutcome.GearIn => "gear stayed in",
        ShotOutcome.Clean => "parted",
        ShotOutcome.Hard => "parted hard",
        _ => "broke",
    };

    // What the shots reach, and what goes on resting on guesses.
    private static AnswerTable Rests(Study study, ValueList<JointTest> shot)
    {
        var untested = string.Join(", ", study.JointTests.Where(t => !t.Enough).Select(t => t.Name));
        var counts = study.Tested.Count > 0;
        return new(
            "Which answers rest on the shots",
            [new("question"), new("rests on")],
            [
                TableRow.Of(null, "lets-go", counts ? $"the shots{(untested.Length > 0 ? $", but for {untested} on guesses" : "")}" : "guesses, until the shots are let count"),
                TableRow.Of(null, "holds-through-drogue", "bounds of the pins, and powder as customary"),
                TableRow.Of(null, "stays-together", "weakest pins within their bounds: shots that part say nothing of holding"),
                TableRow.Of(null, "bursts-nothing", "powder at its outer bound, on purpose"),
                TableRow.Of(null, "cords", "powder as customary"),
                TableRow.Of(null, "if-it-fails", "powder as customary, weaker and stronger by assumption"),
            ]);
    }

    private static Plot ByPowder(Study study, ValueList<JointTest> shot) => new(
        "probability of letting go in flight",
        new("powder", Unit.Powder),
        new("probability", Unit.Share),
        shot.Where(t => t.Charges.Count > 0).SelectMany(t =>
        {
            var points = study.LettingGoBy(t, t.Charges[0].Firing);
            var mass = points.Select(p => p.Mass).ToValueList();
            return new Series[] { new($"{t.Name}: before", mass, points.Select(p => p.Before).ToValueList()), new($"{t.Name}: by the shots", mass, points.Select(p => p.After).ToValueList()) };
        }).ToValueList(),
        shot.SelectMany(t => t.Charges).Select(c => new Mark(c.Firing.Charge.Name, c.Firing.Fired.Inputs.ChargeMass)).ToValueList(),
        study.Limits["test-says.lets-go"].Value);

    private static Plot Powder(ValueList<JointTest> shot) => Density("effectiveness of the powder", "over the customary one", shot, p => p.PowderCurve);

    private static Plot Pins(ValueList<JointTest> shot) => Density("strength of the hold", "over the nominal one", shot.Where(t => t.After.HoldCurve.Values.Count > 0).ToValueList(), p => p.HoldCurve);

    private static Plot Density(string title, string across, ValueList<JointTest> shot, Func<JointPosterior, (ValueList<double> Values, ValueList<double> Density)> curve) => new(
        title,
        new(across, Unit.Ratio),
        new("density", Unit.Ratio),
        shot.SelectMany(t => new[] { Line($"{t.Name}: before", curve(t.Before)), Line($"{t.Name}: by the shots", curve(t.After)) }).ToValueList(),
        []);

    // Beyond what one in a thousand reaches there is nothing to see.
    private static Series Line(string name, (ValueList<double> Values, ValueList<double> Density) curve)
    {
        var most = curve.Density.Max();
        var shown = curve.Values.Zip(curve.Density).Where(p => p.Second > 0.002 * most).ToArray();
        return new(name, shown.Select(p => p.First).ToValueList(), shown.Select(p => p.Second).ToValueList());
    }

    private static void Notes(Draft draft, Study study, ValueList<JointTest> shot)
    {
        foreach (var judged in study.JointTests.SelectMany(t => t.Shots).Where(s => s.Why.Length > 0))
            draft.Note(judged.Evidence is null ? $"{judged.Shot.Name} is no longer of this joint: {judged.Why}." : $"{judged.Shot.Name}: {judged.Why}.");
        foreach (var test in shot.Where(t => t.Counted.Any(s => s.Shot.Outcome is ShotOutcome.Hard or ShotOutcome.Broke)))
            draft.Note($"{test.Name}: a shot was hard or broke something. That it let go counts here; what it did to the parts does not: look at bursts-nothing and cords.");
        foreach (var test in shot.Where(t => t.Counted.Any(s => s.Shot.Outcome == ShotOutcome.GearIn)))
            draft.Note($"{test.Name}: a joint let go and its gear stayed in. That is no pass, whatever the probability of letting go.");
        if (shot.Count == 0) return;
        draft.Note(study.Tested.Count > 0 ? "The shots count in lets-go (records: shots count: yes)."
            : study.Rocket.ShotsCount ? "The shots are to count in lets-go, but no joint has two that do."
            : "The shots count in no other answer until you let them: records: shots count: yes.");
        draft.Note("Counting takes every shot as nothing but passed or not. By all that is known, each shot also tells how far it was from not passing, by way of assumptions: a spread of 0.35 and a scatter of 0.15 of ln of the powder's effectiveness, 0.10 of a pin's strength.");
    }
}
