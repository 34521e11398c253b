
namespace Scribeline.Engine.Questions.Desk;

/// <summary>How fast? Greatest speed, Mach number, acceleration and dynamic pressure.</summary>
public sealed class HowFast() : Question("how-fast", "How fast does it go?", Place.Desk)
{
    // Shock waves over the static ports disturb a barometric altimeter from about here on (common practice).
    private const double TransonicMach = 0.8;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        var w = draft.Working;
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(study.Rocket.DragBasis);
        if (study.Rocket.DragScale != 1) w.Given("s_D", study.Rocket.DragScale, "", "drag over that predicted", $"design, {study.Rocket.DragBasis.ToString().ToLowerInvariant()}");
        if (study.Rocket.ThrustScale != 1) w.Given("s_I", study.Rocket.ThrustScale, "", "impulse over that printed", "design");
        const string Flown = "flown: six degrees of freedom, greatest value of the dense solution";
        var top = study.Flight.Maxima;
        w.Simulated("v", top.Speed.Value, "m/s", $"greatest speed, {top.Speed.Time:F2} s after ignition at {top.Speed.Height:F0} m", Flown);
        w.Simulated("M", top.Mach.Value, "", $"greatest Mach number, at {top.Mach.Time:F2} s", Flown);
        var a = w.Simulated("a", top.Acceleration.Value, "m/s²", $"greatest felt acceleration, at {top.Acceleration.Time:F2} s", Flown);
        w.Step("n", a / 9.80665, "", "the same in multiples of standard gravity", "definition");
        var q = w.Simulated("q", top.DynamicPressure.Value, "Pa", $"greatest dynamic pressure, at {top.DynamicPressure.Time:F2} s", Flown);
        draft.Find("greatest speed", top.Speed.Value, Unit.Speed);
        draft.Find("greatest Mach number", top.Mach.Value, Unit.Mach);
        draft.Find("greatest acceleration", a, Unit.Acceleration);
        draft.Find("greatest dynamic pressure", q, Unit.Pressure);

        var ascent = study.Ascent;
        var fast = ascent.Where(s => s.Mach > TransonicMach).ToArray();
        if (fast.Length > 0)
        {
            draft.Find("time faster than Mach 0.8", fast[^1].Time - fast[0].Time, Unit.Time);
            draft.Note($"Faster than Mach 0.8 from {fast[0].Time:F1} s to {fast[^1].Time:F1} s: a barometric altimeter may read wrong then; keep its lockout longer than that.");
        }
        else
        {
            draft.Find("time faster than Mach 0.8", 0, Unit.Time);
        }

        draft.Draw(() => FlightPlots.Speeds(study));
        return draft.Done();
    }
}
