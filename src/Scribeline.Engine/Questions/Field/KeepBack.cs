using Scribeline.Engine.Quantities;
using Scribeline.Engine.Range;
using Scribeline.Engine.Tables;
using static System.Math;

namespace Scribeline.Engine.Questions.Field;

/// <summary>How far back must people stand? Distances of the tables for the installed total impulse, beside those of the site.</summary>
public sealed class KeepBack() : Question("keep-back", "How far back must people stand?", Place.Field)
{
    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.Motor.Basis);
        var w = draft.Working;
        var site = study.Day.Site;
        var I = w.Given("I", study.Motor.Curve.TotalImpulse, "N·s", "total impulse of all motors installed", "thrust table");
        var h = w.Simulated("h", study.Flight.Apogee?.Height ?? 0, "m", "greatest height expected above the pad", "question how-high");
        People(draft, study, I, h);
        Outside(draft, study, h);
        Far(draft, study, "building", site.Building, "nearest occupied building", "N11a");
        Far(draft, study, "highway", site.Highway, "nearest public highway", "N11b");
        Far(draft, study, "airport", site.Airport, "nearest airport boundary", "F13");
        if (study.RuleInForce("N10a") is { } rule) Side(draft, study, rule, I, h);
        draft.Note("Distances are the minimum of the table named. More is needed for unproven, complex or unusual rockets.");
        draft.Note(Cautions.Everything);
        return draft.Done();
    }

    // Of several codes the strictest counts.
    private static void People(Draft draft, Study study, double impulse, double height)
    {
        var w = draft.Working;
        var site = study.Day.Site;
        if (study.PeopleBack is not [var (rules, row), ..])
        {
            var named = study.RuleSets.Where(s => s.Kind == RuleKind.SafetyCode || s.Distances.Length > 0).Select(s => s.Name).ToArray();
            draft.Miss(named.Length == 0 ? "site: rules: a safety code with a table of distances, such as NAR high power 2012"
                : $"the distance for {Shown.Text(impulse, Unit.Impulse, study.Rocket.Inch)}: no table of {string.Join(" or ", named)} in this program reaches it; ask the range safety officer");
            return;
        }

        var D = w.Given("D", row.People(complex: false)!.Value, "m", $"people, one motor, row {row.Class}", row.Source);
        double? C = row.People(complex: true) is { } complex ? w.Given("C", complex, "m", $"people, several stages or motors, row {row.Class}", row.Source) : null;
        Limit Needed(double value, string source) => new("keep-back.people", value, Sense.AtLeast, 0, Must: true, source);
        draft.Find("people back, by the table", D, Unit.Height);
        if (site.People is { } people) draft.Find("people at the site", RuleBounds.Snap(people, D), Unit.Height, Needed(D, $"{rules.Name}: {row.Source}"));
        else draft.Miss("site: distances: people: how far the nearest people stand from the pad");
        if (C is { } c) draft.Find("people back, were it of several stages or motors", c, Unit.Height);
        if (site.AtOnce >= 3 && C is { } several && study.RuleInForce("N06g") is { } rule)
        {
            var B = w.Given("B", several, "m", "complex distance of the table", row.Source);
            var T = w.Given("T", RuleBounds.TwoThousandFeet, "m", "2000 ft", rule.Source);
            var S = w.StepOf("S", Max(D, Min(Min(2 * B, T), 1.5 * height)), "m", "people back, three or more at once", rule.Source, [("height", "h")]);
            draft.Find("people back, three or more at once", S, Unit.Height);
            if (site.People is { } near) draft.Find("people at the site, three or more at once", RuleBounds.Snap(near, S), Unit.Height, Needed(S, rule.Source));
        }

        Cleared(draft, study);
        draft.List(() => new(
            "Tables of the rules in force",
            [new("table"), new("row"), new("people", Unit.Height), new("several stages or motors", Unit.Height), new("cleared, across", Unit.Height), new("source")],
            study.PeopleBack.Select(p => TableRow.Of(null, p.Rules.Name, $"{p.Row.Class}, to {Shown.Text(p.Row.To, Unit.Impulse, study.Rocket.Inch)}", p.Row.People(false), p.Row.People(true), p.Row.Cleared, p.Row.Source)).ToValueList()));
    }

    private static void Cleared(Draft draft, Study study)
    {
        if (study.PeopleBack.FirstOrDefault(p => p.Row.Cleared is not null) is not { Row: { } row }) return;
        var A = draft.Working.Given("A", row.Cleared!.Value, "m", $"diameter to clear, row {row.Class}", row.Source);
        draft.Find("cleared round the pad, by the table", A, Unit.Height);
        if (study.Day.Site.Cleared is { } cleared) draft.Find("cleared at the site", RuleBounds.Snap(cleared, A), Unit.Height, new Limit("keep-back.cleared", A, Sense.AtLeast, 0, Must: true, row.Source));
        else draft.Miss("site: distances: cleared: diameter cleared of what burns round the pad");
    }

    private static void Outside(Draft draft, Study study, double h)
    {
        if (study.RuleInForce("F15") is not { } rule) return;
        var Q = draft.Working.Given("Q", RuleBounds.FifteenHundredFeet, "m", "1500 ft", rule.Source);
        var O = draft.Working.Step("O", Max(h / 4, Q), "m", "people and property not taking part, at least", rule.Source);
        draft.Find("people and property not taking part, at least", O, Unit.Height);
        if (study.Day.Site.Outsiders is { } outsiders) draft.Find("people and property not taking part, at the site", RuleBounds.Snap(outsiders, O), Unit.Height, new Limit("keep-back.outsiders", O, Sense.AtLeast, 0, Must: true, rule.Source));
        else draft.Miss("site: distances: outsiders: how far people and property that do not take part are from the pad");
    }

    private static void Far(Draft draft, Study study, string key, double? distance, string name, string id)
    {
        if (study.RuleChecks.FirstOrDefault(c => c.Id == id) is not { } check) return;
        if (distance is null) draft.Miss($"site: distances: {key}: how far the {name} is from the pad");
        else draft.Find(name, check.Finding!.Value, Unit.Height, check.Finding.Limit);
    }

    private static void Side(Draft draft, Study study, Rule rule, double impulse, double height)
    {
        if (RuleClass.IsLight(impulse, study.LoadedMass, height))
        {
            Judged(draft, study, study.RuleChecks.First(c => c.Id == "N10b").Finding?.Limit);
            return;
        }

        if (study.Ceiling is not { } ceiling)
        {
            draft.Miss("site: ceiling: the height allowed there, by which the site's least side goes");
            return;
        }

        var a = draft.Working.Given("a", ceiling, "m", "height allowed at the site", "site");
        var q = draft.Working.Given("q", RuleBounds.FifteenHundredFeet, "m", "1500 ft", rule.Source);
        var W = draft.Working.Step("W", Max(a / 2, q), "m", "least side of the site", rule.Source);
        draft.Find("least side of the site, by the code", W, Unit.Height);
        Judged(draft, study, new Limit("keep-back.side", W, Sense.AtLeast, 0, Must: true, rule.Source));
    }

    private static void Judged(Draft draft, Study study, Limit? limit)
    {
        if (study.Day.ShortestSide is { } side) draft.Find("shortest side of the site", limit is null ? side : RuleBounds.Snap(side, limit.Value), Unit.Height, limit);
        else draft.Miss("site: shortest side");
    }
}
