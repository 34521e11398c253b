using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>What happens when? Every charge of the flight as planned, and what is left when an altimeter does nothing.</summary>
public sealed class Sequence() : Question("sequence", "What happens when?", Place.Desk)
{
    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(Basis.Estimated);
        foreach (var missing in study.Rocket.RecoveryMissing) draft.Miss(missing);
        var firings = study.Rocket.Firings;
        if (study.Rocket.RecoveryMissing.Count > 0 || firings.Count == 0) return draft.Done();

        var fired = Fired(study.Rocket, study.Flight.Events);
        if (fired.Count > 0) Order(draft, study, fired);
        draft.Find("charges that never fire", firings.Count - fired.Count, Unit.Count, "sequence.unfired");
        Lockout(draft, study);
        foreach (var (firing, at) in fired)
        {
            draft.Find($"{firing.Name}: time after ignition", at.Time, Unit.Time);
            draft.Find($"{firing.Name}: airspeed", at.Airspeed, Unit.Speed);
        }

        // Whole flights; nobody looks at their spread.
        if (!study.IsSample) Failures(draft, study);
        draft.Draw(() => FlightPlots.Heights(study));
        return draft.Done();
    }

    private static void Order(Draft draft, Study study, List<(Firing Firing, FlightSample At)> fired)
    {
        var w = draft.Working;
        const string Flown = "flown as planned";
        var first = fired.MinBy(f => f.At.Time);
        var t_1 = w.Simulated("t_1", first.At.Time, "s", $"first charge, {first.Firing.Name}", Flown);
        if (study.Flight.Burnout is { } burnout)
        {
            var t_b = w.Simulated("t_b", burnout.Time, "s", "burnout", Flown);
            draft.Find("first charge after burnout", w.Step("c_b", t_1 - t_b, "s", "first charge after burnout", "definition"), Unit.Time, "sequence.after-burnout");
        }

        // The joint that opens first is the drogue's; whatever opens another is the main.
        var mains = fired.Where(f => f.Firing.Joint != first.Firing.Joint).ToArray();
        if (mains.Length > 0)
        {
            var main = mains.MinBy(f => f.At.Time);
            var t_m = w.Simulated("t_m", main.At.Time, "s", $"first charge of another joint, {main.Firing.Name}", Flown);
            draft.Find("main after drogue", w.Step("m_d", t_m - t_1, "s", "main after drogue", "definition"), Unit.Time, "sequence.main-after-drogue");
        }

        draft.Find("heights set above apogee", study.Rocket.Firings.Count(f => f.Trigger is DescendingThrough d && d.Height >= study.Flight.Apogee?.AltimeterHeight), Unit.Count, "sequence.main-height");
        double gap = double.PositiveInfinity;
        foreach (var joint in fired.GroupBy(f => f.Firing.Joint))
        {
            var times = joint.Select(f => f.At.Time).Order().ToArray();
            for (var i = 1; i < times.Length; i++) gap = Math.Min(gap, times[i] - times[i - 1]);
        }

        if (double.IsFinite(gap)) draft.Find("backup after primary, least", w.Simulated("g_b", gap, "s", "least time between two charges for one joint", Flown), Unit.Time, "sequence.backup-gap");
        else draft.Note("No joint has a second charge.");
    }

    /// <summary>Past Mach 0.8 a barometric altimeter must not listen, so its lockout must be known and low enough.</summary>
    private static void Lockout(Draft draft, Study study)
    {
        if (study.Flight.Maxima.Mach.Value <= StaticPressure.GoodToMach) return;
        var sound = study.Flight.At(study.Flight.Maxima.Mach.Time) is var s && s.Mach > 0 ? s.Airspeed / s.Mach : double.NaN;
        var a = draft.Working.Simulated("a", sound, "m/s", "speed of sound where it is fastest", "air of the day");
        foreach (var (name, i) in study.Rocket.Firings.Where(f => f.Altimeter is not null && f.Trigger is AtApogee or DescendingThrough).Select(f => f.Altimeter!).Distinct().Select((f, i) => (f, i + 1)))
        {
            if (study.Rocket.Firings.First(f => f.Altimeter == name).MachLockout is not { } speed)
            {
                draft.Miss($"firing, {name}: mach lockout, for the flight passes Mach {StaticPressure.GoodToMach:F1}");
                continue;
            }

            var v = draft.Working.Given($"v_{i}", speed, "m/s", $"speed above which {name} ignores its pressure sensor", "design");
            var M = draft.Working.StepOf($"M_{i}", v / a, "", "the same as a Mach number", "definition", [("v", $"v_{i}")]);
            draft.Find($"{name}: Mach number up to which it listens", M, Unit.Mach, "sequence.lockout");
        }
    }

    /// <summary>An altimeter that does nothing: the flight of question if-it-fails, with what follows, flown once for both.</summary>
    private static void Failures(Draft draft, Study study)
    {
        var joints = study.Rocket.Firings.Select(f => f.Joint).Distinct().Count();
        foreach (var (name, i) in study.Rocket.Firings.Select(f => f.Altimeter).OfType<string>().Distinct().Select((f, i) => (f, i + 1)))
        {
            var outcome = study.Fail(study.Dead(name));
            var flown = $"flown in question if-it-fails as {outcome.Failure.Name}{(outcome.NoseFirst ? ", nose first from apogee: it may fall flat instead, which is slower and cannot be relied on" : "")}";
            var fired = Fired(outcome.Rocket, outcome.Flown);
            draft.Find($"{name} dead: joints that stay shut", joints - fired.Select(f => f.Firing.Joint).Distinct().Count(), Unit.Count, "sequence.left-shut");
            var charges = fired.Where(f => f.Firing.Altimeter is not null).ToArray();
            if (charges.Length > 0)
            {
                var first = charges.MinBy(f => f.At.Time);
                var v = draft.Working.Simulated($"u_{i}", first.At.Airspeed, "m/s", $"{name} dead: airspeed at the first charge, {first.Firing.Name}", flown);
                draft.Find($"{name} dead: airspeed at the first charge, {first.Firing.Name}", v, Unit.Speed);
            }

            if (outcome.Pieces.Count == 0) continue;
            var down = draft.Working.Simulated($"w_{i}", outcome.Pieces.Max(p => p.Landing.DescentRate), "m/s", $"{name} dead: descent rate at the ground, greatest", flown);
            draft.Find($"{name} dead: descent rate at the ground, greatest", down, Unit.Speed);
        }
    }

    private static List<(Firing Firing, FlightSample At)> Fired(Rocket rocket, IEnumerable<FlightEvent> events) => [.. events
        .Where(e => e.Kind == FlightEventKind.Charge)
        .Select(e => (Firing: rocket.Firings.FirstOrDefault(f => f.Name == e.Name), e.At))
        .Where(f => f.Firing is not null).Select(f => (f.Firing!, f.At)).DistinctBy(f => f.Item1.Name)];
}
