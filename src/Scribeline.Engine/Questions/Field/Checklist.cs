namespace Scribeline.Engine.Questions.Field;

/// <summary>What do I do on the day? The lists by phase, built from the design, with hold points.</summary>
public sealed class Checklist() : Question("checklist", "What do I do on the day?", Place.Field)
{
    /// <inheritdoc/>
    public override bool HasSpread => false;

    /// <inheritdoc/>
    protected override bool NeedsFlight => false;

    /// <inheritdoc/>
    protected override Answer Work(Study study)
    {
        var draft = new Draft(this, study);
        draft.RestsOn(study.MassBasis);
        foreach (var missing in study.Missing) draft.Miss(missing);
        if (study.Missing.Count == 0 && study.RuleInForce("N05a") is null) draft.Miss("site: rules: a safety code that says how long a misfire waits, such as NAR high power 2012; or write the time into the list by hand");
        if (study.HasMotor && study.Missing.Count == 0 && study.PeopleBack.Count == 0) draft.Miss("site: rules: a safety code with a table of distances, such as NAR high power 2012; or write the distance into the list by hand");
        var lists = LaunchDay.Of(study);
        draft.Find("lists", lists.Count, Unit.Count);
        draft.Find("items", lists.Sum(l => l.Items.Count), Unit.Count);
        draft.Find("of them holds", lists.Sum(l => l.Items.Count(i => i.Hold)), Unit.Count);
        foreach (var list in lists)
        {
            draft.List(() => new(
                list.Phase,
                [new("hold"), new("read"), new("seen and said"), new("from")],
                [.. list.Items.Select(i => TableRow.Of(null, i.Hold ? "HOLD" : "", i.Challenge, i.Response, i.Source)), TableRow.Of(null, "", "said at the end", list.Closing, "")]));
        }

        draft.Note("One reads, another looks, touches and says what is seen. At HOLD nothing goes on until it is so. After an interruption begin the list again. Without a source an item is common practice.");
        draft.Note(Cautions.Pad);
        draft.Note(Cautions.Recovery);
        draft.Note(Cautions.Everything);
        return draft.Done();
    }
}
