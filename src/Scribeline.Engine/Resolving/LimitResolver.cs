using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;
using UnitsNet;

namespace Scribeline.Engine.Resolving;

/// <summary>Reads the builder's own limits in the unit of the limit each replaces.</summary>
internal static class LimitResolver
{
    /// <summary>The limits that could be read; problems for the rest.</summary>
    public static ValueList<OwnLimit> Resolve(ValueList<LimitDesign> limits, List<Problem> problems)
    {
        List<OwnLimit> own = [];
        foreach (var limit in limits)
        {
            if (LimitRow.All.FirstOrDefault(r => r.Id == limit.Id) is not { } row)
            {
                problems.Add(new Problem(limit.At, $"There is no limit {limit.Id}.", $"Limits are: {string.Join(", ", LimitRow.All.Select(r => r.Id))}."));
            }
            else if (row.Unit switch
            {
                "m" => Read<Length>(limit, problems),
                "rad" => Read<Angle>(limit, problems),
                "m/s" => Read<Speed>(limit, problems),
                "K" => Read<Temperature>(limit, problems),
                "J" => Read<Energy>(limit, problems),
                "kg/m³" => Read<Density>(limit, problems),
                _ => Read<Ratio>(limit, problems),
            } is { } value)
            {
                own.Add(new OwnLimit(limit.Id, value));
            }
        }

        return own.ToValueList();
    }

    private static double? Read<TQuantity>(LimitDesign limit, List<Problem> problems)
        where TQuantity : struct, IQuantity
    {
        var reading = Measure.Read<TQuantity>(limit.Text, at: limit.At);
        if (reading.Good) return reading.Value.Si;
        problems.Add(new Problem(limit.At, reading.Problem.Message, reading.Problem.Suggestion));
        return null;
    }
}
