using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using static System.Math;

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
                if (study.LandsUnder(landing) is { } load) Alone(draft, study, landing, load, piece, n);
            }
        }

        if (n == 0) draft.Find("energy at the ground", double.NaN, Unit.Energy, "lands-soft.energy");
        draft.Note("Each piece on a cord is taken to land with its own mass at the common descent rate. Alone means that the last canopy carries all of it: a drogue hangs in its wake.");
        return draft.Done();
    }

    private static void Alone(Draft draft, Study study, Landing landing, CanopyLoad load, string piece, int n)
    {
        var w = draft.Working;
        (string, string)[] names = [("m", $"m_{n}"), ("M", $"M_{n}"), ("g", $"g_{n}"), ("d", $"d_{n}"), ("S", $"S_{n}"), ("e", $"e_{n}")];
        var (m, M, S) = (study.PieceMass(piece), w.Given($"M_{n}", landing.At.Mass, "kg", "mass of all that hangs together", "question weight"), w.Given($"S_{n}", load.Canopy.DragArea, "m²", $"drag area of {load.Canopy.Name}", "design, or the canopy table"));
        var (g, d) = (w.Given($"g_{n}", study.Gravity, "m/s²", "gravity at the site", "WGS 84 (NIMA TR8350.2)"), w.Given($"d_{n}", study.DensityAtPad, "kg/m³", "air density at the pad", "the day given"));
        var e = w.StepOf($"e_{n}", Sqrt(2 * M * g / (d * S)), "m/s", $"rate under {load.Canopy.Name} alone", "Knacke (1991) ch. 4", names);
        draft.Find($"{piece}: energy under {load.Canopy.Name} alone", w.StepOf($"A_{n}", 0.5 * m * e * e, "J", $"energy of {piece} at that rate", "definition", names), Unit.Energy, "lands-soft.energy");
    }
}
