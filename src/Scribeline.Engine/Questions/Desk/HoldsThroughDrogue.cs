using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>
/// Does the main stay in while the drogue jerks? What pulls on each joint that is still shut when a harness runs out and when a canopy
/// opens, against its weakest pins.
/// </summary>
public sealed class HoldsThroughDrogue() : Question("holds-through-drogue", "Does the main stay in while the drogue jerks?", Place.Desk)
{
    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        ChargeNotes.Missing(draft, study);
        var n = 0;

        // Of the charges on one joint the hardest, as if it fired alone: the gentler one may fail.
        foreach (var firing in study.ChargeFirings.GroupBy(f => f.Charge.Joint).Select(g => g.MaxBy(f => f.Fired.KineticEnergy)!).OrderBy(f => study.OpeningTime(f.Charge.Joint)))
        {
            if (study.Rocket.Separation.Harnesses.FirstOrDefault(h => h.Spans(firing.Charge.Joint)) is { } harness) Jerk(draft, study, firing, harness, ++n);
        }

        if (n == 0 && draft.IsEmpty) draft.Miss("stowed: a cord that ties the two sides of a joint that opens");
        draft.Note("The harness is taken to run out freely: folds and drag on the way only soften the jerk. Nylon is stiffer when jerked than when drawn slowly; taped folds take energy out of it.");
        ChargeNotes.OfStrength(draft);
        return draft.Done();
    }

    private static void Jerk(Draft draft, Study study, ChargeFiring firing, Harness harness, int n)
    {
        var remaining = Remaining(study, firing, harness).ToArray();
        var w = draft.Working;
        var name = study.Vehicle.NameOf(firing.Ahead);
        (string, string)[] names = [("a", $"a_{n}"), ("b", $"b_{n}"), ("v", $"v_{n}"), ("E", $"E_{n}"), ("k", $"k_{n}"), ("K", $"K_{n}"), ("Q", $"Q_{n}"), ("T", $"T_{n}")];
        var a = w.Given($"a_{n}", firing.Fired.Inputs.ForwardMass, "kg", $"mass of {name}", "question weight");
        var b = w.Given($"b_{n}", firing.Fired.Inputs.AftMass, "kg", $"mass of {study.Vehicle.NameOf(firing.Behind)}", "question weight");
        var v = w.Simulated($"v_{n}", firing.Fired.SeparationSpeed, "m/s", $"speed of the two from one another after {firing.Charge.Name}", "question lets-go");
        var E = w.StepOf($"E_{n}", 0.5 * a * b / (a + b) * v * v, "J", $"energy {harness.Name} must take up", "definition", names);
        double? tension = null;
        if (harness.Stretching is not { } cord)
        {
            draft.Miss($"{harness.At}.{(harness.Strength is null ? "strength" : "stretch")}: of {harness.Name}, by the certificate of its lot");
        }
        else
        {
            tension = HarnessWorking.Tension(w, cord, E, n);
            var T = tension.Value;
            draft.Find($"{firing.Charge.Name}: peak tension of {harness.Name}", T, Unit.Force);
            draft.Find($"{firing.Charge.Name}: deceleration of {name}", w.StepOf($"A_{n}", T / a, "m/s²", $"deceleration of {name}", "definition", names), Unit.Acceleration);
            draft.Find($"{firing.Charge.Name}: deceleration of {study.Vehicle.NameOf(firing.Behind)}", w.StepOf($"B_{n}", T / b, "m/s²", "deceleration of the other", "definition", names), Unit.Acceleration);
        }

        foreach (var (joint, piece, beyond) in remaining) OnJoint(draft, study, firing, n, joint, piece, beyond, tension);
    }

    private static void OnJoint(Draft draft, Study study, ChargeFiring firing, int n, int joint, Piece piece, double beyond, double? tension)
    {
        var w = draft.Working;
        var label = $"{study.Vehicle.Parts[joint].Name} to {study.Vehicle.Parts[joint + 1].Name}";
        var id = $"{n}_{joint + 1}";
        (string, string)[] names = [("T", $"T_{n}"), ("c", $"c_{id}"), ("d", $"d_{id}"), ("O", $"O_{id}"), ("M", $"M_{id}"), ("U", $"U_{id}"), ("W", $"W_{id}"), ("R", $"R_{id}")];
        var c = w.Given($"c_{id}", beyond, "kg", $"mass past {label}, with what is packed there and leans on it", "question weight");
        var d = w.Given($"d_{id}", study.PieceProperties(piece).Mass, "kg", $"mass of {study.Vehicle.NameOf(piece)}", "question weight");
        var held = study.Rocket.Separation.Of(joint)!;
        var R = w.Given($"R_{id}", held.Weakest(study.PinTemperature), "N", $"retention of {label}, weakest", held.Pins?.Material?.Source ?? "design");
        List<(double Force, string Symbol)> pulls = [];
        if (tension is { } T)
        {
            var U = w.StepOf($"U_{id}", T * c / d, "N", "pull on the joint as the harness runs out", "Newton's second law on what lies past it", names);
            draft.Find($"{firing.Charge.Name}: pull on {label} as the harness runs out", U, Unit.Force);
            pulls.Add((U, $"U_{id}"));
        }

        // Canopies that open on the way, before this joint opens itself.
        var openings = study.CanopyLoads.Where(l => l.Flown.LineStretch.Time is var time && time >= (study.OpeningTime(firing.Charge.Joint) ?? 0) && time < study.ReleaseOf(joint));
        if (openings.MaxBy(l => l.Worst) is { Canopy: var opening } load)
        {
            var O = w.Simulated($"O_{id}", load.Worst, "N", $"worst opening force of {opening.Name}", "question opens");
            var M = w.Given($"M_{id}", firing.Fired.Inputs.ForwardMass + firing.Fired.Inputs.AftMass, "kg", "mass that hangs on it", "question weight");
            var W = w.StepOf($"W_{id}", O * c / M, "N", "pull on the joint as it opens", "Newton's second law on what lies past it", names);
            draft.Find($"{opening.Name}: pull on {label} as it opens", W, Unit.Force);
            pulls.Add((W, $"W_{id}"));
        }

        // Without the jerk only half the answer is known: it may fail, it cannot pass.
        var (G, greatest) = pulls.DefaultIfEmpty().MaxBy(x => x.Force);
        if (G <= 0 || (tension is null && study.Limits["holds-through-drogue.ratio"].IsMetBy(R / G))) return;
        var r = w.StepOf($"r_{id}", R / G, "", "weakest retention over the greatest pull", "definition", [("R", $"R_{id}"), ("G", greatest)]);
        draft.Find($"{label}: weakest retention over the greatest pull after {firing.Charge.Name}", r, Unit.Ratio, "holds-through-drogue.ratio");
    }

    private static IEnumerable<(int Joint, Piece Piece, double Beyond)> Remaining(Study study, ChargeFiring firing, Harness harness) =>
        study.PulledBy(harness, firing.Charge.Joint, firing.Ahead, firing.Behind);
}
