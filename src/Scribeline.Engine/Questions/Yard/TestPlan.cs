using System.Globalization;
using Scribeline.Engine.Evidence.Shots;
using Scribeline.Engine.Quantities;
using static System.Math;

namespace Scribeline.Engine.Questions.Yard;

/// <summary>What do I test, with how much? Charge by charge: load, what to expect on the ground, what counts as a pass, and the order of the shots.</summary>
public sealed class TestPlan() : Question("test-plan", "What do I test, with how much?", Place.Yard)
{
    private const string Integrated = "integrated for the ground: air at the pad, motor out, both pieces free; see method ground-tests";

    /// <summary>First load over that to be flown: the flight charge is then 1.25 times a clean one.</summary>
    private const double FirstShare = 0.8;

    // Clean shots with the load to be flown before it flies: common practice. What they show by themselves stands in the working.
    private const int CleanShots = 3;

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        ChargeNotes.Missing(draft, study);
        var order = study.JointTests.OrderBy(t => t.Charges.Select(c => c.Before.Mean).DefaultIfEmpty(1).Min()).ToValueList();
        var n = 0;
        foreach (var charge in order.SelectMany(t => t.Charges)) Expect(draft, study, charge, ++n);
        if (n > 0) Runs(draft, order);
        draft.List(() => Shots(study, order));
        draft.List(() => Passes(study, order));
        Notes(draft, order);
        ChargeNotes.OfCharges(draft);
        return draft.Done();
    }

    // What one load does on the ground.
    private static void Expect(Draft draft, Study study, ChargeTest charge, int n)
    {
        var w = draft.Working;
        var (firing, inputs) = (charge.Firing, charge.Ground);
        var name = firing.Charge.Name;
        var fired = study.Fire(inputs);
        (string, string)[] names = [("a", $"a_{n}"), ("b", $"b_{n}"), ("v", $"v_{n}"), ("E", $"E_{n}"), ("G", $"G_{n}"), ("l", $"l_{n}"), ("U", $"U_{n}"), ("u", $"u_{n}"), ("L", $"L_{n}")];
        draft.Find($"{name}: powder", w.Given($"m_{n}", inputs.ChargeMass, "kg", $"powder of {name}", firing.Charge.Choice is { } c ? $"chosen, see lets-go; ruled by {c.Ruling}" : "design"), Unit.Powder);
        w.Given($"H_{n}", inputs.PinForce + inputs.StaticFriction, "N", "pins and friction as expected", "design");
        draft.Find($"{name}: lets go on the ground, before any shot", w.Simulated($"q_{n}", charge.BeforeOnGround.Mean, "", "probability that the joint opens", "powder and hold as unsure as before any shot; see method ground-tests"), Unit.Share);
        draft.Find($"{name}: peak pressure over that outside", w.Simulated($"p_{n}", fired.PeakGauge, "Pa", "peak gauge pressure", Integrated), Unit.Pressure);
        var a = w.Given($"a_{n}", inputs.ForwardMass, "kg", $"{study.Vehicle.NameOf(firing.Ahead)}, without motor", "question weight");
        var b = w.Given($"b_{n}", inputs.AftMass, "kg", $"{study.Vehicle.NameOf(firing.Behind)}, without motor", "question weight");
        var v = w.Simulated($"v_{n}", fired.SeparationSpeed, "m/s", "speed of the two from one another", Integrated);
        draft.Find($"{name}: speed of the pieces from one another", v, Unit.Speed);
        var E = w.StepOf($"E_{n}", 0.5 * a * b / (a + b) * v * v, "J", "energy of that motion", "definition", names);
        var G = w.Given($"G_{n}", study.StowedIn(firing.Bay).Sum(s => s.Mass), "kg", "mass of what is stowed in the bay", "design");
        var l = w.Given($"l_{n}", firing.Bay.Length, "m", "length of the bay", "design");
        var U = w.StepOf($"U_{n}", Max(0, E - (G * 9.80665 * l)), "J", "energy left when the gear is out of the bay, drawn against a pull of its own weight", "assumption", names);
        var u = w.StepOf($"u_{n}", Sqrt(2 * U * (a + b) / (a * b)), "m/s", "speed then", "definition", names);
        var harness = study.Rocket.Separation.Harnesses.Where(h => h.Spans(firing.Charge.Joint)).MaxBy(h => h.Length);
        var free = w.StepOf($"D_{n}", u * Sqrt(2 * 0.5 / 9.80665) + u * u / (2 * 0.5 * 9.80665), "m", "distance: a fall from a stand of 0.5 m, then sliding on grass at a friction of 0.5", "assumption", names);
        var L = w.Given($"L_{n}", harness?.Length ?? 1000, "m", harness is null ? "no harness: nothing holds them" : "length of the harness", "design");
        draft.Find($"{name}: how far apart they end", w.StepOf($"d_{n}", Min(L, free), "m", "the same, held by the harness", "definition", [.. names, ("free", $"D_{n}")]), Unit.Height);
        if (harness?.Stretching is { } cord)
        {
            var tension = HarnessWorking.Tension(w, cord, E, n);
            draft.Find($"{name}: stretch of the cord if it runs out at that speed", w.Simulated($"x_{n}", cord.StretchAt(tension), "m", "stretch of the cord at that tension", "cord table"), Unit.Length);
        }

        draft.Find($"{name}: passes with a speed of at least", w.StepOf($"P_{n}", Sqrt(2 * G * 9.80665 * l * (a + b) / (a * b)), "m/s", "least speed whose energy draws the gear out of the bay", "assumption: limit lets-go.draws-clear", names), Unit.Speed);
        draft.Find($"{name}: keep clear ahead and behind", w.StepOf($"c_{n}", Max(5, 1.5 * v * v / 9.80665), "m", "one and a half times as far as a part could fly, and at least 5 m", "common practice; range of a throw v²/g", names), Unit.Height);
    }

    private static void Runs(Draft draft, ValueList<JointTest> order)
    {
        var w = draft.Working;
        var C = w.Given("C_r", 0.95, "", "confidence", "customary");
        var R = w.Given("R_r", 0.95, "", "reliability", "customary");
        var n = w.Given("n_r", CleanShots, "", "clean shots in a row with the load to be flown", "common practice");
        (string, string)[] names = [("C", "C_r"), ("R", "R_r"), ("n", "n_r")];
        w.StepOf("S_r", Pow(1 - C, 1 / n), "", "reliability that so many show by themselves", "success run: Clopper and Pearson (1934), no failure", names);
        w.StepOf("N_r", Log(1 - C) / Log(R), "", "shots that would show 95 % by themselves", "success run: Clopper and Pearson (1934), no failure", names);
        draft.Find("shots to plan", order.Sum(t => Loads(t).Count()), Unit.Count);
    }

    // Load by load: the small one first, then that to be flown, then the largest of the bay once, for strength.
    private static IEnumerable<(ChargeTest Charge, double Mass, string Why)> Loads(JointTest test)
    {
        if (test.Charges.Count == 0) yield break;
        var (least, most) = (test.Charges.MinBy(c => c.Ground.ChargeMass)!, test.Charges.MaxBy(c => c.Ground.ChargeMass)!);
        yield return (least, Round(FirstShare * least.Ground.ChargeMass, 5), "a fifth less");
        for (var i = 1; i <= CleanShots; i++) yield return (least, least.Ground.ChargeMass, "as flown");
        if (most.Ground.ChargeMass > least.Ground.ChargeMass) yield return (most, most.Ground.ChargeMass, "largest of the bay");
    }

    private static AnswerTable Shots(Study study, ValueList<JointTest> order) => new(
        "Shots to fire, with room for what happens",
        [new("joint"), new("load for"), new("powder", Unit.Powder), new("why"), new("pressure", Unit.Pressure), new("speed", Unit.Speed), new("what happened, speed, distance")],
        order.SelectMany(t => Loads(t).Select(l =>
        {
            var fired = study.Fire(study.OnGround(l.Charge.Firing, l.Mass));
            return TableRow.Of(null, t.Name, l.Charge.Firing.Charge.Name, l.Mass, l.Why, fired.PeakGauge, fired.Parted ? fired.SeparationSpeed : (TableCell)"does not part", "");
        })).ToValueList());

    private static AnswerTable Passes(Study study, ValueList<JointTest> order) => new(
        "What to set up, and what counts as a pass",
        [new("joint"), new("on the stand"), new("fitted"), new("coupler out by", Unit.Length), new("gear out by", Unit.Length), new("unsure before any shot")],
        order.Where(t => t.Charges.Count > 0).Select(t =>
        {
            var firing = t.Charges[0].Firing;
            return TableRow.Of(
                null, t.Name,
                $"{study.Vehicle.NameOf(firing.Ahead)}, and {study.Vehicle.NameOf(firing.Behind)}, motor out",
                t.Retention.Pins is { } pins ? string.Create(CultureInfo.InvariantCulture, $"{pins.Count} pins {pins.Name}, new") : "no pins",
                firing.Fired.Inputs.Stroke, firing.Bay.Length,
                string.Create(CultureInfo.InvariantCulture, $"powder {t.Before.Powder.Low:F2} to {t.Before.Powder.High:F2} times, {(t.Retention.Pins is null ? "friction" : "pins")} {t.Before.Hold.Low:F2} to {t.Before.Hold.High:F2} times nominal"));
        }).ToValueList());

    private static void Notes(Draft draft, ValueList<JointTest> order)
    {
        if (order.Count > 1) draft.Note($"Begin with {order[0].Name}: it is the least sure to open, so its shots are the most likely to change the design (a choice of this program).");
        draft.Note("The first shot of a joint has a fifth less than is flown: if it parts, the load to be flown is 1.25 times a clean one (common practice: 1.25 to 1.5). Then three in a row as flown, and once the largest load of the bay, at which nothing may break.");
        draft.Note("A shot passes when the joint is right out, what was stowed lies outside the tube, nothing is torn, cracked or burnt, and the pieces came apart at no less than the speed given (common practice, and limit lets-go.draws-clear).");
        draft.Note("Stop and look when something broke, when the load to be flown did not part, when a joint parted without its pins being cut clean, or when a shot was much harder than the one before. Change one thing at a time; a changed bay, pin or grain begins anew.");
        draft.Note("If a load does not part, go up by a tenth and not past the largest load that bursts-nothing clears; a shot may raise a charge, it never lowers one by itself (common practice).");
        draft.Note("Set-up (common practice): everything packed as it flies, the same lot of powder weighed to 0.02 g, motor out or inert; level on a soft stand at half a metre, both pieces free to fly, a backstop behind, dry grass cleared, water at hand. Nobody in line with either end; stand at least 5 m to the side; eye and ear protection.");
        draft.Note("Firing (common practice): leads twisted and shorted until the last step, the key of the firing box in the pocket of whoever loads, count down aloud. After a misfire wait a minute, disconnect and short before going near. Only the charge in use is on the table.");
        draft.Note("The ground differs from the flight: thicker air, no deceleration, no motor, and the weight of a piece lying on its coupler is friction that flight does not have. The club's code and the range safety officer decide where and whether this may be done at all.");
    }
}
