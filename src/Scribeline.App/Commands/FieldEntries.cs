using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Commands;

/// <summary>What a person says at the field, checked before any of it is kept: conditions confirmed and items ticked off.</summary>
/// <param name="study">The rocket on its day.</param>
/// <param name="basis">What confirmations are given for; null where that cannot be told.</param>
/// <param name="now">The local time it is.</param>
internal sealed class FieldEntries(Study study, FlightBasis? basis, DateTimeOffset now)
{
    private DateOnly Today => DateOnly.FromDateTime(now.DateTime);

    /// <summary>What stands confirmed today for a design as it is.</summary>
    /// <param name="book">Its logbook.</param>
    /// <param name="basis">What it must have been given for; null where that cannot be told.</param>
    /// <param name="today">The local day.</param>
    public static Logged<ValueList<Confirmation>> Confirmed(Logbook book, FlightBasis? basis, DateOnly today)
    {
        if (basis is null) return new([]);
        var (ahead, day) = (book.Confirmed(today, basis.Ahead), book.Confirmed(today, basis.OnTheDay));
        return ahead.Problem is not null ? ahead : day.Problem is not null ? day
            : new([.. ahead.Value!.Where(c => IsAhead(c.Rule)), .. day.Value!.Where(c => !IsAhead(c.Rule))]);
    }

    /// <summary>How far the lists of the day are.</summary>
    public DayProgress Progress(Logbook? book, List<Problem> problems) =>
        DayProgress.Of(LaunchDay.Of(study), book is null ? [] : Read(book.Checked(Today.AddDays(-1)), problems) ?? [], Today);

    /// <summary>Keeps confirmations, or takes them back. Only what a person has to judge can be confirmed.</summary>
    public void Confirm(Logbook book, IReadOnlyList<string> given, IReadOnlyList<string> withdrawn, List<Problem> problems)
    {
        if (given.Count + withdrawn.Count == 0) return;
        if (study.Missing.Count > 0 || basis is null)
        {
            problems.Add(new("", "Nothing can be confirmed before the flight is known.", study.Missing.Count > 0 ? $"Type {study.Missing[0]}." : "Look whether the files the design names are there."));
            return;
        }

        var (yes, no) = (given.Select(g => Meant(g, problems)).OfType<RuleCheck>().ToList(), withdrawn.Select(g => Meant(g, problems)).OfType<RuleCheck>().ToList());
        if (problems.Count > 0) return;
        foreach (var check in no) Read(book.Confirm(check.Id, Today, basis.For(check.Ahead), false, now), problems);
        foreach (var check in yes) Read(book.Confirm(check.Id, Today, basis.For(check.Ahead), true, now), problems);
    }

    /// <summary>Ticks items off, unless a hold stands before them, and takes ticks back.</summary>
    public void Tick(Logbook book, IReadOnlyList<string> done, IReadOnlyList<string> undo, List<Problem> problems)
    {
        if (done.Count + undo.Count == 0) return;
        var progress = Progress(book, problems);
        var (ticked, taken) = (done.Select(d => Item(progress, d, problems)).OfType<DayItemState>().ToList(), undo.Select(u => Item(progress, u, problems)).OfType<DayItemState>().ToList());
        var also = ticked.Select(t => t.Id).Except(taken.Select(t => t.Id)).ToHashSet();
        foreach (var item in ticked)
        {
            if (progress.HeldBy(item, also) is { } hold) problems.Add(new("", $"{item.Id} waits for a hold: {hold.Id}, \"{hold.Item.Challenge}: {hold.Item.Response}\".", "Do and tick that first."));
        }

        if (problems.Count > 0) return;
        Read(book.Check([.. taken.Select(t => (t.Id, t.Item.Words))], Today, false, now), problems);
        Read(book.Check([.. ticked.Select(t => (t.Id, t.Item.Words))], Today, true, now), problems);
    }

    /// <summary>Begins lists again: every tick in them is taken back. "all" begins the whole day again.</summary>
    public void Again(Logbook book, IReadOnlyList<string> lists, List<Problem> problems)
    {
        if (lists.Count == 0) return;
        var progress = Progress(book, problems);
        List<DayItemState> taken = [];
        foreach (var name in lists)
        {
            var items = progress.Items.Where(i => name.Trim() == "all" || i.List.Id == name.Trim()).ToArray();
            if (items.Length == 0) problems.Add(new("", $"There is no list '{name}'.", $"Lists are {string.Join(", ", progress.Items.Select(i => i.List.Id).Distinct())}, or all."));
            taken.AddRange(items.Where(i => i.At is not null));
        }

        if (problems.Count == 0) Read(book.Check([.. taken.Select(t => (t.Id, t.Item.Words))], Today, false, now), problems);
    }

    // The site's own conditions hold for the day.
    private static bool IsAhead(string rule) => Engine.Tables.Rule.Find(rule)?.Ahead ?? false;

    private RuleCheck? Meant(string typed, List<Problem> problems)
    {
        if (study.RuleChecks.FirstOrDefault(c => c.Id.Equals(typed.Trim(), StringComparison.OrdinalIgnoreCase)) is not { } check)
        {
            problems.Add(new("", $"There is no condition '{typed}' in the rules of this site.", Spelling.Nearest(typed, study.RuleChecks.Select(c => c.Id)) is { } near ? $"Did you mean {near}?" : "They are listed with --all."));
            return null;
        }

        if (check.ByPerson) return check;
        problems.Add(new("", $"{check.Id} is not for a person to confirm: {check.Word}.", check.Compared.Length > 0 ? $"It compares {check.Compared}." : check.Missing.Length > 0 ? $"Type {check.Missing}." : ""));
        return null;
    }

    private static DayItemState? Item(DayProgress progress, string typed, List<Problem> problems)
    {
        if (progress.Named(typed) is { } item) return item;
        problems.Add(new("", $"There is no item '{typed}'.", Spelling.Nearest(typed, progress.Items.Select(i => i.Id)) is { } near ? $"Did you mean {near}?" : "Items are listed with --all."));
        return null;
    }

    private static T? Read<T>(Logged<T> logged, List<Problem> problems)
        where T : class
    {
        if (logged.Problem is { } problem) problems.Add(problem);
        return logged.Value;
    }
}
