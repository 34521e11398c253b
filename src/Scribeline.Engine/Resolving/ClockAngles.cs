using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>Clock angles written out.</summary>
internal static class ClockAngles
{
    /// <summary>Every angle of the rules typed, rad; empty where none is typed.</summary>
    public static ValueList<double> Of(ValueList<ClockPattern> patterns, Func<IMeasure, double> draw) => patterns.SelectMany(p =>
    {
        var from = p.From is { } typed ? draw(typed) : 0;
        return Even(Math.Max(p.Share, 1), from);
    }).ToValueList();

    /// <summary>Evenly round from a first one, rad.</summary>
    public static IEnumerable<double> Even(int count, double first) => Enumerable.Range(0, count).Select(i => first + (2 * Math.PI * i / count));
}
