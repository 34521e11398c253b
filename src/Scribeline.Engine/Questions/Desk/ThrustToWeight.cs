namespace Scribeline.Engine.Questions.Desk;

/// <summary>Is the motor strong enough? Average thrust over weight, and thrust over weight as it leaves the rail.</summary>
public sealed class ThrustToWeight() : Question("thrust-to-weight", "Is the motor strong enough?", Place.Desk)
{
    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        var w = draft.Working;
        draft.RestsOn(study.MassBasis);
        draft.RestsOn(study.Motor.Basis);

        var F = w.Given("F", study.Motor.Curve.AverageThrust, "N", "average thrust of the motor", "thrust table, over the burn time of NFPA 1125");
        var m = w.Given("m", study.LoadedMass, "kg", "mass on the pad", "question weight");
        var g = w.Given("g", study.Gravity, "m/s²", "gravity at the site", "WGS 84 (NIMA TR8350.2)");
        var r = w.Step("r", F / (m * g), "", "average thrust over weight", "definition");
        draft.Find("average thrust over weight", r, Unit.Ratio, "thrust-to-weight.average");
        draft.Find("the same, against the customary figure", r, Unit.Ratio, "thrust-to-weight.customary");

        if (study.Flight.RailExit is { } exit)
        {
            var F_e = w.Simulated("F_e", exit.Forward.Thrust, "N", "thrust as the forward guide leaves the rail", "flown");
            var m_e = w.Simulated("m_e", exit.Forward.Mass, "kg", "mass there", "flown");
            var r_e = w.Step("r_e", F_e / (m_e * g), "", "thrust over weight there", "definition");
            draft.Find("thrust over weight as it leaves the rail", r_e, Unit.Ratio, "thrust-to-weight.customary");
        }
        else
        {
            draft.Find("thrust over weight as it leaves the rail", 0, Unit.Ratio, "thrust-to-weight.average");
            draft.Note("It does not leave the rail.");
        }

        return draft.Done();
    }
}
