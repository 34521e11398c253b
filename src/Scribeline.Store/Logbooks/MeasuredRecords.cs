using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <summary>Measured values of a logbook, given to a design as its records.</summary>
public static class MeasuredRecords
{
    /// <summary>The design with the logbook's values after its own, so that they count; and those that nothing in the design answers to.</summary>
    /// <param name="design">As typed.</param>
    /// <param name="measured">The latest value of everything measured.</param>
    public static (RocketDesign Design, ValueList<MeasuredValue> Strangers) AddTo(RocketDesign design, ValueList<MeasuredValue> measured)
    {
        if (measured.Count == 0) return (design, []);
        var known = DesignMeasures.Of(design);
        var records = design.Records ?? new RecordsDesign();
        var fitting = measured.Where(m => Fits(known, m)).ToArray();
        var added = records with { Measured = [.. records.Measured, .. fitting.Select(m => new MeasuredDesign { What = m.What, Value = m.Value, Date = $"{m.At:yyyy-MM-dd}" })] };
        return (fitting.Length == 0 ? design : design with { Records = added }, measured.Except(fitting).ToValueList());
    }

    private static bool Fits(ValueList<PlannedMeasure> known, MeasuredValue value) =>
        DesignMeasures.Find(known, value.What) is { } planned && planned.Read(value.Value).Good;
}
