using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>What if something fails? Every failure flown in full: what reaches the ground, when, where, how fast, and which limits it breaks.</summary>
public sealed class IfItFails() : Question("if-it-fails", "What if something fails?", Place.Desk)
{
    private const string Flown = "flown with the failure, see method failures";

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(Basis.Estimated);
        foreach (var missing in study.Rocket.RecoveryMissing) draft.Miss(missing);
        if (study.Rocket.RecoveryMissing.Count == 0 && study.Rocket.Firings.Count == 0) draft.Miss("firing: an altimeter with the charges it fires");
        if (study.Rocket.RecoveryMissing.Count > 0 || study.Rocket.Firings.Count == 0) return draft.Done();
        ChargeNotes.Missing(draft, study);
        var outcomes = study.FailureOutcomes;
        if (!outcomes[0].Computed)
        {
            draft.Find("single failures that end within limits", double.NaN, Unit.Count);
            draft.Note("As planned it does not fly to the ground, so nothing can be told of failures: see question rail-exit.");
            return draft.Done();
        }

        foreach (var missing in outcomes.SelectMany(o => o.Missing).Distinct()) draft.Miss(missing);
        for (var i = 0; i < outcomes.Count; i++) Row(draft.Working, outcomes[i], i);

        Counts(draft, outcomes);
        Worst(draft, outcomes);
        draft.List(() => FailureTables.Endings(outcomes));
        draft.List(() => FailureTables.Causes(outcomes));
        draft.List(() => FailureTables.Landings(outcomes));
        draft.List(() => FailureTables.OnTheWay(outcomes));
        Remarks(draft, study, outcomes);
        return draft.Done();
    }

    private static void Counts(Draft draft, ValueList<FailureOutcome> outcomes)
    {
        var w = draft.Working;
        var planned = outcomes[0];
        var singles = outcomes.Select((o, i) => (Outcome: o, Index: i)).Skip(1).Where(f => f.Outcome.Failure.Things == 1).ToArray();
        if (singles.Length > 0)
        {
            var within = w.Sum("n_1", [.. singles.Select(f => $"s_{f.Index}")], "", "failures of one thing that end within limits", "definition");
            draft.Find($"single failures that end within limits, of {singles.Length}", within, Unit.Count);
        }

        draft.Find("limits broken as planned, without any failure", planned.Broken.Count(), Unit.Count, "if-it-fails.planned");
        Worse("altimeters whose death alone breaks a limit kept as planned", "n_a", "if-it-fails.altimeter", f => f.Dead.Count == 1);
        Worse("hot or cold motor, weak powder with strong pins: how many break one", "n_v", "if-it-fails.variation", f => f.ChangesMotor || f.StrongestPins || f.Powder != 1);

        void Worse(string name, string symbol, string limit, Func<Failure, bool> which)
        {
            List<string> terms = [];
            foreach (var (outcome, index) in singles.Where(f => which(f.Outcome.Failure)))
            {
                w.Simulated($"k_{index}", outcome.IsWorseThan(planned) ? 1 : 0, "", $"{outcome.Failure.Name}: 1 where it breaks a limit kept as planned, or one worse, else 0", Flown);
                terms.Add($"k_{index}");
            }

            if (terms.Count > 0) draft.Find(name, w.Sum(symbol, terms, "", name, "definition"), Unit.Count, limit);
        }
    }

    private static void Worst(Draft draft, ValueList<FailureOutcome> outcomes)
    {
        var singles = outcomes.Where(o => o.Failure.Things == 1 && o.Hardest is not null).ToArray();
        if (singles.Length == 0) return;
        var hardest = singles.MaxBy(o => o.Hardest!.Energy)!;
        draft.Find($"hardest landing after one failure: {hardest.Hardest!.Name}, {Lower(hardest)}", hardest.Hardest.Energy, Unit.Energy);
        var fastest = singles.MaxBy(o => o.Pieces.Max(p => p.Landing.DescentRate))!;
        draft.Find($"fastest landing after one failure: {Lower(fastest)}", fastest.Pieces.Max(p => p.Landing.DescentRate), Unit.Speed);
        var farthest = singles.MaxBy(o => o.Pieces.Max(p => p.Away))!;
        draft.Find($"farthest landing after one failure: {Lower(farthest)}", farthest.Pieces.Max(p => p.Away), Unit.Height);
    }

    /// <summary>The piece that comes down hardest, by hand.</summary>
    private static void Row(Working w, FailureOutcome outcome, int i)
    {
        var name = outcome.Failure.Name;
        w.Simulated($"s_{i}", outcome.WithinLimits ? 1 : 0, "", $"{name}: 1 where every limit is met, 0 where one is not", $"{Flown}; {outcome.Failure.Source}");
        if (outcome.Hardest is not { } piece) return;
        (string, string)[] names = [("m", $"m_{i}"), ("v", $"v_{i}"), ("e", $"e_{i}"), ("n", $"n_{i}"), ("g", $"g_{i}"), ("rho", $"rho_{i}"), ("CdS", $"CdS_{i}"), ("M", $"M_{i}")];
        var m = w.Given($"m_{i}", piece.Mass, "kg", $"{name}: mass of {piece.Name}, which lands hardest", "question weight");
        var v = w.Simulated($"v_{i}", piece.Landing.DescentRate, "m/s", "its descent rate at the ground", Flown);
        w.StepOf($"E_{i}", 0.5 * m * v * v, "J", "its energy at that rate", "definition", names);
        var e = w.Simulated($"e_{i}", piece.Landing.East, "m", "east of the rail", Flown);
        var n = w.Simulated($"n_{i}", piece.Landing.North, "m", "north of the rail", Flown);
        w.StepOf($"r_{i}", Sqrt((e * e) + (n * n)), "m", "away from the rail", "definition", names);
    }

    private static void Remarks(Draft draft, Study study, ValueList<FailureOutcome> outcomes)
    {
        if (outcomes[0].Broken.Any()) draft.Note($"As planned, without any failure, it breaks: {FailureTables.Breaks(outcomes[0])}.");
        var several = outcomes.Where(o => o.Failure.Things > 1).Select(o => Lower(o)).ToArray();
        if (several.Length > 0) draft.Note($"More than one thing must fail at once for: {string.Join("; ", several)}. One cause may do it: a battery, switch, vent or mistake that both share.");
        draft.Note("Each failure is flown to the ground with what follows from it: a charge that does not part its joint leaves it shut; a cord that a jerk or a canopy breaks is broken; a joint that is jerked open is open. A canopy that does not open has no drag.");
        draft.Note("One fin lost is out of scope: such a rocket tumbles where no method here can follow it. Nobody may stand where it could come down.");
        if (outcomes.Any(o => o.Unburnt.Count > 0)) draft.Note("A charge left unburnt lies on the ground live. Treat every landed rocket as armed until its power is off and its charges are shown safe.");
        draft.Note("Weather, motor lot and assembly differ from the model. A recovery failure lands elsewhere and faster than planned; where no canopy is open, the speed of a tumbling piece may be half as much again.");
        draft.Note("The energy limit is a programme limit for hardware, not a level that is harmless to people.");
        draft.Note(study.Day.Field is not null ? "Every landing is held against the outline of the site; how far it may scatter is question lands-inside."
            : study.Day.ShortestSide is null ? "The site states neither outline nor shortest side, so no landing is held against the field. Write one in the site file."
            : "The site states no outline: the field is taken as far as half its shortest side from the rail, to every side.");
        if (!study.WindIsKnown) draft.Note("No wind is typed: every landing point is that of a calm day.");
    }

    private static string Lower(FailureOutcome outcome) => outcome.Failure.Name.Length < 2 || char.IsUpper(outcome.Failure.Name[1]) || outcome.Failure.Dead.Count == 1
        ? outcome.Failure.Name
        : char.ToLowerInvariant(outcome.Failure.Name[0]) + outcome.Failure.Name[1..];
}
