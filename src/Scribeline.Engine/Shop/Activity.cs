namespace Scribeline.Engine.Shop;

/// <summary>Something that takes time: work of hands, or a wait such as a cure.</summary>
/// <param name="Id">Unique in its network.</param>
/// <param name="Duration">s, 0 or more.</param>
/// <param name="HandsOn">Whether a person works at it; otherwise it goes on by itself, also at night.</param>
/// <param name="Sitting">Works of one sitting follow each other without a break, since something sets or dirties; null for work that can be left at any time.</param>
public sealed record Activity(string Id, double Duration, bool HandsOn = true, string? Sitting = null);

/// <summary>One activity must be finished before another begins.</summary>
/// <param name="Before">Id of the first.</param>
/// <param name="After">Id of the second.</param>
/// <param name="Hard">Whether physics or safety asks for it; otherwise it is the better order, and gives way where it cannot be kept.</param>
/// <param name="Reason">Why, in plain words.</param>
public sealed record Precedence(string Before, string After, bool Hard = true, string Reason = "");

/// <summary>When an activity can and must happen, s from the beginning.</summary>
/// <param name="Activity">Which.</param>
/// <param name="EarlyStart">When all before it can be done.</param>
/// <param name="LateFinish">When all after it can still be done in time.</param>
public sealed record ActivityTimes(Activity Activity, double EarlyStart, double LateFinish)
{
    /// <summary>s.</summary>
    public double EarlyFinish => EarlyStart + Activity.Duration;

    /// <summary>s.</summary>
    public double LateStart => LateFinish - Activity.Duration;

    /// <summary>How much later it may start without the whole ending later, s.</summary>
    public double Float => LateStart - EarlyStart;
}
