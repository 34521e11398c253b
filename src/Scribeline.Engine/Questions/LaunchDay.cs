using System.Globalization;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Questions;

/// <summary>
/// The checklists of launch day, filled in from the design and from the rules of its site. How lists are made: Degani and Wiener, Human Factors of
/// Flight-Deck Checklists, NASA CR-177549 (1990): answers name what is seen, long lists are cut by place, killing items come early and again, the
/// last line is spoken. Where to arm, how far people stand and how long a misfire waits come from the safety code; the order of switching on is
/// common practice.
/// </summary>
public static class LaunchDay
{
    /// <summary>Every list, in the order of the day.</summary>
    /// <param name="study">The rocket on its day.</param>
    public static ValueList<DayList> Of(Study study) =>
        [Night(study), Charges(study), Closing(study), ToThePad(study), AtThePad(study), Arming(study), Launch(study), Misfire(study), Recovery(study)];

    /// <summary>Altimeters and timers that fire something, in the order of the design.</summary>
    public static ValueList<string> Altimeters(Study study) => study.Rocket.Firings.Select(f => f.Altimeter).OfType<string>().Distinct().ToValueList();

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

    private static DayList Night(Study study)
    {
        var inch = study.Rocket.Inch;
        List<DayItem> items =
        [
            new("Motor", study.HasMotor ? $"{study.Motor.Name} on the case, certified, as its maker's sheet assembles it" : "name read from the case"),
            new("Rocket weighed as it flies", $"planned {Shown.Text(study.LoadedMass, Unit.Mass, inch)}; scale shows ______"),
            new("Balance, loaded", $"planned {Shown.Text(study.Loaded.Station, Unit.Length, inch)} aft of the tip; found ______, marked on the body"),
        ];
        foreach (var altimeter in Altimeters(study))
        {
            items.Add(new($"{altimeter}: settings read back from it", Settings(study, altimeter)));
            items.Add(new($"{altimeter}: its own battery, under load", "charged, not swollen or dented; volts ______"));
        }

        foreach (var ports in study.Rocket.Shop.Holes.Rows.Where(r => r.First().Kind == HoleKind.StaticPort)) items.Add(new(Capital(ports.Key), $"{ports.Count()} open, light seen through each"));
        items.AddRange(study.Rocket.Canopies.Select(c => new DayItem($"{c.Name}: cloth and lines", "no burn, no cut, lines run free", Hold: true)));
        items.AddRange(study.Rocket.Separation.Harnesses.Select(h => new DayItem($"{h.Name}: whole length", "no burn, no cut, every knot and seam seen", Hold: true)));
        return new("Night before", items.ToValueList(), "\"Night list complete.\" Or stop for today.") { Eve = true };
    }

    private static DayList Charges(Study study)
    {
        List<DayItem> items = [new("Eyes and ears", "protected, everybody near", Hold: true)];
        items.AddRange(Altimeters(study).Select(a => new DayItem($"{a}: power", "off, silent", Hold: true)));
        items.AddRange(Switches(study).Select(s => new DayItem($"{s}: seen", "open")));
        items.AddRange(study.Rocket.Separation.Charges.Select(c => new DayItem(
            $"Charge {c.Name}", $"{(c.Mass is { } mass ? Shown.Text(mass, Unit.Powder, study.Rocket.Inch) : "mass not known")} on the scale, in its cup, sealed, lead marked")));
        items.AddRange(study.Rocket.Firings.Where(f => f is { Altimeter: not null, Charge: not null }).Select(f => new DayItem(
            $"{f.Altimeter}: lead of {f.Charge}", $"on the terminal that fires {Trigger(f.Trigger, study.Rocket.Inch)}; tugged; ______ ohms; shunted until the pad")));
        return new("Prep: charges", items.ToValueList(), "\"Charges are in, circuits are dead.\" Or stop for today.");
    }

    private static DayList Closing(Study study)
    {
        List<DayItem> items = [];
        items.AddRange(study.Rocket.Separation.Harnesses.Select(h => new DayItem(
            $"{h.Name}: tied", $"{Shown.Text(h.Length, Unit.Height, study.Rocket.Inch)}, to {string.Join(" and ", h.Ties.Select(t => study.Vehicle.Parts[t].Name).Distinct())}")));
        items.AddRange(study.Rocket.Rigging.Links.Select((l, i) => new DayItem($"Link {i + 1}, {l.Name}", $"{(l.Joins is { } joins ? $"joins {joins}, " : "")}screwed shut, wrench tight")));
        items.AddRange(study.Rocket.Canopies.Select(c => new DayItem($"{c.Name}: packed", "protector between it and the charge; slides out of the tube by its own weight")));
        items.AddRange(study.Vehicle.Joints.Select(j => new DayItem(
            $"{study.Vehicle.Parts[j.Forward].Name} to {study.Vehicle.Parts[j.Aft].Name}", Held(study, j))));
        items.Add(new("Motor held", "retainer shut, pulled by hand", Hold: true));
        return new("Prep: closing up", items.ToValueList(), "\"Closed. Ready for check-in.\" Or stop for today.");
    }

    private static DayList ToThePad(Study study)
    {
        List<DayItem> items =
        [
            new("Flight card", "shown to the range safety officer, signed; conditions still to be confirmed are confirmed", Hold: true),
            .. Altimeters(study).Select(a => Ruled(study, "N04c", new($"{a}: still off", "silent", Hold: true))),
            Ruled(study, "N04b", new("Igniter", "carried apart, not in the motor")),
            new("On the way", "nose up or away from people, nobody in line with it"),
        ];
        return new("To the pad", items.ToValueList(), "\"Going out, circuits dead.\" Or stop for today.");
    }

    private static DayList AtThePad(Study study)
    {
        var inch = study.Rocket.Inch;
        List<DayItem> items =
        [
            Ruled(study, "N06d", new("People at the pad", "only those needed", Hold: true)),
            Ruled(study, "N07d", new("Blast deflector", "in place; ground round the pad clear of what burns")),
            new("Guides on the rail", "slide its whole length by hand"),
            Ruled(study, "N07b", new("Rail up", study.Missing.Count > 0 ? "locked; tilt ______" : $"locked; {Shown.Text((Math.PI / 2) - study.Day.Rail.Elevation, Unit.Angle, inch)} off the vertical towards {Shown.Text(study.Day.Rail.Azimuth, Unit.Angle, inch)}", Hold: true)),
            new("Launch leads", "touched together: dead"),
        ];
        return new("At the pad", items.ToValueList(), "\"On the rail, up and locked.\" Or lower it and stop for today.");
    }

    private static DayList Arming(Study study)
    {
        List<DayItem> items = [Ruled(study, "N04c", new("Rocket", "in its launching position, nobody in line with it", Hold: true))];
        var (altimeters, switches) = (Altimeters(study), Switches(study));
        if (switches.Count != altimeters.Count) items.AddRange(switches.Select(s => new DayItem($"{s}: on", "turned, seen closed")));
        items.AddRange(altimeters.Select((a, i) => new DayItem(
            $"{a}: {(switches.Count == altimeters.Count ? $"on by {switches[i]}" : "on")}",
            string.Create(CultureInfo.InvariantCulture, $"tones of {study.Rocket.Firings.Count(f => f.Altimeter == a)} charges heard and counted; battery ______ V; a wrong tone: stop, switch off"), Hold: true)));
        items.Add(new("Igniter in", "to the top of the grain, held"));
        items.Add(new("Clips", "on, clear of each other and of the deflector"));
        items.Add(new("Last look up", "tones still right, everybody leaves", Hold: true));
        return new("Arming", items.ToValueList(), "\"Armed, pad clear.\" Or switch off in reverse, lower it and stop for today.");
    }

    private static DayList Launch(Study study)
    {
        List<DayItem> items =
        [
            Back(study),
            Ruled(study, "N09b", new("Wind, cloud, aircraft", "inside the limits of the card, now", Hold: true)),
            Ruled(study, "N06b", new("Warning", "heard by everybody")),
            Ruled(study, "N04a", new("Interlock", "in, last of all")),
            Ruled(study, "N06a", new("Countdown", Seconds(study, "N06a") is { } count ? $"at least {count} s, aloud" : "as long as the code in force says: ______ s, aloud")),
        ];
        if (study.Missing.Count == 0 && study.Flight.Apogee is { } apogee)
        {
            items.Add(new("Watched", $"apogee expected {Shown.Text(apogee.Time, Unit.Time, false)} after ignition, {Shown.Text(apogee.Height, Unit.Height, study.Rocket.Inch)} up; each canopy called out as it opens"));
        }

        return new("Launch", items.ToValueList(), "\"All pieces down.\" Or what was not seen.");
    }

    private static DayItem Back(Study study) => study.HasMotor && study.PeopleBack is [var (rules, row), ..]
        ? new("People back", $"{Shown.Text(row.People(complex: false)!.Value, Unit.Height, study.Rocket.Inch)} or more from the pad, eyes up", Hold: true) { Source = $"{rules.Name}, table of distances" }
        : new("People back", "as far as the code in force says: ______", Hold: true);

    private static DayList Misfire(Study study) => new(
        "Misfire, or off the rail again",
        [
            Ruled(study, "N05a", new("Hands off, interlock out", Seconds(study, "N05a") is { } wait ? $"key in hand; {wait} s on the watch after the last attempt" : "key in hand; wait as long as the code in force says: ______ s", Hold: true)),
            new("Smoke, or a partial burn", "treated as live; wait longer, fire watch"),
            new("One person goes", "from the side, never over the nose or in line with the nozzle"),
            Ruled(study, "T01", new("Clips off, igniter out", "igniter in hand", Hold: true)),
            .. Altimeters(study).Select(a => Ruled(study, "T01", new($"{a}: off again", "silent", Hold: true))),
            new("Shunts closed", "seen, each"),
            new("Lower the rail", "only now"),
        ],
        "\"Rocket is safe.\" Thunder: shelter, and 30 minutes after the last.")
    { Aside = true };

    private static DayList Recovery(Study study)
    {
        List<DayItem> items =
        [
            Ruled(study, "N13a", new("Where it lies", "not on a power line, not up a tall tree; otherwise leave it and ask")),
            new("Before touching", "looked at from the side, out of line with both ends; eyes and ears protected", Hold: true),
        ];
        items.AddRange(Altimeters(study).Select(a => new DayItem($"{a}: read, then off", "height ______; silent", Hold: true)));
        items.AddRange(study.Rocket.Separation.Charges.Select(c => new DayItem($"Charge {c.Name}: burnt", "fired, or shunted and its leads twisted together")));
        items.Add(new("Cells", "cool, not dented, not swollen; else outdoors on bare ground"));
        items.Add(new("What was seen", "written down: each event, height, damage"));
        return new("Recovery", items.ToValueList(), "\"Rocket is safe.\"") { Aside = true };
    }

    private static ValueList<string> Switches(Study study) =>
        study.Rocket.Shop.Holes.Holes.Where(h => h.Kind == HoleKind.Switch).Select(h => h.Row).Distinct().ToValueList();

    private static DayItem Ruled(Study study, string id, DayItem item) =>
        study.RuleInForce(id) is { } rule ? item with { Source = $"{rule.Set}, {rule.Number}" } : item;

    private static string? Seconds(Study study, string id) => study.RuleInForce(id)?.Bound is { Length: > 0 } seconds ? seconds : null;

    private static string Capital(string words) => words.Length == 0 ? words : $"{char.ToUpperInvariant(words[0])}{words[1..]}";

    private static string Settings(Study study, string altimeter) => string.Join("; ", study.Rocket.Firings.Where(f => f.Altimeter == altimeter).Select(f =>
        $"{f.Name.Split(": ")[^1]} {Trigger(f.Trigger, study.Rocket.Inch)}"));

    private static string Held(Study study, Joint joint)
    {
        if (study.Rocket.Separation.Of(joint.Forward) is { Pins: { } pins }) return string.Create(CultureInfo.InvariantCulture, $"{pins.Count} pins {pins.Name}, all in, joint does not turn");
        if (study.Rocket.Separation.Screws.FirstOrDefault(s => s.Joint == joint.Forward) is { } screws)
            return string.Create(CultureInfo.InvariantCulture, $"{screws.Count} screws {screws.Name}, all in and tight");
        return joint.Kind == JointKind.Bonded ? "bond whole, no crack" : "slides with the force measured";
    }
}
