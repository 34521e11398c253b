using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>What is the weakest link? Every element from canopy to airframe, its load, its capacity and the factor between them.</summary>
public sealed class LoadPath() : Question("load-path", "What is the weakest link?", Place.Desk)
{
    private const string Bound = "load-path.factor";

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        foreach (var missing in study.Rocket.RecoveryMissing) draft.Miss(missing);
        if (study.Rocket.RecoveryMissing.Count > 0) return draft.Done();
        ChargeNotes.Missing(draft, study);
        var elements = new LoadPathSurvey(study, study.Flight, study.CanopyLoads, draft.Working).Walk();
        foreach (var missing in elements.Select(e => e.Missing).Where(m => m.Length > 0).Distinct()) draft.Miss(missing);
        var known = elements.Where(e => e.Factor is not null).ToArray();
        if (known.Length == 0)
        {
            if (elements.Count == 0) draft.Miss("stowed: a canopy and the cord it hangs on");
            return draft.Done();
        }

        var weakest = known.MinBy(e => e.Factor)!;
        draft.Find("least capacity over load", weakest.Factor!.Value, Unit.Ratio, Bound);
        foreach (var path in known.GroupBy(e => e.Path)) draft.Find($"{path.Key}: least capacity over load", path.Min(e => e.Factor)!.Value, Unit.Ratio, Bound);
        draft.Note($"The weakest is {weakest.Name}: {weakest.Cause}.");
        draft.List(() => Table(study, elements));
        draft.Note("Each load is the greater of the jerk as the harness runs out and the share of the opening that slows what lies beyond. Rated parts count twice their working load, plates a third or a quarter of their strength, so that a factor of 2 keeps the customary allowances.");
        ChargeNotes.OfStrength(draft);
        return draft.Done();
    }

    private static AnswerTable Table(Study study, ValueList<PathElement> elements) => new(
        "From canopy to airframe",
        [new("element"), new("load", Unit.Force), new("from"), new("capacity", Unit.Force), new("factor", Unit.Ratio)],
        elements.Select(e => TableRow.Of(
            e.Factor is { } factor ? study.Limits[Bound].Judge(factor, null) : Verdict.Open,
            e.Name, e.Load, e.Cause, e.Capacity is { } capacity ? capacity : "open", e.Factor)).ToValueList());
}
