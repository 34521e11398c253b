using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>If the motor's own charge is used, which delay? Time from burnout to apogee, and the speed at ejection for each delay.</summary>
public sealed class Delay() : Question("delay", "If the motor's own charge is used, which delay?", Place.Desk)
{
    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(Basis.Estimated);
        if (study.Unopened is not { Burnout: { } burnout, Apogee: { } apogee })
        {
            draft.Find("time from burnout to apogee", double.NaN, Unit.Time);
            draft.Note("It does not fly.");
            return draft.Done();
        }

        var w = draft.Working;
        var t_a = w.Simulated("t_a", apogee.Time, "s", "time of apogee", "flown with nothing that opens");
        var t_b = w.Simulated("t_b", burnout.Time, "s", "time of burnout", "flown");
        var t = w.Step("t", t_a - t_b, "s", "from burnout to apogee", "definition");
        draft.Find("time from burnout to apogee", t, Unit.Time);

        var used = study.Plan.Actions.Any(a => a.Trigger is AfterBurnout);
        foreach (var delay in study.Motor.Delays)
        {
            // Up to apogee the flight as planned serves where nothing opens before.
            var end = burnout.Time + delay;
            var flight = end <= apogee.Time ? study.Unopened : study.Ballistic;
            var at = flight.At(Min(end, flight.End));
            var early = at.Height <= 0 ? "it has hit the ground by then" : $"{at.Height:F0} m above the pad";
            w.Simulated($"v_{delay:F0}", at.Speed, "m/s", $"speed when a delay of {delay:F0} s ends, {early}", "flown with nothing that opens");
            draft.Find($"delay {delay:F0} s: speed at ejection", at.Height <= 0 ? double.PositiveInfinity : at.Speed, Unit.Speed, Chosen(study, delay) ? "delay.speed" : null);
        }

        if (study.Motor.Plugged || study.Motor.Delays.Count == 0) draft.Note("This motor has no ejection charge: the altimeters do it all.");
        else if (!used) draft.Note("The firing section does not use the motor's own charge; the speeds are told, not judged.");
        return draft.Done();
    }

    private static bool Chosen(Study study, double delay) =>
        study.Plan.Actions.Any(a => a.Trigger is AfterBurnout { Delay: var planned } && Abs(planned - delay) < 0.5);
}
