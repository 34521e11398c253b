using System.Collections.Concurrent;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Range;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Questions;

/// <content>Rules of the field.</content>
public sealed partial class Study
{
    private readonly ConcurrentDictionary<string, Lazy<Answer>> answered = new(StringComparer.Ordinal);
    private ValueList<RuleCheck>? ruleChecks;

    /// <summary>What persons have confirmed for this day, design and motor.</summary>
    public ValueList<Confirmation> Confirmed { get; init; } = [];

    /// <summary>Every condition of the rules the site names, in the order of their tables, then the site's own. Only where nothing is <see cref="Missing"/>.</summary>
    public ValueList<RuleCheck> RuleChecks => LazyInitializer.EnsureInitialized(ref ruleChecks, CheckRules);

    /// <summary>Bodies of rules the site names, in its order.</summary>
    public IEnumerable<RuleSet> RuleSets => dayOrNull is null ? [] : Day.Site.Rules.Select(RuleSet.Find).OfType<RuleSet>().Distinct();

    /// <summary>A condition, where the site names the rules it belongs to; null otherwise.</summary>
    /// <param name="id">Of the condition.</param>
    public Rule? RuleInForce(string id) => Rule.Find(id) is { } rule && RuleSets.Contains(rule.Rules) ? rule : null;

    /// <summary>
    /// How far people stand back by every table of distances the site's rules have, farthest first; those whose table ends below this motor are left out.
    /// </summary>
    public ValueList<(RuleSet Rules, SafeDistance Row)> PeopleBack => RuleSets
        .Select(s => (Rules: s, Row: SafeDistance.Of(s.Distances, Motor.Curve.TotalImpulse))).Where(x => x.Row is not null)
        .Select(x => (x.Rules, x.Row!)).OrderByDescending(x => x.Item2.PeopleFeet).ToValueList();

    /// <summary>Works an answer out once; whoever asks again gets the same.</summary>
    internal Answer Once(Question question, Func<Study, Answer> work) =>
        answered.GetOrAdd(question.Id, static (_, ask) => new(() => ask.work(ask.study)), (study: this, work)).Value;

    private ValueList<RuleCheck> CheckRules()
    {
        var facts = new RuleFacts(this);
        var sets = RuleSets.Select(s => s.Name).ToHashSet();
        return
        [
            .. Rule.All.Where(r => sets.Contains(r.Set)).Select(r => Check(r, facts)),
            .. Day.Site.OwnConditions.Select((words, i) => ByPerson(new(
                string.Create(System.Globalization.CultureInfo.InvariantCulture, $"O{i + 1}"), Day.Site.Name, "own", words, $"own conditions of {Day.Site.Name}", RuleState.ToConfirm, "") { Ahead = false })),
        ];
    }

    private RuleCheck Check(Rule rule, RuleFacts facts)
    {
        var check = new RuleCheck(rule.Id, rule.Set, rule.Number, rule.Text, rule.Source, RuleState.NotApplying, "") { Ahead = rule.Ahead };
        var words = rule.Judged.Split(' ', 2);
        if (facts.Applies(rule.When) is not { } applies) return check with { State = RuleState.Missing, Missing = RuleFacts.MissingFor(rule.When) };
        if (!applies) return check;
        if (words[0] is "person" or "told")
        {
            var help = facts.Help(words.Length > 1 ? words[1] : "");
            return words[0] == "told" ? check with { State = RuleState.Told, Compared = help } : ByPerson(check with { Compared = help });
        }

        var optional = rule.Judged.EndsWith('?');
        var fact = facts.Of(rule.Judged.TrimEnd('?'), rule.AtLeast);
        var bound = facts.Bound(rule, fact.Unit);
        var needed = bound.Value is { } b ? $"{(rule.AtLeast ? "at least" : "at most")} {Shown.Text(b, fact.Unit, Rocket.Inch)}{(bound.Name.Length > 0 ? $" ({bound.Name})" : "")}" : "";
        if (fact.Value is not { } value) return optional ? ByPerson(check with { Compared = needed }) : check with { State = RuleState.Missing, Missing = fact.Missing, Compared = needed };
        if (bound.Value is not { } limit) return check with { State = RuleState.Missing, Missing = bound.Missing, Compared = $"{fact.Name} {Shown.Text(value, fact.Unit, Rocket.Inch)}" };
        value = RuleBounds.Snap(value, limit);
        var judged = Finding.Of($"{rule.Id} {fact.Name}", value, fact.Unit, new Limit($"rules.{rule.Id}", limit, rule.AtLeast ? Sense.AtLeast : Sense.AtMost, 0, rule.Must, rule.Source));
        return check with
        {
            State = judged.Limit!.IsMetBy(value) ? RuleState.Met : RuleState.NotMet,
            Compared = $"{fact.Name} {Shown.Text(value, fact.Unit, Rocket.Inch)}, {needed}",
            Finding = judged,
        };
    }

    private RuleCheck ByPerson(RuleCheck check) => Confirmed.LastOrDefault(c => c.Rule == check.Id) is { } word
        ? check with { State = RuleState.Confirmed, At = word.At }
        : check with { State = RuleState.ToConfirm };
}
