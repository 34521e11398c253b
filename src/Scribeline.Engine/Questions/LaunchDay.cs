using System.Globalization;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>
/// The checklists of launch day, filled in from the design. Rules: Degani and Wiener, Human Factors of Flight-Deck Checklists, NASA CR-177549
/// (1990): answers name what is seen, long lists are cut by place, killing items come early and again, the last line is spoken. Charges stay
/// inhibited until the rocket is vertical, and a misfire waits 60 s: NAR High Power Rocket Safety Code (2012). The order of switching on is
/// common practice.
/// </summary>
public static class LaunchDay
{
    /// <summary>Every list, in the order of the day.</summary>
    /// <param name="study">The rocket on its day.</param>
    public static ValueList<Checklist> Of(Study study) => [Home(study), Bench(study), Closing(study), Pad(study), Trouble(), Recovery(study)];

    private static Checklist Home(Study study)
    {
        var inch = study.Rocket.Inch;
        List<CheckItem> items =
        [
            new("Motor", study.HasMotor ? $"{study.Motor.Name} on the case, certified, as its maker's sheet assembles it" : "name read from the case"),
            new("Rocket weighed as it flies", $"planned {Shown.Text(study.LoadedMass, Unit.Mass, inch)}; scale shows ______"),
            new("Balance, loaded", $"planned {Shown.Text(study.Loaded.Station, Unit.Length, inch)} aft of the tip; found ______, marked on the body"),
        ];
        items.AddRange(Altimeters(study).Select(a => new CheckItem($"{a}: settings read back from it", Settings(study, a))));
        items.Add(new("Batteries under load", "volts of each written down: ______ ______"));
        items.Add(new("Altimeter ports", "as many as drilled, light seen through each"));
        items.Add(new("Canopies, lines, harnesses", "no burn, no cut, every knot and link seen", Hold: true));
        return new("At home, the evening before", items.Take(10).ToValueList(), "\"Home list complete.\" Or stop for today.");
    }

    private static Checklist Bench(Study study)
    {
        List<CheckItem> items =
        [
            new("Eyes and ears", "protected, everybody near", Hold: true),
            new("Altimeters", "off, silent, switches seen open", Hold: true),
        ];
        items.AddRange(study.Rocket.Separation.Charges.Select(c => new CheckItem(
            $"Charge {c.Name}", $"{(c.Mass is { } mass ? Shown.Text(mass, Unit.Powder, study.Rocket.Inch) : "mass not known")} on the scale, in its cup, sealed, lead marked")));
        items.Add(new("Match leads", "ohms at the terminals written down, shunted until the pad"));
        items.Add(new("Wires", "apogee and main on the terminals named for them, tugged"));
        return new("At the range: charges", items.Take(10).ToValueList(), "\"Charges are in, circuits are dead.\" Or stop for today.");
    }

    private static Checklist Closing(Study study)
    {
        List<CheckItem> items = [];
        items.AddRange(study.Rocket.Separation.Harnesses.Select(h => new CheckItem(
            $"{h.Name}", $"{Shown.Text(h.Length, Unit.Height, study.Rocket.Inch)}, tied to {string.Join(" and ", h.Ties.Select(t => study.Vehicle.Parts[t].Name).Distinct())}, links shut")));
        items.AddRange(study.Rocket.Canopies.Select(c => new CheckItem($"{c.Name} canopy", "protector round it, slides out of the tube by its own weight")));
        items.AddRange(study.Vehicle.Joints.Select(j => new CheckItem(
            $"{study.Vehicle.Parts[j.Forward].Name} to {study.Vehicle.Parts[j.Aft].Name}", Held(study, j))));
        items.Add(new("Motor", "retained, pulled by hand", Hold: true));
        return new("At the range: closing up", items.Take(10).ToValueList(), "\"Closed. Ready for check-in.\" Or stop for today.");
    }

    private static Checklist Pad(Study study)
    {
        List<CheckItem> items = [new("Rail", "guides slide its whole length, locked, tilt and direction set"), new("Rocket", "vertical, only the people needed are here", Hold: true)];
        items.AddRange(Altimeters(study).Select(a => new CheckItem($"{a}: switch on", "tones of two charges heard and counted", Hold: true)));
        items.Add(new("Wind, cloud, aircraft, people", "inside the limits of the card, now"));
        items.Add(new("Launch leads", "touched together: dead"));
        items.Add(new("Igniter", "in to the top of the grain, held"));
        items.Add(new("Clips", "on, clear of each other and of the blast plate"));
        items.Add(new("Last look up", "tones still right, all leave", Hold: true));
        return new("On the pad", items.Take(10).ToValueList(), "\"Pad ready, altimeters armed, everybody clear.\" Or lower it and stop for today.");
    }

    private static Checklist Trouble() => new(
        "If it does not go, or comes off the rail again",
        [
            new("Hands off, interlock out", "key in hand, 60 s on the watch", Hold: true),
            new("Smoke, or a partial burn", "treated as live; wait longer, fire watch"),
            new("One person goes", "from the side, never over the nose or in line with the nozzle"),
            new("Clips off, igniter out", "igniter in hand"),
            new("Altimeters off", "silent, switches seen open"),
            new("Shunts closed", "seen, each"),
            new("Lower the rail", "only now"),
        ],
        "\"Rocket is safe.\" Thunder: shelter, and 30 minutes after the last.");

    private static Checklist Recovery(Study study)
    {
        List<CheckItem> items =
        [
            new("Before touching", "looked at from the side, out of line with both ends; eyes and ears protected", Hold: true),
            new("Altimeters", "read, then off by the outside switch: silent"),
        ];
        items.AddRange(study.Rocket.Separation.Charges.Take(4).Select(c => new CheckItem($"Charge {c.Name}", "fired, or shunted and its leads twisted together")));
        items.Add(new("Cells", "cool, not dented, not swollen; else outdoors on bare ground"));
        items.Add(new("What was seen", "written down: each event, height, damage"));
        return new("Where it landed", items.Take(10).ToValueList(), "\"Rocket is safe.\" Not from power lines or tall trees.");
    }

    private static IEnumerable<string> Altimeters(Study study) => study.Rocket.Firings.Select(f => f.Altimeter).OfType<string>().Distinct();

    private static string Settings(Study study, string altimeter) => string.Join("; ", study.Rocket.Firings.Where(f => f.Altimeter == altimeter).Select(f =>
        $"{f.Name.Split(": ")[^1]} {Trigger(f.Trigger, study.Rocket.Inch)}"));

    /// <summary>When something fires, in words.</summary>
    /// <param name="trigger">The trigger.</param>
    /// <param name="inch">Whether heights are in feet.</param>
    public static string Trigger(Flight.RecoveryTrigger trigger, bool inch) => trigger switch
    {
        Flight.AtApogee { Delay: > 0 } a => string.Create(CultureInfo.InvariantCulture, $"{a.Delay:0.0} s after apogee"),
        Flight.AtApogee => "at apogee",
        Flight.DescendingThrough d => $"at {Shown.Text(d.Height, Unit.Height, inch)} coming down",
        Flight.AfterLiftOff t => string.Create(CultureInfo.InvariantCulture, $"{t.Time:0.0} s after lift-off"),
        Flight.AfterBurnout b => string.Create(CultureInfo.InvariantCulture, $"{b.Delay:0.0} s after burnout"),
        _ => "as set",
    };

    private static string Held(Study study, Joint joint)
    {
        if (study.Rocket.Separation.Of(joint.Forward) is { Pins: { } pins }) return string.Create(CultureInfo.InvariantCulture, $"{pins.Count} pins {pins.Name}, all in, joint does not turn");
        if (study.Rocket.Separation.Screws.FirstOrDefault(s => s.Joint == joint.Forward) is { } screws)
            return string.Create(CultureInfo.InvariantCulture, $"{screws.Count} screws {screws.Name}, all in and tight");
        return joint.Kind == JointKind.Bonded ? "bond whole, no crack" : "slides with the force measured";
    }
}
