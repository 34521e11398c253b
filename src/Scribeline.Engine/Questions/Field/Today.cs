using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions.Field;

/// <summary>What does today change? Every headline in today's weather against the planned one.</summary>
public sealed class Today() : Question("today", "What does today change?", Place.Field)
{
    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Measured);
        if (study.Planned is not { } planned)
        {
            draft.Miss("weather: temperature, pressure and wind of the day");
            return draft.Done();
        }

        var w = draft.Working;
        Show(draft, w, "T", "temperature at the pad", Unit.Temperature, "K", study.Air.Temperature, planned.Air.Temperature);
        Show(draft, w, "p", "pressure at the pad", Unit.Pressure, "Pa", study.Air.StationPressure, planned.Air.StationPressure);
        Show(draft, w, "rho", "air density at the pad", Unit.Density, "kg/m³", study.DensityAtPad, planned.DensityAtPad);
        if (study.WindIsKnown && planned.WindIsKnown) Show(draft, w, "u", "wind at 10 m", Unit.Speed, "m/s", study.WindAt(10), planned.WindAt(10));
        else draft.Note(study.WindIsKnown ? "The planned weather has no wind: today's is compared with a calm." : "No wind of today is typed: a calm is compared with the planned weather.");

        var changed = 0;
        var n = 0;
        foreach (var question in Questionnaire.Flight)
        {
            var now = question.Ask(study);
            var then = question.Ask(planned);
            if (now.Findings.Count == 0 || then.Findings.Count == 0) continue;
            var head = now.Findings[0];
            if (then.Findings.FirstOrDefault(f => f.Name == head.Name) is not { } before) continue;
            n++;
            w.Simulated($"a_{n}", head.Value, "", head.Name + ", today", "question " + question.Id);
            w.Simulated($"b_{n}", before.Value, "", head.Name + ", as planned", "question " + question.Id);
            draft.Find(head.Name, head.Value, head.Unit, head.Limit);
            draft.Find(head.Name + ", as planned", before.Value, before.Unit);
            if (now.Verdict == then.Verdict) continue;
            changed++;
            draft.Note($"{question.Text} {then.Verdict.Word()} as planned, {now.Verdict.Word()} today.");
        }

        if (changed == 0) draft.Note("No verdict changes.");
        return draft.Done();
    }

    private static void Show(Draft draft, Working w, string symbol, string name, Unit unit, string si, double today, double planned)
    {
        w.Given(symbol + "_t", today, si, name + ", today", "weather");
        w.Given(symbol + "_p", planned, si, name + ", as planned", "planned weather");
        draft.Find(name, today, unit);
        draft.Find(name + ", as planned", planned, unit);
    }
}
