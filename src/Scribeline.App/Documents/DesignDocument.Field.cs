using Scribeline.App.Commands;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Documents;

/// <content>What is confirmed and ticked off at the field, in the logbook beside it.</content>
public sealed partial class DesignDocument
{
    private DateOnly asked;

    /// <summary>How far the lists of the day are for a study of it.</summary>
    /// <param name="study">A study of the design.</param>
    /// <param name="now">The local time it is.</param>
    public DayProgress DayProgress(Study study, DateTimeOffset now) =>
        Engine.Questions.DayProgress.Of(LaunchDay.Of(study), journal.Read(b => b.Checked(DateOnly.FromDateTime(now.DateTime).AddDays(-1))) ?? [], DateOnly.FromDateTime(now.DateTime));

    /// <summary>Ticks off an item of the day's lists, or takes that back.</summary>
    /// <returns>Why not; empty where it was kept.</returns>
    public ValueList<Problem> Check(Study study, string item, bool done, DateTimeOffset now) =>
        AtTheField(study, now, (entries, book, problems) => entries.Tick(book, done ? [item] : [], done ? [] : [item], problems));

    /// <summary>Begins a list again.</summary>
    /// <returns>Why not; empty where it was kept.</returns>
    public ValueList<Problem> Again(Study study, string list, DateTimeOffset now) =>
        AtTheField(study, now, (entries, book, problems) => entries.Again(book, [list], problems));

    /// <summary>Keeps that a person confirmed a condition, or took that back; the answers follow.</summary>
    /// <returns>Why not; empty where it was kept.</returns>
    public ValueList<Problem> Confirm(Study study, string rule, bool given, DateTimeOffset now)
    {
        // A word is given for what the person saw.
        if (Answers.Version != Version || !ReferenceEquals(Answers.Study, study)) return [new("", "The design is being answered anew.", "Look again, and confirm then.")];
        var problems = AtTheField(study, now, (entries, book, found) => entries.Confirm(book, given ? [rule] : [], given ? [] : [rule], found));
        if (problems.Count > 0) return problems;
        lock (gate) Ask();
        return problems;
    }

    private ValueList<Problem> AtTheField(Study study, DateTimeOffset now, Action<FieldEntries, Logbook, List<Problem>> what)
    {
        var basis = FlightBasis.Of(Reading, Counted);
        var problems = journal.Enter((book, found) => what(new(study, basis, now), book, found));
        Changed?.Invoke();
        return problems;
    }

    private ValueList<Confirmation> Confirmations()
    {
        asked = DateOnly.FromDateTime(DateTime.Now);
        return journal.HasLogbook && FlightBasis.Of(reading, Counted) is { } basis ? journal.Read(b => FieldEntries.Confirmed(b, basis, asked)) ?? [] : [];
    }

    // What was confirmed yesterday does not hold today.
    private void LookAtTheDay()
    {
        lock (gate)
        {
            if (asked == DateOnly.FromDateTime(DateTime.Now)) return;
            Ask();
        }
    }
}
