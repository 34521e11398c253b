using System.Globalization;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Range;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Questions;

/// <summary>A value that a condition is about.</summary>
/// <param name="Name">In plain words.</param>
/// <param name="Unit">What it measures.</param>
/// <param name="Value">SI; null where it is not known.</param>
/// <param name="Missing">What to type where it is not.</param>
internal sealed record RuleFact(string Name, Unit Unit, double? Value, string Missing = "");

/// <summary>What conditions compare, taken from the study: by the words of the table of rules.</summary>
/// <param name="study">A study of which nothing is missing.</param>
internal sealed class RuleFacts(Study study)
{
    private double Impulse => study.Motor.Curve.TotalImpulse;

    private bool Inch => study.Rocket.Inch;

    private double Apogee => study.Flight.Apogee?.Height ?? 0;

    private double Drift => study.Flight.Landings.Select(l => Math.Sqrt((l.East * l.East) + (l.North * l.North))).DefaultIfEmpty(0).Max();

    private double? Wind => study.WindIsKnown ? Math.Max(study.WindAt(10), study.Day.Gust ?? 0) : null;

    /// <summary>The value a condition compares.</summary>
    /// <param name="judged">Word of the table.</param>
    /// <param name="atLeast">Whether the least of several counts, otherwise the greatest.</param>
    public RuleFact Of(string judged, bool atLeast)
    {
        var site = study.Day.Site;
        return judged switch
        {
            "impulse" => new("total impulse installed", Unit.Impulse, Impulse),
            "apogee" => new("expected height", Unit.Height, Apogee),
            "thrust over weight" => new("average thrust over weight", Unit.Ratio, study.Motor.Curve.AverageThrust / (study.LoadedMass * study.Gravity)),
            "tilt" => new("tilt of the rail", Unit.Angle, (Math.PI / 2) - study.Day.Rail.Elevation),
            "wind" => new("wind at 10 m, or its gusts", Unit.Speed, Wind, "weather: wind speed and wind from"),
            "rail exit" => new("speed when the last guide leaves the rail", Unit.Speed, study.Flight.RailExit?.Aft.Speed ?? 0),
            "margin" => new("least static margin", Unit.Calibre, study.FreeAscent.Count == 0 ? 0 : study.FreeAscent.Min(s => s.StaticMargin)),
            "exit margin" => new("static margin leaving the rail", Unit.Calibre, study.FreeAscent.Count == 0 ? 0 : study.FreeAscent[0].StaticMargin),
            "people" => Far("nearest people", site.People, "people"),
            "outsiders" => Far("nearest people and property not taking part", site.Outsiders, "outsiders"),
            "building" => Far("nearest occupied building", site.Building, "building"),
            "highway" => Far("nearest public highway", site.Highway, "highway"),
            "boundary" => Far("nearest edge of the site", site.Edge, "edge"),
            "airport" => Far("nearest airport boundary", site.Airport, "airport"),
            "cleared" => Far("diameter cleared round the pad", site.Cleared, "cleared"),
            "shortest side" => new("shortest side of the site", Unit.Height, study.Day.ShortestSide, "site: shortest side"),
            "cloud cover" => new("share of the sky that clouds cover", Unit.Share, study.Day.Sky.Cover, "weather: cloud cover"),
            "cloud base" => new("lowest cloud", Unit.Height, study.Day.Sky.Base, "weather: cloud base"),
            "visibility" => new("level visibility", Unit.Height, study.Day.Sky.Visibility, "weather: visibility"),
            "drift" => new("landing from the pad, as planned", Unit.Height, Drift),
            "energy" => new("greatest energy at landing", Unit.Energy, Greatest("lands-soft", "lands-soft.energy"), "what question lands-soft asks for"),
            "drogue rate" => new("descent rate after the first event", Unit.Speed, Greatest("descends", "descends.drogue-most"), "what question descends asks for"),
            "main height" => new("height at which the main is fired", Unit.Height, Most(study.Rocket.Firings.Select(f => f.Trigger).OfType<DescendingThrough>().Select(d => d.Height), atLeast), "firing: descending through"),
            "apogee delay" => new("delay after apogee", Unit.Time, Most(study.Rocket.Firings.Select(f => f.Trigger).OfType<AtApogee>().Select(a => a.Delay), atLeast), "firing: apogee"),
            _ => throw new InvalidOperationException($"No rule can compare \"{judged}\"."),
        };
    }

    /// <summary>A bound in the unit of the value, with what to type where it is not known.</summary>
    public RuleFact Bound(Rule rule, Unit unit)
    {
        if (double.TryParse(rule.Bound, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)) return new("", unit, number);
        var row = SafeDistance.Of(rule.Rules.Distances, Impulse);
        return rule.Bound switch
        {
            "apogee" => new("the expected height", unit, Apogee),
            "ceiling" => new("the ceiling of the site", unit, study.Ceiling, "site: ceiling"),
            "half of the ceiling" => new("half of the ceiling, at least 1500 ft", unit, study.Ceiling is { } ceiling ? RuleBounds.Side(ceiling) : null, "site: ceiling"),
            "a quarter of the apogee" => new("a quarter of the expected height, at least 1500 ft", unit, RuleBounds.Outsiders(Apogee)),
            "table" => new("the table", unit, row?.People(complex: false), Beyond(rule)),
            "table cleared" => new("the table", unit, row?.Cleared, Beyond(rule)),
            "several at once" => new("three or more at once", unit, row?.People(true) is { } complex && row.People(false) is { } ordinary ? RuleBounds.Several(complex, ordinary, Apogee) : null, Beyond(rule)),
            "side by height" => new("the code's table", unit, RuleBounds.SideByHeight(Apogee), "nothing: above 12 000 ft the code decides each case; ask its association"),
            _ => new("the limit of this program", unit, study.Limits[rule.Bound].Value),
        };
    }

    /// <summary>Whether a condition holds for this rocket on this day; null where that is not known.</summary>
    public bool? Applies(string when) => when switch
    {
        "" or "not class 1" => true,
        "class 2" => Impulse <= RuleClass.MostImpulse,
        "class 3" => Impulse > RuleClass.MostImpulse,
        "level 3" => RuleClass.Level(Impulse) is not (1 or 2),
        "light" => Light,
        "not light" => !Light,
        "windy" => Wind is { } wind ? wind > 2.2352 : null,
        "several" => study.Day.Site.AtOnce is { } count ? count >= 3 : null,
        _ => throw new InvalidOperationException($"No rule can hold \"{when}\"."),
    };

    /// <summary>What to type where it is not known whether a condition holds.</summary>
    public static string MissingFor(string when) => when == "windy" ? "weather: wind speed and wind from" : "site: rockets at once";

    /// <summary>What helps a person to judge, in words; empty for nothing.</summary>
    /// <param name="fact">Word of the table.</param>
    public string Help(string fact) => fact switch
    {
        "" => "",
        "level" => $"{study.Motor.Name}: {(study.Motor.Class is { } c ? $"class {c.Letter}, " : "")}{(RuleClass.Level(Impulse) is { } level ? $"level {level} or higher" : "above every level")}",
        "motor" => $"{study.Motor.Name}, {Shown.Text(Impulse, Unit.Impulse, Inch)}",
        "class" => RuleClass.MayBeClass1(study.Motor.PropellantMass, study.LoadedMass)
            ? "light enough; taken for Class 2 until a person finds its materials to be those of Class 1"
            : $"{Shown.Text(study.Motor.PropellantMass, Unit.Mass, Inch)} of propellant, {Shown.Text(study.LoadedMass, Unit.Mass, Inch)} at lift-off: Class {(Impulse > RuleClass.MostImpulse ? 3 : 2)}",
        "propellant" => $"{Shown.Text(study.Motor.PropellantMass, Unit.Mass, Inch)} of propellant",
        "apogee" => $"expected height {Shown.Text(Apogee, Unit.Height, Inch)} above the pad",
        "drift" => $"comes down {Shown.Text(Drift, Unit.Height, Inch)} from the pad, as planned; what may fail comes down elsewhere",
        "landing" => string.Join(", ", new[] { ("descends", "descends.landing", "at most"), ("lands-soft", "lands-soft.energy", "at most") }.Select(x => Landing(x.Item1, x.Item2)).OfType<string>()),
        "sparks" => SafeDistance.Of("NAR high power 2012", Impulse)?.Cleared is { } cleared ? $"for such a motor {Shown.Text(RuleBounds.SparksCleared(cleared), Unit.Height, Inch)} across" : "",
        _ => throw new InvalidOperationException($"No rule can tell \"{fact}\"."),
    };

    private bool Light => RuleClass.IsLight(Impulse, study.LoadedMass, Apogee);

    private static RuleFact Far(string name, double? distance, string key) => new(name, Unit.Height, distance, $"site: distances: {key}");

    private string Beyond(Rule rule) => rule.Rules.Distances.Length == 0 ? "nothing: this code's table of distances is not in this program" : $"nothing: the table ends below {Shown.Text(Impulse, Unit.Impulse, Inch)}";

    private static double? Most(IEnumerable<double> values, bool least) => values.Cast<double?>().DefaultIfEmpty(null).Aggregate((a, b) => least ? Math.Min(a!.Value, b!.Value) : Math.Max(a!.Value, b!.Value));

    private double? Greatest(string question, string limit) => Judged(question, limit) is [_, ..] found ? found.Max(f => f.Value) : null;

    private string? Landing(string question, string limit) => Judged(question, limit) is [{ } first, ..] found ? $"at most {Shown.Text(found.Max(f => f.Value), first.Unit, Inch)}" : null;

    private Finding[] Judged(string question, string limit) => [.. Questionnaire.Named(question)!.Ask(study).Findings.Where(f => f.Limit?.Id == limit && double.IsFinite(f.Value))];
}
