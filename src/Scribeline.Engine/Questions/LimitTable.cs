using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Questions;

/// <summary>Every limit a question judges by: the table's, or the builder's own from the design file.</summary>
/// <param name="Own">Limits the design overrides, by id.</param>
public sealed record LimitTable(ValueList<OwnLimit> Own)
{
    private static readonly Dictionary<string, Limit> Standard = LimitRow.All.ToDictionary(
        r => r.Id, r => new Limit(r.Id, r.Value, r.AtLeast ? Sense.AtLeast : Sense.AtMost, r.Guard, r.Must, r.Source));

    /// <summary>The limit with this id.</summary>
    /// <exception cref="KeyNotFoundException">No question has such a limit: a bug.</exception>
    public Limit this[string id]
    {
        get
        {
            var standard = Standard[id];
            foreach (var own in Own)
            {
                if (own.Id == id) return standard with { Value = own.Value, Source = "the design file, in place of: " + standard.Source };
            }

            return standard;
        }
    }
}
