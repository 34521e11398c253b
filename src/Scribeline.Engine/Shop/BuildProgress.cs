using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>How far a build has come.</summary>
/// <param name="Steps">Every step, in the order of the network.</param>
/// <param name="Left">The network of what is left, waits shortened by what has passed of them.</param>
/// <param name="Strangers">Ids that were ticked but are no step of this rocket, because the design has changed.</param>
public sealed record BuildProgress(ValueList<StepProgress> Steps, PrecedenceNetwork Left, ValueList<string> Strangers)
{
    /// <summary>Steps for hands that can be taken up now, the one that must start soonest first.</summary>
    public IEnumerable<StepProgress> Next => Steps.Where(s => s.State == StepState.Next)
        .OrderBy(s => s.Rather.Count > 0).ThenBy(s => Left.Times.First(t => t.Activity.Id == s.Step.Id).LateStart);

    /// <summary>What sets or dries at the moment, that which ends first first.</summary>
    public IEnumerable<StepProgress> Setting => Steps.Where(s => s.State == StepState.Sets).OrderBy(s => s.At);

    /// <summary>The state of a build.</summary>
    /// <param name="build">Its steps.</param>
    /// <param name="network">Their network.</param>
    /// <param name="ticks">The latest tick of every step that has one.</param>
    /// <param name="now">The time it is.</param>
    public static BuildProgress Of(BuildSteps build, PrecedenceNetwork network, IEnumerable<StepTick> ticks, DateTimeOffset now)
    {
        var said = ticks.ToDictionary(t => t.Step);
        var before = network.Precedences.ToLookup(p => p.After);
        Dictionary<string, DateTimeOffset> done = [];
        List<StepProgress> steps = [];
        foreach (var activity in network.Times.Select(t => t.Activity))
        {
            var tick = said.GetValueOrDefault(activity.Id);
            var open = before[activity.Id].Where(p => !done.ContainsKey(p.Before)).DistinctBy(p => p.Before).ToValueList();
            var (state, at) = State(activity, tick, open, before[activity.Id].Select(p => done.GetValueOrDefault(p.Before)), now);
            if (state == StepState.Done) done[activity.Id] = at!.Value;
            steps.Add(new(build.Named(activity.Id)!, state, at, tick?.Note ?? "", open));
        }

        var left = steps.Where(s => s.State != StepState.Done).Select(s => s.State == StepState.Sets
            ? s.Step.Activity with { Duration = (s.At!.Value - now).TotalSeconds }
            : s.Step.Activity).ToValueList();
        var strangers = said.Values.Where(t => t.Done && build.Named(t.Step) is null).Select(t => t.Step).ToValueList();
        return new(steps.ToValueList(), PrecedenceNetwork.Solve(left, network.Precedences).Network!, strangers);
    }

    // A wait begins when the last thing before it is done, and needs no tick.
    private static (StepState State, DateTimeOffset? At) State(
        Activity activity, StepTick? tick, ValueList<Precedence> open, IEnumerable<DateTimeOffset> before, DateTimeOffset now)
    {
        if (tick is { Done: true }) return (StepState.Done, tick.At);
        if (open.Any(p => p.Hard)) return (StepState.Later, null);
        if (activity.HandsOn) return (StepState.Next, null);
        var ends = before.DefaultIfEmpty(now).Max().AddSeconds(activity.Duration);
        return ends <= now ? (StepState.Done, ends) : (StepState.Sets, ends);
    }
}

/// <summary>How far one step has come.</summary>
/// <param name="Step">Which.</param>
/// <param name="State">Where it stands.</param>
/// <param name="At">When it was done, or when a wait under way ends; null otherwise.</param>
/// <param name="Note">The builder's words; may be empty.</param>
/// <param name="Waits">What must or should come before it and is not done.</param>
public sealed record StepProgress(BuildStep Step, StepState State, DateTimeOffset? At, string Note, ValueList<Precedence> Waits)
{
    /// <summary>What would better come before it.</summary>
    public ValueList<Precedence> Rather => Waits.Where(p => !p.Hard).ToValueList();
}

/// <summary>Where a step stands.</summary>
public enum StepState
{
    /// <summary>Done, or set.</summary>
    Done,

    /// <summary>A wait that is under way.</summary>
    Sets,

    /// <summary>Can be taken up.</summary>
    Next,

    /// <summary>Something must come first.</summary>
    Later,
}
