using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tables;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Do the other bays let go of their air? Pressure in each bay that opens, its push on the joint, and the least hole that keeps it small.</summary>
public sealed class BaysVent() : Question("bays-vent", "Do the other bays let go of their air?", Place.Desk)
{
    private const string Flow = "isothermal bay, sharp holes, compressible flow (Shapiro ch. 4, from memory)";

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        var opening = study.BayHistories.Where(b => b.Bay.Opens.Count > 0 && !study.HoldsAltimeters(b.Bay)).ToArray();
        foreach (var (history, i) in opening.Select((b, i) => (b, i + 1))) Bay(draft, study, history, $"_{i}");
        if (opening.Length == 0) draft.Miss("joints: one that lets go and closes a bay");
        draft.Note("A bay without vents is taken as tight, and packed cloth as air. Add the vents to what bleeds the charge.");
        draft.Draw(() => new Plot(
            "Pressure in the bays over the outside",
            new Axis("time", Unit.Time),
            new Axis("pressure", Unit.Pressure),
            [.. opening.Select(b => Line(study, b))],
            FlightPlots.Marks(study)));
        return draft.Done();
    }

    private static void Bay(Draft draft, Study study, BayHistory history, string n)
    {
        var (w, bay) = (draft.Working, history.Bay);
        var opens = bay.Opens.MinBy(study.ReleaseOf);
        var joint = study.Vehicle.Joints[opens];
        var release = study.ReleaseOf(opens);
        var worst = history.Worst(release);
        if (worst < 0) return;
        var names = Locals.Numbered(n, "V", "A", "P", "d", "F", "R");
        var V = w.Given("V" + n, history.Air.Volume, "m³", $"air in the bay of {bay.Name}", "design");
        var A = w.Given("A" + n, history.Air.Area, "m²", "area of its holes", "design");
        if (A > 0) draft.Find($"{bay.Name}: air over area of its holes", w.StepOf("X" + n, V / A, "m", "air over area of its holes", "definition", names), Unit.Height);
        var P = w.Simulated("P" + n, history.Excess(worst), "Pa", $"greatest pressure over the outside, {history.Samples[worst].Time:F1} s after ignition", Flow);
        var d = w.Given("d" + n, joint.BoreDiameter, "m", "bore of the joint it pushes on", "design");
        var F = w.StepOf("F" + n, P * PI / 4 * d * d, "N", "push on the joint", "definition", names);
        draft.Find($"{bay.Name}: greatest pressure over the outside", P, Unit.Pressure);
        draft.Find($"{bay.Name}: push on the joint", F, Unit.Force);
        if (study.WeakestRetention(opens) is not { } weakest)
        {
            draft.Miss($"joints: pins or friction between {StaysTogether.NameOf(study, joint)}");
            return;
        }

        var R = w.Given("R" + n, weakest, "N", "what holds the joint, with the weakest pins", "design, or the table of pin materials");
        draft.Find($"{bay.Name}: push over what holds the joint", w.StepOf("s" + n, F / R, "", "push over what holds the joint", "definition", names), Unit.Share, "bays-vent.push");

        // The search runs the whole flight many times over; a spread of it would tell nobody anything.
        if (!study.IsSample) Least(draft, study, history, joint.BoreDiameter, weakest, release, n);
    }

    private static void Least(Draft draft, Study study, BayHistory history, double bore, double weakest, double release, string n)
    {
        var w = draft.Working;
        var pressure = study.Limits["bays-vent.push"].Value * weakest / (PI / 4 * bore * bore);
        var Q = w.Simulated("Q" + n, study.LeastVent(history, pressure, release), "m²", "least area that keeps the push within its limit", Flow);
        var q = w.StepOf("q" + n, Sqrt(4 * Q / PI), "m", "the same as one hole", "definition", [("Q", "Q" + n)]);
        draft.Find($"{history.Bay.Name}: least single hole", q, Unit.Length);
        if (q > 0 && Drill.NotBelow(q, study.Rocket.Inch) is { } drill)
            draft.Note($"{history.Bay.Name}: one hole drilled {drill.Name} or wider keeps the push within its limit.");
    }

    private static Series Line(Study study, BayHistory history)
    {
        var release = history.Bay.Opens.Min(study.ReleaseOf);
        var shown = Enumerable.Range(0, history.Samples.Count).Where(i => history.Samples[i].Time <= release).ToArray();
        return new(history.Bay.Name, shown.Select(i => history.Samples[i].Time).ToValueList(), shown.Select(history.Excess).ToValueList());
    }
}
