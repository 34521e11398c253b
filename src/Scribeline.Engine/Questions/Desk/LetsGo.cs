using Scribeline.Engine.Evidence.Shots;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Will each charge free its joint? Each charge alone: its push over the strongest pins and friction, the speed it gives, how far it carries.</summary>
public sealed class LetsGo() : Question("lets-go", "Will each charge free its joint?", Place.Desk)
{
    private const string Customary = "customary relation: Mobley (1997), T from memory";

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.ChargeFirings.Count > 0 && study.ChargeFirings.All(f => TestedOf(study, f) is not null) ? Basis.Tested : Basis.Estimated);
        ChargeNotes.Missing(draft, study);
        var n = 0;
        foreach (var firing in study.ChargeFirings)
        {
            n++;
            Push(draft, study, firing, n);
            Speed(draft, study, firing, n);
        }

        draft.Draw(() => Pressures(study));
        Remarks(draft, study);
        ChargeNotes.OfCharges(draft);
        return draft.Done();
    }

    private static void Push(Draft draft, Study study, ChargeFiring firing, int n)
    {
        var w = draft.Working;
        var name = firing.Charge.Name;
        var (inputs, held) = (firing.Fired.Inputs, firing.Retention);
        (string, string)[] names = [("m", $"m_{n}"), ("V", $"V_{n}"), ("D", $"D_{n}"), ("P", $"P_{n}"), ("S", $"S_{n}"), ("f", $"f_{n}"), ("p", $"p_{n}"), ("q", $"q_{n}"), ("F", $"F_{n}"), ("e", $"e_{n}"), ("h", $"h_{n}"), ("N", $"N_{n}")];
        var m = w.Given($"m_{n}", inputs.ChargeMass, "kg", $"powder of {name}", Source(firing.Charge));
        var V = w.Given($"V_{n}", inputs.FreeVolume, "m³", $"free volume of the bay, {firing.Bay.Name}", "design, less what is stowed");
        var D = w.Given($"D_{n}", inputs.Bore, "m", "bore of the joint", "design");
        var p = w.StepOf($"p_{n}", m * 119.228 * 1837.22 / V, "Pa", "customary gauge pressure, R 119.228 J/(kg K), T 1837.22 K", Customary, names);
        w.StepOf($"psi_{n}", m / 0.45359237 * 12 * 22.16 * 3307 / (V / Pow(0.0254, 3)), "psi", "the same in pounds and inches: R 22.16 ft·lbf/(lbm·°R), T 3307 °R", Customary, names);
        var P = w.Simulated($"P_{n}", firing.Held.PeakGauge, "Pa", "peak gauge pressure with the joint held, heat and leaks included", "integrated, see method separation");
        var q = w.StepOf($"q_{n}", Min(p, P), "Pa", "the less of the two", "definition", names);
        double F, S, f;
        if (TestedOf(study, firing) is { } tested)
        {
            // Shots may take from a margin, never add to it: how sure they are is judged by the probability.
            var e = w.Given($"e_{n}", tested.Margin, "", $"effectiveness of the powder by {tested.Shots} shots, mean, not above 1", "tested: question test-says");
            var h = w.Given($"h_{n}", tested.Hold.Mean, "", "strength of the hold by them over the nominal one, mean", "tested: question test-says");
            F = w.StepOf($"F_{n}", e * q * PI / 4 * D * D, "N", "its push on the joint", "definition", names);
            var N = w.Given($"N_{n}", held.Pins?.Nominal(study.PinTemperature) ?? held.Friction.Force, "N", held.Pins is null ? "friction as planned" : "pins as planned", held.Pins?.Material?.Source ?? "design");
            var strongest = w.Given($"s_{n}", held.Pins?.Strongest(study.PinTemperature) ?? held.Friction.Most, "N", held.Pins is null ? "friction at its most" : PinWords(held), held.Pins?.Material?.Source ?? "design");
            S = w.StepOf($"S_{n}", Max(strongest, h * N), "N", "the greater of planned and tested", "definition", [.. names, ("strongest", $"s_{n}")]);
            f = w.Given($"f_{n}", held.Pins is null ? 0 : held.Friction.Most, "N", "friction at its most, beside pins", held.Friction.Measured ? "design" : "assumption: 0.6 N per mm of bore");
            draft.Find($"{name}: lets go, by {tested.Shots} shots", tested.LetsGo.Mean, Unit.Share, "test-says.lets-go");
        }
        else
        {
            F = w.StepOf($"F_{n}", q * PI / 4 * D * D, "N", "its push on the joint", "definition", names);
            S = w.Given($"S_{n}", held.Pins?.Strongest(study.PinTemperature) ?? 0, "N", PinWords(held), held.Pins?.Material?.Source ?? "design");
            f = w.Given($"f_{n}", held.Friction.Most, "N", "friction at its most", held.Friction.Measured ? "design" : "assumption: 0.6 N per mm of bore");
        }

        if (S + f > 0)
        {
            var r = w.StepOf($"r_{n}", F / (S + f), "", "push over strongest pins and friction", "definition", names);
            draft.Find($"{name}: push over strongest pins and friction", r, Unit.Ratio, "lets-go.force-ratio");
        }

        draft.Find($"{name}: powder", m, Unit.Powder);
        if (held.Pins is { } pins && TestedOf(study, firing) is null) draft.RestsOn(pins.Basis);
    }

    private static void Speed(Draft draft, Study study, ChargeFiring firing, int n)
    {
        var w = draft.Working;
        var name = firing.Charge.Name;
        var tested = TestedOf(study, firing);
        var fired = tested is null ? firing.Fired : study.Fire(Expected(firing, tested));
        (string, string)[] names = [("planned", $"z_{n}"), ("a", $"a_{n}"), ("b", $"b_{n}"), ("v", $"v_{n}"), ("E", $"E_{n}"), ("k", $"k_{n}"), ("l", $"l_{n}"), ("L", $"L_{n}")];
        var a = w.Given($"a_{n}", fired.Inputs.ForwardMass, "kg", $"mass of {study.Vehicle.NameOf(firing.Ahead)}", "question weight");
        var b = w.Given($"b_{n}", fired.Inputs.AftMass, "kg", $"mass of {study.Vehicle.NameOf(firing.Behind)}", "question weight");
        var v = w.Simulated(
            $"v_{n}", fired.SeparationSpeed, "m/s", tested is null ? "speed of the two from one another once the gas is out" : "the same with powder and hold as the shots have them on the mean",
            tested is null ? "integrated, see method separation" : "tested: question test-says; integrated, see method separation");
        var E = w.StepOf($"E_{n}", 0.5 * a * b / (a + b) * v * v, "J", "energy of that motion", "definition", names);
        w.Simulated($"g_{n}", fired.PeakGauge, "Pa", "peak gauge pressure as the joint opens", "integrated, see method separation");
        draft.Find($"{name}: speed of the pieces from one another", v, Unit.Speed);
        draft.Find($"{name}: energy of that motion", E, Unit.Energy);
        if (fired.ReleaseTime is { } release) w.Simulated($"t_{n}", release, "s", "time until the pins let go", "integrated, see method separation");
        draft.Find($"{name}: peak pressure over that outside", fired.PeakGauge, Unit.Pressure);
        var pack = study.StowedIn(firing.Bay).Sum(s => s.Mass);
        if (pack <= 0) return;
        var k = w.Given($"k_{n}", pack, "kg", "mass of what is stowed in the bay", "design");
        var l = w.Given($"l_{n}", firing.Bay.Length, "m", "length of the bay", "design");
        double u;
        if (tested is null)
        {
            u = w.StepOf($"u_{n}", E / (k * 9.80665 * l), "", "energy over the pull of the gear's own weight along the bay", "assumption", names);
        }
        else
        {
            var planned = w.Simulated($"z_{n}", firing.Fired.KineticEnergy, "J", "energy of the motion as planned, before any shot", "integrated, see method separation");
            u = w.StepOf($"u_{n}", Min(E, planned) / (k * 9.80665 * l), "", "the less of the two over the pull of the gear's own weight along the bay", "assumption", names);
        }

        draft.Find($"{name}: energy over what draws the gear clear", u, Unit.Ratio, "lets-go.draws-clear");
        var length = study.Rocket.Separation.Harnesses.Where(h => h.Spans(firing.Charge.Joint)).Select(h => h.Length).DefaultIfEmpty(0).Max();
        if (length * v <= 0) return;
        var L = w.Given($"L_{n}", length, "m", "length of the harness", "design");
        var share = w.StepOf($"x_{n}", Min(1, E / (k * 9.80665 * L)), "", "share of the harness that runs out against the same pull all along", "assumption", names);
        draft.Find($"{name}: share of the harness that runs out", share, Unit.Share);
        draft.Find($"{name}: time until the harness is taut", w.StepOf($"y_{n}", L / v, "s", "time until the harness is taut", "steady speed", names), Unit.Time);
    }

    private static TestedCharge? TestedOf(Study study, ChargeFiring firing) => study.Tested.FirstOrDefault(t => t.Charge == firing.Charge.Name);

    private static EjectionInputs Expected(ChargeFiring firing, TestedCharge tested)
    {
        var inputs = firing.Fired.Inputs with { Powder = firing.Fired.Inputs.Powder.Scaled(tested.Powder.Mean) };
        return firing.Retention.Pins is not null ? inputs with { PinForce = inputs.PinForce * tested.Hold.Mean }
            : inputs with { StaticFriction = inputs.StaticFriction * tested.Hold.Mean, SlidingFriction = inputs.SlidingFriction * tested.Hold.Mean };
    }

    private static string Source(ChargeLoad charge) => charge.Choice is { } choice
        ? $"chosen: least charge that meets {choice.Ruling} in the worst corner of the tolerances ({1000 * choice.Least:F2} g), rounded up to 0.1 g"
        : "design";

    private static string PinWords(JointRetention held) => held.Pins is { } pins ? $"{pins.Count} pins {pins.Name} at their strongest" : "no pins";

    private static void Remarks(Draft draft, Study study)
    {
        foreach (var charge in study.Rocket.Separation.Charges)
        {
            if (charge.Choice is { } choice) draft.Note($"{charge.Name} is chosen: {1000 * choice.Mass:F1} g, ruled by {choice.Ruling}.");
        }

        if (study.Rocket.Separation.Joints.Any(j => !j.Friction.Measured))
            draft.Note("The friction of a joint without fit.friction is taken as 0.6 N per mm of bore: measure it with a spring scale.");
        if (study.Tested.Count > 0) draft.Note("Shots of the ground tests count here: speeds are as they have them, and margins take the worse of planned and tested.");
        if (study.ChargeFirings.Any(f => f.Height + study.Air.Elevation > 6000))
            draft.Note("Above 6 km a loose charge may burn in part only: contain it tightly, igniter inside the powder, and test it in a vacuum.");
        draft.Note("The pressure of no recovery charge is published: the push is the less of the customary and the computed one, and the margin covers the rest.");
    }

    private static Plot Pressures(Study study) => new(
        "pressure in the bay",
        new Axis("time after ignition", Unit.Time),
        new Axis("pressure over that outside", Unit.Pressure),
        study.ChargeFirings.Select(f => History(f)).ToValueList(),
        study.ChargeFirings.Where(f => f.Fired.Parted).Select(f => new Mark($"{f.Charge.Name}: apart", f.Fired.PartingTime!.Value)).ToValueList());

    private static Series History(ChargeFiring firing)
    {
        var states = firing.Fired.Series(0.2e-3).ToArray();
        return new(
            firing.Charge.Name, states.Select(s => s.Time).ToValueList(),
            states.Select(s => s.Pressure - firing.Fired.Inputs.AmbientPressure).ToValueList());
    }
}
