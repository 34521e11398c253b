using System.Globalization;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Questions.Bench;

/// <summary>What next? Steps with what must come before and why, waits, time of hands, the critical path and a plan by evenings.</summary>
public sealed class BuildOrder() : Question("build-order", "What next?", Place.Bench)
{
    private const string Source = "critical-path method (Kelley and Walker 1959)";

    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(Basis.Estimated);
        var build = study.Rocket.Build;
        foreach (var missing in build.Missing) draft.Miss(missing);
        foreach (var assumed in build.Assumed) draft.Note(assumed);
        if (study.BuildOrder.Network is not { } network)
        {
            draft.Note($"These wait for each other: {string.Join(", ", study.BuildOrder.Cycle)}.");
            return draft.Done();
        }

        var plan = EveningPlan.Of(network, study.Rocket.Shop.Practice.Evening);
        Found(draft, network, plan);
        draft.List(() => Steps(build, plan));
        draft.List(() => Reasons(network));
        draft.List(() => Evenings(build, plan));
        draft.Note("Times of hands and of setting are common practice for somebody who has done it before; adhesive sets by its maker's sheet and by the temperature of the room.");
        return draft.Done();
    }

    private static void Found(Draft draft, PrecedenceNetwork network, EveningPlan plan)
    {
        var w = draft.Working;
        List<string> terms = [];
        foreach (var id in network.CriticalPath)
        {
            var times = network.Times.First(t => t.Activity.Id == id);
            if (times.Activity.Duration == 0) continue;
            terms.Add($"t_{terms.Count + 1}");
            w.Given(terms[^1], times.Activity.Duration, "s", $"{id}, on the critical path", "table of works");
        }

        var soonest = w.Sum("T", terms, "s", "soonest end: along the critical path, with hands enough for everything", Source);
        var hands = w.Simulated("H", network.HandsOn, "s", "time of hands of all steps", "sum over the steps");
        w.Simulated("E", plan.Elapsed, "s", "end by evenings, for one pair of hands", "what can start soonest, then what must start soonest; waits go on overnight");
        draft.Find("steps for hands", network.Times.Count(t => t.Activity.HandsOn), Unit.Count);
        draft.Find("time of hands", hands, Unit.WorkTime);
        draft.Find("soonest end, with hands enough", soonest, Unit.WorkTime);
        draft.Find(string.Create(CultureInfo.InvariantCulture, $"evenings of {plan.Hours / 3600:0.##} h"), plan.Evenings, Unit.Count);
        draft.Find("from the first evening to the end of the last wait", plan.Elapsed, Unit.WorkTime);
    }

    private static AnswerTable Steps(BuildSteps build, EveningPlan plan) => new(
        "Steps in the order of the plan",
        [new("evening", Unit.Count), new("step"), new("what to do"), new("time", Unit.WorkTime)],
        plan.Turns.Select(t => TableRow.Of(null, t.Evening, t.Activity.Id, build.Named(t.Activity.Id)!.Says, t.Activity.Duration)).ToValueList());

    // Precedences of one reason stand together; those that follow from others are left out.
    private static AnswerTable Reasons(PrecedenceNetwork network)
    {
        var directly = network.Directly();
        return new(
            "What comes before, and why",
            [new("step"), new("may wait", Unit.WorkTime), new("comes after")],
            network.Times.Select(t => TableRow.Of(
                null,
                t.Activity.Id,
                t.Float > 1 ? t.Float : (TableCell)"critical",
                string.Join("; ", directly[t.Activity.Id].GroupBy(p => p.Reason).Select(r => $"{string.Join(", ", r.Select(p => p.Before))}: {r.Key}")))).ToValueList());
    }

    private static AnswerTable Evenings(BuildSteps build, EveningPlan plan) => new(
        "Evenings",
        [new("evening", Unit.Count), new("time of hands", Unit.WorkTime), new("places"), new("sets meanwhile")],
        plan.Turns.GroupBy(t => t.Evening).Select(e => TableRow.Of(
            null,
            e.Key,
            e.Where(t => t.Activity.HandsOn).Sum(t => t.Activity.Duration),
            Places(e.Where(t => t.Activity.HandsOn)),
            Places(e.Where(t => !t.Activity.HandsOn)))).ToValueList());

    private static string Places(IEnumerable<PlannedTurn> turns) => string.Join(", ", turns.Select(t => t.Activity.Id.Split('/')[0]).Distinct());
}
