using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Will the matches light? Current through each match against what always lights it, and the test current against what never does.</summary>
public sealed class Fires() : Question("fires", "Will the matches light?", Place.Desk)
{
    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        foreach (var (circuit, i) in study.Rocket.Circuits.Select((c, i) => (c, i + 1))) Circuit(draft, circuit, $"_{i}");
        if (study.Rocket.Circuits.Count == 0) draft.Miss("firing: an altimeter with its supply and its match");
        draft.Note("At the voltage typed or nominal; a cold or tired battery gives less. Only a ground test with the real leads shows that a match lights.");
        return draft.Done();
    }

    private static void Circuit(Draft draft, FiringCircuit circuit, string n)
    {
        var w = draft.Working;
        var name = circuit.Name;
        void Need(double? value, string key)
        {
            if (value is null) draft.Miss($"firing, {name}: {key}");
        }

        Need(circuit.Voltage, "voltage of its supply");
        Need(circuit.InternalResistance, "internal resistance of its supply");
        Need(circuit.LeadResistance, "lead resistance");
        Need(circuit.MatchResistance, "resistance of its match");
        Need(circuit.AllFire, "all fire current of its match");
        Need(circuit.NoFire, "no fire current of its match");
        Need(circuit.TestCurrent, "test current of its match");
        var names = Locals.Numbered(n, "V", "R_b", "R_l", "R_m", "k", "I", "i", "i_a", "i_n", "i_t");
        if (circuit is { Voltage: { } volts, InternalResistance: { } battery, LeadResistance: { } leads, MatchResistance: { } match })
        {
            var V = w.Given("V" + n, volts, "V", $"voltage of the supply of {name} without load", circuit.VoltageSource);
            var R_b = w.Given("R_b" + n, battery, "Ω", "its internal resistance, cold", "design");
            var R_l = w.Given("R_l" + n, leads, "Ω", "leads, there and back", "design");
            var R_m = w.Given("R_m" + n, match, "Ω", "one match", "design");
            var k = w.Given("k" + n, circuit.Parallel, "", "matches in parallel", "design");
            var I = w.StepOf("I" + n, V / (R_b + R_l + (R_m / k)), "A", "current of the channel", "Ohm's law", names);
            var i = w.StepOf("i" + n, I / k, "A", "current through each match", "Ohm's law", names);
            if (circuit.AllFire is { } all)
            {
                var i_a = w.Given("i_a" + n, all, "A", "current that always lights it", "design");
                draft.Find($"{name}: current over all-fire current", w.StepOf("r" + n, i / i_a, "", "current over all-fire current", "definition", names), Unit.Ratio, "fires.current");
            }

            draft.Find($"{name}: voltage lost inside the supply", w.StepOf("s" + n, I * R_b / V, "", "share of the voltage lost inside the supply", "Ohm's law", names), Unit.Share);
        }

        if (circuit is { NoFire: { } never, TestCurrent: { } test })
        {
            var i_n = w.Given("i_n" + n, never, "A", $"current that never lights a match of {name}", "design");
            var i_t = w.Given("i_t" + n, test, "A", "current of the continuity test, all of it through one match", "design");
            draft.Find($"{name}: test current over no-fire current", w.StepOf("t" + n, i_t / i_n, "", "test current over no-fire current", "definition", names), Unit.Share, "fires.test");
        }
    }
}
