using Scribeline.Engine.Design;
using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>A design with what was measured in place of what was planned.</summary>
/// <param name="Design">As built, as far as it was measured.</param>
/// <param name="Compared">Every measured value beside its plan, in the order they were recorded.</param>
public sealed record AsBuilt(RocketDesign Design, ValueList<Compared> Compared)
{
    /// <summary>Puts the measured values of a design's records in their places. Of several for one thing the last counts; what cannot be read is left out.</summary>
    /// <param name="design">As typed.</param>
    public static AsBuilt Of(RocketDesign design)
    {
        if (design.Records?.Measured is not { Count: > 0 } records) return new(design, []);
        var known = DesignMeasures.Of(design);
        Dictionary<string, Compared> latest = [];
        foreach (var record in records)
        {
            if (DesignMeasures.Find(known, record.What) is not { } planned || planned.Read(record.Value).Value is not { } measured) continue;

            // What was written into its place already is its own plan.
            if (planned.Plan is { Known: Basis.Measured } plan && plan.Si == measured.Si) continue;
            latest.Remove(planned.At);
            latest.Add(planned.At, new(planned, measured));
        }

        return new(DesignMeasures.With(design, latest.ToDictionary(l => l.Key, l => l.Value.Measured)), latest.Values.ToValueList());
    }

    /// <summary>The design as it was drawn: without anything measured or weighed under its records. Shots stay: they are no plan's measure.</summary>
    /// <param name="design">As typed.</param>
    public static RocketDesign Drawn(RocketDesign design) =>
        design with { Records = design.Records is { } records ? new() { Shots = records.Shots, ShotsCount = records.ShotsCount } : null };
}
