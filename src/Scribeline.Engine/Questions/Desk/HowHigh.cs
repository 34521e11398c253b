using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>How high does it go? Apogee above ground, against the ceiling of the site.</summary>
public sealed class HowHigh() : Question("how-high", "How high does it go?", Place.Desk)
{
    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        var w = draft.Working;
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(study.Rocket.DragBasis);
        if (study.Rocket.DragScale != 1) w.Given("s_D", study.Rocket.DragScale, "", "drag over that predicted", $"design, {study.Rocket.DragBasis.ToString().ToLowerInvariant()}");
        if (study.Rocket.ThrustScale != 1) w.Given("s_I", study.Rocket.ThrustScale, "", "impulse over that printed", "design");
        if (study.Flight is not { Apogee: { } apogee, Burnout: { } burnout })
        {
            draft.Find("apogee above ground", 0, Unit.Height, Ceiling(study));
            draft.Note("It does not fly.");
            return draft.Done();
        }

        // A pocket-calculator check of the coast: vertical, with the drag at burnout held as a constant coefficient.
        var h_b = w.Simulated("h_b", burnout.Height, "m", "height at burnout", "flown");
        var v_b = w.Simulated("v_b", burnout.Speed, "m/s", "speed at burnout", "flown");
        var m = w.Simulated("m", burnout.Mass, "kg", "mass at burnout", "flown");
        var D = w.Simulated("D", study.CoastDrag, "N", "drag just after burnout", "drag build-up, see question how-fast");
        var g = w.Given("g", study.Gravity, "m/s²", "gravity at the site", "WGS 84 (NIMA TR8350.2)");
        var k = w.Step("k", D / (v_b * v_b), "kg/m", "drag over speed squared", "definition");
        var h_c = w.Step("h_c", m / (2 * k) * Log(1 + (k * v_b * v_b / (m * g))), "m", "coast by hand: straight up, constant k", "closed form of m v' = -m g - k v²");
        w.Step("h_h", h_b + h_c, "m", "apogee by hand", "sum");
        var h = w.Simulated("h", apogee.Height, "m", "apogee above the pad", "flown: six degrees of freedom in the weather given");
        var t = w.Simulated("t", apogee.Time, "s", "time of apogee after ignition", "flown");
        draft.Find("apogee above ground", h, Unit.Height, Ceiling(study));
        draft.Find("time to apogee", t, Unit.Time);
        draft.Find("speed at apogee", apogee.Speed, Unit.Speed);
        if (study.Ceiling is null) draft.Note("The site states no ceiling: ask the launch director and write it in the site file.");
        draft.Draw(() => FlightPlots.Against("Height on the way up", "height above the pad", Unit.Height, study, s => s.Height));
        return draft.Done();
    }

    private static Limit? Ceiling(Study study) => study.Ceiling is not { } ceiling ? null
        : new Limit("how-high.ceiling", ceiling, Sense.AtMost, 0, Must: true, "ceiling of the site; no more than one flight in a hundred may pass it")
        {
            LeastShare = 1 - study.Limits["how-high.beyond-ceiling"].Value,
        };
}
