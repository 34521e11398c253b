using static System.Math;

namespace Scribeline.Engine.Questions.Desk;

/// <summary>Is it fast enough when it leaves the rail? Speed and angle of attack as the guides come free.</summary>
public sealed class RailExit() : Question("rail-exit", "Is it fast enough when it leaves the rail?", Place.Desk)
{
    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        var w = draft.Working;
        draft.RestsOn(study.MassBasis);
        if (study.Flight.RailExit is not { } exit)
        {
            draft.Find("speed when the last guide leaves", 0, Unit.Speed, "rail-exit.speed");
            draft.Note("It does not leave the rail.");
            return draft.Done();
        }

        const string Flown = "flown: thrust less drag, weight along the rail and friction";
        w.Given("s", study.Rail.Length - (study.Length - study.Rail.ForwardGuide), "m", "travel until the forward guide leaves", "usable rail less height of the guide");
        var t = w.Simulated("t", exit.Forward.Time, "s", "time after ignition when it leaves", Flown);
        var F = w.Simulated("F", study.MeanThrustUntil(exit.Forward.Time), "N", "mean thrust over that time", "thrust table");
        var m = w.Given("m", study.LoadedMass, "kg", "mass on the pad", "question weight");
        var g = w.Given("g", study.Gravity, "m/s²", "gravity at the site", "WGS 84 (NIMA TR8350.2)");
        var e = w.Given("e", study.Rail.Elevation, "rad", "elevation of the rail", "design");
        var k = w.Given("k", study.Rail.Friction, "", "friction of the guides", "design");
        w.Step("v_h", t * ((F / m) - (g * (Sin(e) + (k * Cos(e))))), "m/s", "speed there by hand, without drag", "impulse over mass, weight along the rail and friction taken off");
        w.Simulated("v_f", exit.Forward.Speed, "m/s", "speed as the forward guide leaves", Flown);
        var v = w.Simulated("v", exit.Aft.Speed, "m/s", "speed as the last guide leaves", Flown);
        draft.Find("speed when the last guide leaves", v, Unit.Speed, "rail-exit.speed");
        draft.Find("speed when the forward guide leaves", exit.Forward.Speed, Unit.Speed);

        if (study.WindIsKnown)
        {
            var u = w.Given("u", exit.Aft.Wind.Length, "m/s", "wind at the rail's tip", "weather");
            w.Step("a_h", Atan(u / v), "rad", "angle of attack by hand, wind across the rail", "geometry");
            w.Simulated("a", exit.Aft.AngleOfAttack, "rad", "angle of attack", "flown");
            draft.Find("angle of attack there", exit.Aft.AngleOfAttack, Unit.Angle, "rail-exit.angle");
        }
        else
        {
            draft.Miss("weather: wind: speed and direction at the pad");
        }

        return draft.Done();
    }
}
