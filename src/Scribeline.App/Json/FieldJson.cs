using Scribeline.Engine.Questions;

namespace Scribeline.App.Json;

/// <summary>The document of the field command. docs/json.md describes it.</summary>
internal sealed record FieldJson(int Format, string Kind, string Design, string File, IReadOnlyList<ConditionJson> Conditions, IReadOnlyList<DayItemJson> Items)
{
    /// <summary>The document for a day.</summary>
    public static FieldJson Of(Study study, string file, DayProgress progress) => new(
        JsonText.Format,
        "field",
        study.Rocket.Name,
        file,
        study.Missing.Count > 0 ? [] : [.. study.RuleChecks.Select(c => new ConditionJson(c.Id, c.Set, c.Number, c.Text, c.Source, c.Word, c.Compared, c.At))],
        [.. progress.Items.Select(i => new DayItemJson(i.Id, i.List.Phase, i.Item.Challenge, i.Item.Response, i.Item.Hold, i.Item.Source, i.At))]);
}

/// <summary>A condition and how it stands, in words; at is when a person confirmed it.</summary>
internal sealed record ConditionJson(string Id, string Rules, string Number, string Says, string Source, string Stands, string Compared, DateTimeOffset? At);

/// <summary>An item of a list; at is when it was ticked.</summary>
internal sealed record DayItemJson(string Id, string List, string Read, string Seen, bool Hold, string Source, DateTimeOffset? At);
