using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Will it hold until it should let go? What pulls on each separable joint against what holds it.</summary>
public sealed class StaysTogether() : Question("stays-together", "Will it hold until it should let go?", Place.Desk)
{
    private const string Newton = "Newton's law for what is ahead of the joint; what pushes it apart from inside added";

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(Basis.Estimated);
        foreach (var history in study.JointHistories.Where(h => h.Moments.Count > 0)) Joint(draft, study, history);
        if (study.JointHistories.Count == 0) draft.Miss("joints: one that is pinned or sliding");
        draft.Note("Judged by the weakest pins; friction counts only where it was measured. Where a coupler slides in, its ends carry the bending. The rebound as thrust ends is within the factor of 2; jerks of cords are another question.");
        return draft.Done();
    }

    private static void Joint(Draft draft, Study study, JointHistory history)
    {
        var (joint, w) = (history.Joint, draft.Working);
        var (n, name) = ($"_{joint.Forward + 1}", NameOf(study, joint));
        var names = Locals.Numbered(n, "m", "a", "D", "P", "d", "S", "m_h", "g", "H", "F", "R", "B", "L");
        var S = Flown(draft, study, history, n, name, names);
        var m_h = w.Given("m_h" + n, study.Masses.Of(new Piece(0, joint.Forward)).Mass, "kg", "mass ahead of the joint", "question weight");
        var g = w.Given("g" + n, study.Gravity, "m/s²", "gravity at the site", "WGS 84 (NIMA TR8350.2)");
        var H = w.StepOf("H" + n, m_h * g, "N", "weight of what is ahead, as it hangs when turned over", "definition", names);
        var F = w.StepOf("F" + n, Max(S, H), "N", "greater of the two", "definition", names);
        if (study.WeakestRetention(joint.Forward) is { } weakest)
        {
            var R = w.Given("R" + n, weakest, "N", "what holds it, with the weakest pins", "design, or the table of pin materials");
            draft.Find($"{name}: what holds it over what pulls", w.StepOf("r" + n, R / F, "", "what holds it over what pulls", "definition", names), Unit.Ratio, "stays-together.ratio");
            draft.Find($"{name}: what holds it over three times the weight ahead", w.StepOf("k" + n, R / (3 * H), "", "what holds it as it is lifted and shaken on the pad", "assumption: three times the weight", names), Unit.Ratio, "stays-together.handling");
            draft.Draw(() => Plotted(study, history, name, weakest));
        }
        else
        {
            draft.Miss($"joints: pins or friction between {name}");
        }

        draft.Find($"{name}: greatest pull in flight", S, Unit.Force);
        var bending = history.Moments.Max(m => m.Force.Bending);
        var B = w.Simulated("B" + n, bending, "N·m", "greatest bending moment in flight", Newton);
        if (study.Rocket.Separation.Of(joint.Forward)?.Pins is { Count: >= 3 } pins)
        {
            var N = w.Given("N" + n, pins.Count, "", "pins", "design");
            var d = joint.BoreDiameter;
            var Y = w.StepOf("Y" + n, (Max(S, 0) / N) + (4 * B / (N * d)), "N", "most loaded pin, if the pins and not the coupler carried the bending", "evenly spaced pins, moment in proportion to distance", [.. names, ("N", "N" + n)]);
            draft.Find($"{name}: most loaded pin if the pins carried the bending too", Y, Unit.Force);
        }

        if (joint.Engagement > 0)
        {
            var L = w.Given("L" + n, joint.Engagement, "m", "engagement", "design");
            draft.Find($"{name}: force of the coupler's ends on the tube", w.StepOf("X" + n, 1.5 * B / L, "N", "force at each end of the coupler", "linear contact pressure", names), Unit.Force);
        }
    }

    /// <summary>The pull at its greatest, recomputed in the open.</summary>
    private static double Flown(Draft draft, Study study, JointHistory history, string n, string name, (string, string)[] names)
    {
        var (w, worst, joint) = (draft.Working, history.Worst, history.Joint);
        double m = 0, a = 0, D = 0;
        if (worst.Time <= study.Flight.Bodies[0].End)
        {
            var balance = study.JointLoads.BalanceAt(joint.Forward, study.MomentAt(worst.Time));
            m = w.Simulated("m" + n, balance.Mass, "kg", $"mass ahead of the joint of {name}, {worst.Time:F2} s after ignition, when the pull is greatest", "question weight");
            a = w.Simulated("a" + n, balance.Felt, "m/s²", "acceleration it feels along the axis, forwards", "flown");
            D = w.Simulated("D" + n, balance.Air, "N", "drag of what is ahead", "aerodynamic build-up, shared by component");
        }
        else
        {
            m = w.Given("m" + n, 0, "kg", $"mass that counts, {worst.Time:F2} s after ignition, when the pull of {name} is greatest: it hangs from a cord", "definition");
            a = w.Given("a" + n, 0, "m/s²", "acceleration that counts", "definition");
            D = w.Given("D" + n, 0, "N", "drag that counts", "definition");
        }

        var P = w.Simulated("P" + n, worst.Excess, "Pa", "pressure in its bay over the outside", "question bays-vent");
        var d = w.Given("d" + n, joint.BoreDiameter, "m", "bore", "design");
        return w.StepOf("S" + n, (P * PI / 4 * d * d) - (m * a) - D, "N", "greatest pull in flight", Newton, names);
    }

    private static Plot Plotted(Study study, JointHistory history, string name, double weakest)
    {
        double first = history.Moments[0].Time, last = Min(history.Moments[^1].Time, (study.Flight.Apogee?.Time ?? study.Flight.End) + 5);
        var shown = history.Moments.Where(m => m.Time <= last).ToArray();
        return new(
            $"{name}: pull and what holds it",
            new Axis("time", Unit.Time),
            new Axis("force", Unit.Force),
            [new Series("pull", shown.Select(m => m.Time).ToValueList(), shown.Select(m => m.Pull).ToValueList()), new Series("weakest pins", [first, last], [weakest, weakest])],
            FlightPlots.Marks(study));
    }

    internal static string NameOf(Study study, Joint joint) => $"{study.Vehicle.Parts[joint.Forward].Name} to {study.Vehicle.Parts[joint.Aft].Name}";
}
