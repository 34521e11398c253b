using System.Globalization;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using static System.Math;

namespace Scribeline.Engine.Questions.Bench;

/// <content>Whether a joint closes one way only, and the least offset that makes it so.</content>
public sealed partial class HolesClear
{
    // Offsets are marked with a rule: half millimetres, or 32nds of an inch.
    private const double Millimetre = 0.5e-3, Inch = 0.0254 / 32;

    private static void Key(Draft draft, Study study, HoleSchedule schedule, Joint joint)
    {
        if (joint.Kind == JointKind.Bonded) return;
        var label = $"{study.Vehicle.Parts[joint.Forward].Name} and {study.Vehicle.Parts[joint.Aft].Name}";
        var key = study.Rocket.Shop.Keys.FirstOrDefault(k => k.Joint == joint.Forward);
        if (key is { Keyed: true } or { Unkeyed: true })
        {
            draft.Note(key.Keyed ? $"{label}: something else than the holes makes it close one way only, says the design." : $"{label}: closes more than one way, as the design says; make witness marks.");
            return;
        }

        Hole[] holes = [.. schedule.Holes.Where(h => h.Joint == joint.Forward && double.IsFinite(h.Clock) && double.IsFinite(h.Diameter))];
        var n = $"_{joint.Forward + 1}";
        if (holes.Length == 1)
        {
            draft.Note($"{label}: a single fastener closes one way only.");
            return;
        }

        var least = holes.Length == 0 ? 0 : Need(draft, label, holes[0], n);
        var radius = joint.ShoulderDiameter / 2;
        (double Clock, double Along)[] pattern = [.. holes.Select(h => (h.Clock, Abs(h.Station - joint.Break)))];
        var fit = pattern.Length == 0 ? 0 : Keying.BestWrongFit(pattern, radius);
        var names = Locals.Numbered(n, "M", "a");
        var M = draft.Working.Simulated("M" + n, fit, "m", $"{label}: mismatch of the best wrong way to close it", "every turn that carries hole to hole");
        var a = draft.Working.Given("a" + n, least, "m", $"{label}: what surely blocks it", "above");
        draft.Find($"{label}: key beyond what blocks a wrong fit", draft.Working.StepOf("k" + n, M - a, "m", "key beyond what blocks a wrong fit", "definition", names), Unit.Length, "holes-clear.key");
        if (fit < least) Propose(draft, study, joint, label, holes, pattern, least);
        Reversed(draft, study, schedule, joint, least);
    }

    private static double Need(Draft draft, string label, Hole hole, string n)
    {
        var w = draft.Working;
        var names = Locals.Numbered(n, "H_1", "F", "s", "u");
        var held = hole.Cuts.Count > 1 && hole.Cuts[1] is { Tap: null, Remark.Length: 0 };
        var F = w.Given("F" + n, hole.Fastener, "m", $"{label}: fastener", "ASME B1.1, or ISO 261");
        var H_1 = w.Given("H_1" + n, hole.Diameter, "m", $"{label}: hole in the outer wall", "drill table");
        var s = held
            ? w.StepOf("s" + n, Max(H_1 - F, 0), "m", "slack of two clearance holes", "ASME Y14.5, floating fastener", names)
            : w.StepOf("s" + n, Max((H_1 - F) / 2, 0), "m", "slack of a clearance hole over a thread", "ASME Y14.5, fixed fastener", names);
        var u = w.Given("u" + n, Keying.Placing, "m", "standard uncertainty of a marked and drilled hole", "scale, pencil, seam, tile, punch and drill, root sum of squares: common practice");
        return w.StepOf("b" + n, s + (3 * Sqrt(2) * u), "m", "offset that surely blocks a wrong fit: two patterns, three standard uncertainties", "definition", names);
    }

    private static void Propose(Draft draft, Study study, Joint joint, string label, Hole[] holes, (double Clock, double Along)[] pattern, double least)
    {
        if (holes.Length == 0)
        {
            draft.Note($"{label}: nothing keys it; make witness marks across it and type unkeyed: yes, or give it a key.");
            return;
        }

        var step = study.Rocket.Inch ? Inch : Millimetre;
        var offset = Ceiling(Max(least, holes.Max(h => h.Diameter)) / step) * step;
        var room = joint.Engagement - pattern[0].Along - (2 * holes[0].Cuts[^1].Diameter);
        (double, double)[] moved = [.. pattern];
        var along = offset <= room;
        moved[0] = along ? (pattern[0].Clock, pattern[0].Along + offset) : (pattern[0].Clock + (offset / (joint.ShoulderDiameter / 2)), pattern[0].Along);
        var proved = Keying.BestWrongFit(moved, joint.ShoulderDiameter / 2);
        var (hole, text) = (holes[0], study.Rocket.Inch ? $"{Inches.Nearest(offset).Text} in" : Shown.Text(offset, Unit.Length, inch: false));
        draft.Note(along
            ? $"{label}: unkeyed. Move {hole.Mark} {text} farther from the {hole.Edge.Name}: the best wrong fit is then off by {Shown.Text(proved, Unit.Length, study.Rocket.Inch)}."
            : string.Create(CultureInfo.InvariantCulture, $"{label}: unkeyed. Turn {hole.Mark} on by {text} of arc, to {(hole.Clock + (offset / (joint.ShoulderDiameter / 2))) * 180 / PI:F1}°: the best wrong fit is then off by {Shown.Text(proved, Unit.Length, study.Rocket.Inch)}."));
    }

    // A coupler that could go in end for end: its aft end where its forward end belongs.
    private static void Reversed(Draft draft, Study study, HoleSchedule schedule, Joint joint, double least)
    {
        if (study.Vehicle.Parts[joint.Aft] is not Coupler coupler || joint.Aft >= study.Vehicle.Joints.Count) return;
        var next = study.Vehicle.Joints[joint.Aft];
        (double, double)[] Pattern(Joint j) => [.. schedule.Holes.Where(h => h.Joint == j.Forward && double.IsFinite(h.Clock)).Select(h => (h.Clock, Abs(h.Station - j.Break)))];
        var fit = Keying.BestReversedFit(Pattern(joint), Pattern(next), joint.ShoulderDiameter / 2);
        if (fit < least) draft.Note($"{coupler.Name} could go in end for end: mark its forward end.");
    }
}
