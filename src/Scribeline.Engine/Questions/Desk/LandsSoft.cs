using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>How hard does each piece land? Kinetic energy of each piece at the ground.</summary>
public sealed class LandsSoft() : Question("lands-soft", "How hard does each piece land?", Place.Desk)
{
    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(Basis.Estimated);
        foreach (var missing in study.Rocket.RecoveryMissing) draft.Miss(missing);
        if (study.Rocket.RecoveryMissing.Count > 0) return draft.Done();
        if (study.Plan.Actions.Count == 0)
        {
            draft.Miss("stowed: a canopy, and firing: what frees it");
            return draft.Done();
        }

        var w = draft.Working;
        var n = 0;
        foreach (var landing in study.Flight.Landings)
        {
            foreach (var piece in landing.Pieces)
            {
                n++;
                var m = w.Given($"m_{n}", study.PieceMass(piece), "kg", $"mass of {piece} as it lands", "question weight");
                var v = w.Simulated($"v_{n}", landing.DescentRate, "m/s", "its descent rate at the ground", "flown, see question descends");
                var u = w.Simulated($"u_{n}", landing.Speed, "m/s", "its speed over the ground, drift included", "flown");
                var E = w.StepOf($"E_{n}", 0.5 * m * v * v, "J", $"energy of {piece} at its descent rate", "definition", [("m", $"m_{n}"), ("v", $"v_{n}")]);
                var K = w.StepOf($"K_{n}", 0.5 * m * u * u, "J", $"energy of {piece} with its drift", "definition", [("m", $"m_{n}"), ("u", $"u_{n}")]);
                draft.Find($"{piece}: energy at its descent rate", E, Unit.Energy, "lands-soft.energy");
                draft.Find($"{piece}: energy with its drift", K, Unit.Energy);
            }
        }

        if (n == 0) draft.Find("energy at the ground", double.NaN, Unit.Energy, "lands-soft.energy");
        draft.Note("Each piece on a cord is taken to land with its own mass at the common descent rate.");
        return draft.Done();
    }
}
