using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Are the cords long enough and strong enough? Snap-out, length, how the parts hang, and what the cord does to the edge of a tube.</summary>
public sealed class Cords() : Question("cords", "Are the cords long enough and strong enough?", Place.Desk)
{
    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        ChargeNotes.Missing(draft, study);
        if (study.Jerks.Count == 0) draft.Miss("stowed: a cord that ties the two sides of a joint that opens");
        foreach (var jerk in study.Jerks)
        {
            var n = jerk.Cord + 1;
            Strength(draft, study, jerk, n);
            Length(draft, study, jerk, n);
            Hang(draft, study, jerk, n);
            Heat(draft, study, jerk);
        }

        draft.Note("The cord is taken to run out freely and to bend by 60° over the edge of the tube, an assumption. Taped folds take energy out of the jerk; nylon is stiffer when jerked than when drawn slowly, and weaker wet.");
        draft.Note("Bare nylon within a metre of a charge can melt: aramid leader or sleeve there (common practice).");
        ChargeNotes.OfStrength(draft);
        return draft.Done();
    }

    private static void Strength(Draft draft, Study study, HarnessJerk jerk, int n)
    {
        var w = draft.Working;
        var (name, inputs) = (jerk.Harness.Name, jerk.Firing.Fired.Inputs);
        (string, string)[] names = [("a", $"a_{n}"), ("b", $"b_{n}"), ("v", $"v_{n}"), ("S", $"S_{n}"), ("u", $"u_{n}"), ("T", $"T_{n}")];
        var a = w.Given($"a_{n}", inputs.ForwardMass, "kg", $"mass of {study.Vehicle.NameOf(jerk.Firing.Ahead)}", "question weight");
        var b = w.Given($"b_{n}", inputs.AftMass, "kg", $"mass of {study.Vehicle.NameOf(jerk.Firing.Behind)}", "question weight");
        var v = w.Simulated($"v_{n}", jerk.Firing.Fired.SeparationSpeed, "m/s", $"speed of the two from one another after {jerk.Firing.Charge.Name}", "question lets-go");
        var E = w.StepOf($"E_{n}", 0.5 * a * b / (a + b) * v * v, "J", $"energy {name} must take up", "definition", names);
        if (jerk.Snap is not { } snap || jerk.Harness.Strength is not { } strength)
        {
            draft.Miss($"{jerk.Harness.At}.{(jerk.Harness.Strength is null ? "strength" : "stretch")}: of {name}, by the certificate of its lot");
            draft.Find($"{name}: energy it must take up", E, Unit.Energy);
            return;
        }

        var T = HarnessWorking.Tension(w, snap.Cord, E, n);
        var rigged = study.Rocket.Rigging.Cords[jerk.Cord];
        var S = w.Given($"S_{n}", strength, "N", $"breaking load of {name}", rigged.Source);
        var u = w.Given($"u_{n}", rigged.EndShare, "", "share that its ends leave", rigged.EndSource);
        var r = S * u / T;
        if (!study.Limits["cords.strength"].IsMetBy(r))
        {
            // By the cord's mean stiffness: what softens at first is then on the safe side.
            var length = HarnessRules.LengthFor(v, a * b / (a + b), strength / jerk.Harness.Stretch!.Value, S * u / study.Limits["cords.strength"].Value);
            draft.Note($"{name}: of this cord {length:F0} m would hold the jerk to what its limit allows; a softer or stronger cord needs less.");
        }

        draft.Find($"{name}: strength with its ends over the jerk", w.StepOf($"r_{n}", S * u / T, "", "strength with its ends over the jerk", "definition", names), Unit.Ratio, "cords.strength");
        draft.Find($"{name}: peak tension of the jerk", T, Unit.Force);
        draft.Find($"{name}: energy it must take up", E, Unit.Energy);
        draft.Find($"{name}: stretch at the peak", snap.Cord.StretchAt(T), Unit.Length);
        Edge(draft, study, jerk, T, n);
    }

    private static void Length(Draft draft, Study study, HarnessJerk jerk, int n)
    {
        var w = draft.Working;
        var L = w.Given($"L_{n}", jerk.Harness.Length, "m", $"length of {jerk.Harness.Name}", "design");
        var B = w.Given($"B_{n}", study.Length, "m", "length of the rocket", "question stack");
        draft.Find($"{jerk.Harness.Name}: length over that of the rocket", w.StepOf($"l_{n}", L / B, "", "length over that of the rocket", "definition", [("L", $"L_{n}"), ("B", $"B_{n}")]), Unit.Ratio, "cords.length");
    }

    // Both pieces hang below the place where the canopy is tied: from how far down to how far down each reaches.
    private static void Hang(Draft draft, Study study, HarnessJerk jerk, int n)
    {
        if (study.Rocket.Rigging.Hangings.Where(h => h.Cord == jerk.Cord).ToArray() is not [var hanging, ..]) return;
        if (hanging.Along is not { } along)
        {
            draft.Miss($"stowed: {hanging.Canopy}: along, how far along {jerk.Harness.Name} it is tied");
            return;
        }

        var w = draft.Working;
        (string, string)[] names = [("x", $"x_{n}"), ("L", $"L_{n}"), ("f", $"f_{n}"), ("h", $"h_{n}")];
        var joint = jerk.Firing.Charge.Joint;
        var pieces = study.Vehicle.PiecesAfter(Resolving.RecoveryPlanner.Joints(study.Rocket));
        double Long(Piece p) => study.Vehicle.Parts[p.Last].Rear - study.Vehicle.Parts[p.First].Front;
        var x = w.Given($"x_{n}", along, "m", $"from the front tie to where {hanging.Canopy} is tied", "design");
        var L = jerk.Harness.Length;
        var f = w.Given($"f_{n}", Long(pieces.First(p => p.Has(joint))), "m", "length of the piece at the front tie", "design");
        var h = w.Given($"h_{n}", Long(pieces.First(p => p.Has(joint + 1))), "m", "length of the piece at the tie behind", "design");
        var gap = w.StepOf($"g_{n}", Max(L - x - (x + f), x - (L - x + h)), "m", "from the lower end of the one that hangs higher to the upper end of the other", "geometry of two plumb lines", names);
        draft.Find($"{jerk.Harness.Name}: gap between the pieces as they hang", gap, Unit.Length, "cords.hang");
    }

    private static void Edge(Draft draft, Study study, HarnessJerk jerk, double tension, int n)
    {
        foreach (var anchor in study.Rocket.Rigging.Anchors.Where(a => a.Cord == jerk.Cord))
        {
            if (TubeEdge.Of(study.Vehicle, jerk.Firing.Charge.Joint, anchor) is not { } tube) continue;
            if (study.Rocket.Rigging.Cords[jerk.Cord].Width is not { } width)
            {
                draft.Miss($"{jerk.Harness.At}.width: of {jerk.Harness.Name}, laid flat");
                return;
            }

            var w = draft.Working;
            (string, string)[] names = [("p", $"p_{n}"), ("s", $"s_{n}")];
            var share = new PathPulls(study, study.Flight, study.CanopyLoads, new Working()).AtEnd(jerk.Cord, anchor.Aft);
            var T = w.Simulated($"G_{n}", Max(tension, share?.Force ?? 0), "N", $"greatest pull at {anchor.Tie}, of the jerk and of openings", "question load-path");
            double W = w.Given($"w_{n}", width, "m", $"width of {jerk.Harness.Name}", "design, or the cord table"), t = w.Given($"t_{n}", tube.Wall, "m", $"wall of {tube.Name}", "design");
            var p = w.StepOf($"p_{n}", 2 * T * Sin(PI / 6) / (W * t), "Pa", $"pressure on the edge of {tube.Name}, the cord bent by 60°", "equilibrium of the cord at the edge", [("T", $"G_{n}"), ("W", $"w_{n}"), ("t", $"t_{n}")]);
            var s = w.Given($"s_{n}", tube.Strength, "Pa", "edgewise compressive strength of its wall", tube.Source);
            draft.Find($"{jerk.Harness.Name}: a quarter of the strength of {tube.Name}'s edge over the pressure on it", w.StepOf($"e_{n}", s / 4 / p, "", "a quarter of the strength over the pressure", "common practice", names), Unit.Ratio, "cords.edge");
            return;
        }
    }

    private static void Heat(Draft draft, Study study, HarnessJerk jerk)
    {
        var rigged = study.Rocket.Rigging.Cords[jerk.Cord];
        if (rigged.Nylon) draft.Find($"{jerk.Harness.Name}: bare nylon in a bay with a charge", rigged.Sleeved ? 0 : 1, Unit.Count, "cords.heat");
    }
}
