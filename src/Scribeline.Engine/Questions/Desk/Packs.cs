using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Does the recovery gear fit? What lies in each bay in the order it comes out, how long and how dense it is packed, and the room it leaves.</summary>
public sealed class Packs() : Question("packs", "Does the recovery gear fit?", Place.Desk)
{
    /// <summary>What a pack is to be thinner than the bore, m: common practice says 1 to 2 mm.</summary>
    private const double Clearance = 0.002;

    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        var n = 0;
        foreach (var bay in study.Bays)
        {
            var things = InOrder(study, bay);
            if (things.Length > 0) Bay(draft, study, bay, things, ++n);
        }

        if (n == 0) draft.Miss("stowed: canopies and cords, with what they weigh");
        draft.Note($"What has no packed length is taken to be packed by hand: {Packing.Canopy:F0} kg/m³ for canopies (Knacke 1991, chapter 6: {Packing.HandPackedLow:F0} to {Packing.HandPackedHigh:F0}, from memory), {Packing.Cord:F0} for cords and blankets and a tenth more for voids (common practice).");
        draft.Note("Nothing is taken off for eyes, U-bolts and charge holders that stand out into the bay: type them as stowed with their length. The pack must slide out when the tube is tilted; one that must be pushed in harder than its own weight defeats the charge.");
        return draft.Done();
    }

    // From the mouth of the tube inwards, which is how it comes out.
    private static Stowed[] InOrder(Study study, Bay bay)
    {
        var placed = study.Vehicle.Parts.SelectMany(p => p.Stowed.Select(s => (Thing: s, At: p.Front + s.Offset)))
            .Where(s => study.StowedIn(bay).Contains(s.Thing)).OrderBy(s => s.At).Select(s => s.Thing).ToArray();
        if (bay.Opens.Count > 0 && study.Vehicle.Joints[bay.Opens[0]] is { ShoulderAhead: false }) Array.Reverse(placed);
        return placed;
    }

    private static void Bay(Draft draft, Study study, Bay bay, Stowed[] things, int n)
    {
        var w = draft.Working;
        var d = w.Given($"d_{n}", Max(bay.Bore - Clearance, bay.Bore / 2), "m", $"{bay.Name}: bore, less 2 mm", "design; common practice");
        List<string> lengths = [], weighed = [];
        foreach (var thing in things)
        {
            var id = $"{n}_{lengths.Count + 1}";
            var m = w.Given($"m_{id}", thing.Mass, "kg", $"mass of {thing.Name}", "design");
            lengths.Add($"l_{id}");
            weighed.Add($"m_{id}");
            if (study.Rocket.Rigging.Links.Any(l => l.Name == thing.Name)) w.Given($"l_{id}", 0, "m", $"{thing.Name} lies among the folds", "common practice");
            else if (thing.PackedLength > 0) w.Given($"l_{id}", thing.PackedLength, "m", $"packed length of {thing.Name}", "design");
            else
            {
                var rho = w.Given($"rho_{id}", IsCanopy(study, thing) ? Packing.Canopy : Packing.Cord, "kg/m³", "density of a hand pack", "Knacke (1991) ch. 6, from memory; common practice for cords");
                w.StepOf($"l_{id}", 1.10 * (m / rho) / (PI / 4 * d * d), "m", $"packed length of {thing.Name}, a tenth more for voids", "volume over section", [("m", $"m_{id}"), ("rho", $"rho_{id}"), ("d", $"d_{n}")]);
            }
        }

        var reach = study.HasMotor && study.MotorFront > bay.Front ? Max(0, bay.Rear - study.MotorFront) : 0;
        var B = w.Given($"B_{n}", bay.Length - reach, "m", $"{bay.Name}: length between its closures, less the motor's reach into it", "design");
        var L = w.Sum($"L_{n}", lengths, "m", "packed one behind the other", "sum");
        var M = w.Sum($"M_{n}", weighed, "kg", "mass of all of it", "sum");
        (string, string)[] names = [("L", $"L_{n}"), ("B", $"B_{n}"), ("M", $"M_{n}"), ("d", $"d_{n}")];
        draft.Find($"{bay.Name}: packed length over the room there is", w.StepOf($"f_{n}", L / B, "", "packed length over room", "definition", names), Unit.Share, "packs.fill");
        if (M > 0) draft.Find($"{bay.Name}: density as packed", w.StepOf($"k_{n}", M / (L * PI / 4 * d * d), "kg/m³", "density as packed", "definition", names), Unit.Density, "packs.density");
        draft.Find($"{bay.Name}: length left for the charge and its gas", w.StepOf($"g_{n}", B - L, "m", "length left", "difference", names), Unit.Length);
        Protected(draft, study, bay, things);
        draft.List(() => Table(study, bay, things, lengths, weighed, w, d));
    }

    private static void Protected(Draft draft, Study study, Bay bay, Stowed[] things)
    {
        var charged = study.Rocket.Separation.Charges.Any(c => study.BayOf(c) == bay);
        var canopies = things.Where(t => IsCanopy(study, t)).ToArray();
        if (!charged || canopies.Length == 0) return;
        var blankets = study.Rocket.Rigging.Blankets.Count(b => things.Any(t => t.Name == b));
        draft.Find($"{bay.Name}: canopies without a blanket between them and the charge", blankets > 0 ? 0 : canopies.Length, Unit.Count, "packs.blanket");
    }

    private static AnswerTable Table(Study study, Bay bay, Stowed[] things, List<string> lengths, List<string> weighed, Working w, double d)
    {
        double Of(string symbol) => w.Steps.Last(s => s.Symbol == symbol).Value;
        return new(
            $"{bay.Name}: what comes out first to last",
            [new("order", Unit.Count), new("thing"), new("mass", Unit.Mass), new("length", Unit.Length), new("density", Unit.Density), new("length is")],
            things.Select((t, i) => TableRow.Of(
                null, (double)(i + 1), t.Name, t.Mass, Of(lengths[i]), Of(lengths[i]) <= 0 ? default(TableCell) : Of(weighed[i]) / (Of(lengths[i]) * PI / 4 * d * d), Length(t, Of(lengths[i])))).ToValueList());
    }

    private static string Length(Stowed thing, double length) => length <= 0 ? "among the folds" : thing.PackedLength > 0 ? "typed" : "estimated";

    private static bool IsCanopy(Study study, Stowed thing) => study.Rocket.Canopies.Any(c => c.Name == thing.Name);
}
