using System.Globalization;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Questions.Field;

/// <summary>Do the rules allow this flight? Every condition of the rules the site names: met, not met, or for a person to confirm.</summary>
public sealed class Allowed() : Question("allowed", "Do the rules allow this flight?", Place.Field)
{
    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(study.Motor.Basis);
        var sets = study.RuleSets.ToArray();
        if (sets.All(s => s.Kind != RuleKind.SafetyCode)) draft.Miss($"site: rules: the safety code in force, one of {Names(RuleKind.SafetyCode)}");
        if (sets.All(s => s.Kind != RuleKind.Regulation)) draft.Miss($"site: rules: the regulation in force, one of {Names(RuleKind.Regulation)}; of another country under own conditions");
        var checks = study.RuleChecks;
        if (checks.Count == 0) return draft.Done();

        var open = checks.Where(c => c.State == RuleState.ToConfirm).ToArray();
        draft.Judged("conditions for a person to confirm", open.Length, Unit.Count, open.Length > 0 ? Verdict.Open : Verdict.Clear);
        draft.Find("conditions confirmed by a person", checks.Count(c => c.State == RuleState.Confirmed), Unit.Count);
        draft.Find("conditions compared", checks.Count(c => c.Finding is not null), Unit.Count);
        foreach (var check in checks.Where(c => c.Finding is not null)) Compared(draft, check);
        foreach (var missing in checks.Where(c => c.State == RuleState.Missing).GroupBy(c => c.Missing)) draft.Miss($"{missing.Key} (for {string.Join(", ", missing.Select(m => m.Id))})");
        if (open.Length > 0) draft.Miss($"a person's word on {Some(open)}: on screen or with scribeline field, on the day, for this design and motor");
        foreach (var set in checks.GroupBy(c => c.Set))
        {
            draft.List(() => new(
                set.Key,
                [new("id"), new("condition"), new("compared, or what helps to judge"), new("stands")],
                set.Select(c => TableRow.Of(c.Verdict, c.Id, $"{c.Text} [{c.Number}]", c.Compared, c.At is { } at ? $"{c.Word} {at.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)} UTC" : c.Word)).ToValueList()));
        }

        foreach (var set in sets) draft.Note($"{set.Name}, {set.Where}: {set.Source}{(set.Note.Length > 0 ? $"; {set.Note}" : "")}.");
        draft.Note("No numeric conflict with the rules listed is the most that can be said here. Conditions that need a person to judge are never passed by this program.");
        draft.Note(Cautions.Everything);
        return draft.Done();
    }

    // All of them stand in the tables.
    private static string Some(RuleCheck[] checks)
    {
        const int Most = 6;
        var first = string.Join(", ", checks.Take(Most).Select(c => c.Id));
        return checks.Length > Most ? string.Create(CultureInfo.InvariantCulture, $"{first} and {checks.Length - Most} more conditions") : first;
    }

    private static string Names(RuleKind kind) => string.Join(", ", RuleSet.All.Where(s => s.Kind == kind).Select(s => s.Name));

    private static void Compared(Draft draft, RuleCheck check)
    {
        var w = draft.Working;
        var limit = check.Finding!.Limit!;
        var si = SiOf(check.Finding.Unit);
        var x = w.Simulated($"x_{check.Id}", check.Finding.Value, si, check.Finding.Name, "design, site, weather or the flight as planned");
        var b = w.Simulated($"b_{check.Id}", limit.Value, si, $"{(limit.Sense == Sense.AtLeast ? "at least" : "at most")}: {check.Text}", check.Source);
        w.StepOf($"d_{check.Id}", x - b, si, limit.Sense == Sense.AtLeast ? "more than needed" : "above what is allowed where more than 0", "difference", [("x", $"x_{check.Id}"), ("b", $"b_{check.Id}")]);
        draft.Find(check.Finding.Name, check.Finding.Value, check.Finding.Unit, limit);
    }

    private static string SiOf(Unit unit) => unit switch
    {
        Unit.Height => "m",
        Unit.Impulse => "N·s",
        Unit.Speed => "m/s",
        Unit.Angle => "rad",
        Unit.Energy => "J",
        Unit.Time => "s",
        Unit.Calibre => "cal",
        _ => "",
    };
}
