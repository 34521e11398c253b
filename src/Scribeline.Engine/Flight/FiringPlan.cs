using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>The actions of the plan that concern one body and have not fired, with the times of those whose time is known.</summary>
internal sealed class FiringPlan
{
    private readonly List<(RecoveryAction Action, double Time)> pending;

    private FiringPlan(List<(RecoveryAction Action, double Time)> pending) => this.pending = pending;

    /// <summary>The whole plan, nothing known yet.</summary>
    public FiringPlan(ValueList<RecoveryAction> actions) => pending = [.. actions.Select(a => (a, double.PositiveInfinity))];

    /// <summary>Earliest known firing time, s after ignition; infinite where none is known.</summary>
    public double NextTime => pending.Count == 0 ? double.PositiveInfinity : pending.Min(p => p.Time);

    /// <summary>Highest reading waited for, m; null where none is.</summary>
    public double? NextReading
    {
        get
        {
            double? highest = null;
            foreach ((RecoveryAction action, double time) in pending)
            {
                if (action.Trigger is DescendingThrough d && double.IsPositiveInfinity(time) && !(d.Height <= highest)) highest = d.Height;
            }

            return highest;
        }
    }

    /// <summary>Sets the time of every action whose trigger this is.</summary>
    public void Know(Func<RecoveryTrigger, double?> timeOf)
    {
        for (int i = 0; i < pending.Count; i++)
        {
            (RecoveryAction action, double time) = pending[i];
            if (double.IsPositiveInfinity(time) && timeOf(action.Trigger) is { } known) pending[i] = (action, known);
        }
    }

    /// <summary>At apogee altimeters arm: those whose height is above apogee fire at once.</summary>
    public void KnowApogee(double time, double reading) => Know(t => t switch
    {
        AtApogee a => time + a.Delay,
        DescendingThrough d when d.Height >= reading => time + d.Delay,
        _ => null,
    });

    /// <summary>The reading of an armed altimeter, m; what waits for this or more is known now.</summary>
    public void KnowReading(double time, double reading) =>
        Know(t => t is DescendingThrough d && d.Height >= reading ? time + d.Delay : null);

    /// <summary>Removes and returns the first action due by a time, or null.</summary>
    public RecoveryAction? Due(double time)
    {
        int at = pending.FindIndex(p => p.Time <= time);
        if (at < 0) return null;
        RecoveryAction action = pending[at].Action;
        pending.RemoveAt(at);
        return action;
    }

    /// <summary>The part of the plan for a body of these pieces.</summary>
    public FiringPlan For(int first, int last) => new([.. pending.Where(p => Concerns(p.Action, first, last))]);

    private static bool Concerns(RecoveryAction action, int first, int last) =>
        action.Joint is { } joint ? joint >= first && joint < last
        : action.Canopies.Count == 0 || (action.Canopies[0].Piece >= first && action.Canopies[0].Piece <= last);
}
