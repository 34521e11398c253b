using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>How far the lists of a day are worked through.</summary>
/// <param name="Items">In the order of the lists.</param>
public sealed record DayProgress(ValueList<DayItemState> Items)
{
    /// <summary>
    /// Lays ticks over the lists. A tick counts only for the very words it was given for, on its own day; those of the evening before count on the
    /// next day too.
    /// </summary>
    /// <param name="lists">In the order of the day.</param>
    /// <param name="ticks">The latest of each item, by time.</param>
    /// <param name="today">The day it is.</param>
    public static DayProgress Of(ValueList<DayList> lists, IEnumerable<DayTick> ticks, DateOnly today)
    {
        var latest = ticks.GroupBy(t => t.Item).ToDictionary(g => g.Key, g => g.Last());
        return new(lists.SelectMany(l => l.Items.Select(i =>
        {
            var id = l.IdOf(i);
            var tick = latest.GetValueOrDefault(id) is { Done: true } t && t.Words == i.Words && (t.Day == today || (l.Eve && t.Day == today.AddDays(-1))) ? t : null;
            return new DayItemState(id, l, i, tick?.At);
        })).ToValueList());
    }

    /// <summary>The item with an id; null where there is none.</summary>
    /// <param name="id">As typed.</param>
    public DayItemState? Named(string id) => Items.FirstOrDefault(i => i.Id.Equals(id.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>
    /// The first hold that is not done and stands before an item: in its own list, and for a list of the day's course in the lists before it. Null
    /// where nothing holds it.
    /// </summary>
    /// <param name="item">One of the items.</param>
    /// <param name="also">Ids of holds taken for done, ticked in the same breath.</param>
    public DayItemState? HeldBy(DayItemState item, IReadOnlySet<string>? also = null)
    {
        foreach (var before in Items)
        {
            if (before.Id == item.Id) return null;
            if (before.List != item.List && (item.List.Aside || before.List.Aside)) continue;
            if (before is { Item.Hold: true, At: null } && also?.Contains(before.Id) != true) return before;
        }

        return null;
    }

    /// <summary>The first item of the day's course that is not done; null where all is.</summary>
    public DayItemState? Next => Items.FirstOrDefault(i => i.At is null && !i.List.Aside);

    /// <summary>Items of a list.</summary>
    public IEnumerable<DayItemState> In(DayList list) => Items.Where(i => i.List == list);
}

/// <summary>An item and whether it is done.</summary>
/// <param name="Id">List and item, such as arming/primary-on.</param>
/// <param name="List">Its list.</param>
/// <param name="Item">What is read and seen.</param>
/// <param name="At">When it was ticked; null where it was not.</param>
public sealed record DayItemState(string Id, DayList List, DayItem Item, DateTimeOffset? At);

/// <summary>A tick of an item, or that it was taken back.</summary>
/// <param name="Item">Id of the item.</param>
/// <param name="Words">The item's words as they were.</param>
/// <param name="Day">The local day.</param>
/// <param name="Done">Whether it was ticked; otherwise taken back.</param>
/// <param name="At">When.</param>
public sealed record DayTick(string Item, string Words, DateOnly Day, bool Done, DateTimeOffset At);
