using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>Something in which a flight differs from the one as planned.</summary>
/// <param name="Time">s after ignition; of what does not happen, when it was planned.</param>
/// <param name="What">In words.</param>
/// <param name="Kind">In what way.</param>
/// <param name="Planned">s after ignition as planned; null for what is not in the plan.</param>
public sealed record FlightDifference(double Time, string What, FlightDifferenceKind Kind, double? Planned)
{
    // A tenth of a second is as fine as an altimeter acts and an eye follows.
    private const double Moved = 0.1;

    /// <summary>In what a flight differs, in order of time.</summary>
    /// <param name="planned">What happens as planned.</param>
    /// <param name="outcome">The flight.</param>
    public static ValueList<FlightDifference> Between(IReadOnlyList<FlightEvent> planned, FailureOutcome outcome)
    {
        // What came down in other pieces came down all the same: the landings tell of it.
        static bool Told(FlightEvent e) => e.Kind != FlightEventKind.Landing;
        var plan = ByName(planned);
        var flown = ByName(outcome.Flown);
        return outcome.Followed.Where(f => double.IsFinite(f.Time)).Select(f => new FlightDifference(f.Time, f.What, FlightDifferenceKind.Follows, null))
            .Concat(flown.Values.Where(e => Told(e) && !plan.ContainsKey(e.Name)).Select(e => new FlightDifference(e.Time, e.Name, FlightDifferenceKind.Added, null)))
            .Concat(flown.Values.Where(e => plan.TryGetValue(e.Name, out var p) && Math.Abs(e.Time - p.Time) > Moved).Select(e => new FlightDifference(e.Time, e.Name, FlightDifferenceKind.Moved, plan[e.Name].Time)))
            .Concat(plan.Values.Where(e => Told(e) && !flown.ContainsKey(e.Name)).Select(e => new FlightDifference(e.Time, e.Name, FlightDifferenceKind.Absent, e.Time)))
            .OrderBy(d => d.Time).ToValueList();
    }

    private static Dictionary<string, FlightEvent> ByName(IEnumerable<FlightEvent> events) => events.DistinctBy(e => e.Name).ToDictionary(e => e.Name, StringComparer.Ordinal);
}

/// <summary>In what way a flight differs from the plan.</summary>
public enum FlightDifferenceKind
{
    /// <summary>It follows from what fails.</summary>
    Follows,

    /// <summary>It is not in the plan.</summary>
    Added,

    /// <summary>It happens sooner or later than planned.</summary>
    Moved,

    /// <summary>It is planned and does not happen.</summary>
    Absent,
}
