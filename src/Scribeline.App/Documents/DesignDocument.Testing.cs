using Scribeline.App.Commands;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Documents;

/// <content>What was fired of it on the ground, in the logbook beside it.</content>
public sealed partial class DesignDocument
{
    private ValueList<LoggedShot>? shots;

    /// <summary>Every shot of the logbook, oldest first, those taken out included.</summary>
    public ValueList<LoggedShot> Shots => shots ??= journal.Shots.Value ?? [];

    /// <summary>Whether the shots count in the answers, by the text as it is.</summary>
    public bool ShotsCount => Reading.Design?.Records is { ShotsCount: true };

    /// <summary>Keeps a shot.</summary>
    /// <param name="study">A study of the design.</param>
    /// <param name="typed">Keys of a shot with what was typed.</param>
    /// <param name="now">The time it is.</param>
    /// <returns>The shot, or why not.</returns>
    public (LoggedShot? Shot, ValueList<Problem> Problems) Shoot(Study study, IReadOnlyDictionary<string, string> typed, DateTimeOffset now)
    {
        LoggedShot? kept = null;
        var problems = journal.Enter((book, found) => kept = Reading.Design is { } design ? new ShotEntries(study, design, Reading.Text, now).Add(book, typed, found) : null);
        if (kept is not null) Fired();
        return (kept, problems);
    }

    /// <summary>Takes a shot of the logbook out, or puts it back.</summary>
    /// <returns>Why not; empty where it was done.</returns>
    public ValueList<Problem> MarkShot(LoggedShot shot, bool takeOut, DateTimeOffset now)
    {
        var problems = journal.Enter((book, found) =>
        {
            if (book.Mark(shot.Number, takeOut, now).Problem is { } problem) found.Add(problem);
        });
        Fired();
        return problems;
    }

    /// <summary>Lets the shots count in the answers, or sets them aside: a change of the text, which can be undone.</summary>
    /// <returns>Why not; null where it was done.</returns>
    public Problem? CountShots(bool counts) =>
        Reading.Design is { } design ? Change(text => ShotEntries.Count(text, design, counts), "records") : new("", "The design cannot be read.", "Mend its text first.");

    private void Fired()
    {
        lock (gate)
        {
            (shots, drawn) = (null, (-1, null));
            Ask();
        }

        Changed?.Invoke();
    }
}
