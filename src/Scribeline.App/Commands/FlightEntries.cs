using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store;
using Scribeline.Store.Logbooks;
using Scribeline.Store.Logs;

namespace Scribeline.App.Commands;

/// <summary>What a builder says of flights, checked before any of it is kept.</summary>
/// <param name="path">The design file.</param>
/// <param name="now">The time it is.</param>
internal sealed class FlightEntries(string path, DateTimeOffset now)
{
    /// <summary>What a file was taken for, once one was added.</summary>
    public LogReading? Read { get; private set; }

    /// <summary>Adds a flight; with problems nothing is kept.</summary>
    /// <param name="book">The logbook.</param>
    /// <param name="text">Text of the design as it flew.</param>
    /// <param name="entry">What is said of the flight.</param>
    /// <param name="problems">Takes why not.</param>
    public LoggedFlight? Add(Logbook book, string text, FlightEntry entry, List<Problem> problems)
    {
        Read = LogFile.Read(entry.Body, entry.Columns);
        problems.AddRange(Read.Problems.Select(p => p with { File = p.Line is null ? null : entry.File }));
        var papers = FlightPapers.Gather(path, text, entry.Weather, entry.Motor, problems);
        return problems.Count > 0 ? null : Kept(book.AddFlight(entry.Flown, entry.Words, entry.File, entry.Body, entry.Columns, papers, now), problems);
    }

    /// <summary>Takes a flight out.</summary>
    public void Remove(Logbook book, long number, List<Problem> problems)
    {
        if (Kept(book.RemoveFlight(number), problems) is null && problems.Count == 0) problems.Add(NoFlight(number));
    }

    /// <summary>Asks about a flight from now on.</summary>
    public void Ask(Logbook book, long number, List<Problem> problems)
    {
        if (Kept(book.AskAbout(number, now), problems) is null && problems.Count == 0) problems.Add(NoFlight(number));
    }

    /// <summary>Writes what flights taught into the design, or takes it out, and keeps the revision.</summary>
    /// <param name="book">The logbook.</param>
    /// <param name="text">Text of the design.</param>
    /// <param name="design">The design.</param>
    /// <param name="study">Its study, with its flights.</param>
    /// <param name="accepted">Names to accept.</param>
    /// <param name="taken">Names to take back.</param>
    /// <param name="problems">Takes why not.</param>
    public void Teach(Logbook book, string text, RocketDesign design, Study study, IReadOnlyList<string> accepted, IReadOnlyList<string> taken, List<Problem> problems)
    {
        var before = text;
        foreach (var id in taken) text = Changed(AcceptedLessons.TakeBack(text, design, id), problems);
        foreach (var id in accepted) text = Changed(AcceptedLessons.Accept(text, study.Teachings, id), problems);
        if (problems.Count > 0 || text == before) return;
        string[] words = [.. accepted.Select(a => $"accepted from flights: {a}"), .. taken.Select(t => $"taken back: {t}")];
        DesignSaving.Write(book, path, text, string.Join("; ", words), now, problems);
    }

    private static string Changed(TextChange change, List<Problem> problems)
    {
        if (change.Problem is { } problem) problems.Add(problem);
        return change.Text;
    }

    private static Problem NoFlight(long number) => new("", $"There is no flight {number} of this design.", "scribeline log FILE lists them with their numbers.");

    private static T? Kept<T>(Logged<T> logged, List<Problem> problems)
        where T : class
    {
        if (logged.Problem is { } problem) problems.Add(problem);
        return logged.Value;
    }
}

/// <summary>What is said of a flight that is added.</summary>
/// <param name="File">Name of the altimeter's file.</param>
/// <param name="Body">All of it.</param>
/// <param name="Flown">When; may be empty.</param>
/// <param name="Words">A note; may be empty.</param>
/// <param name="Columns">What its columns hold where their names do not tell.</param>
/// <param name="Weather">Weather file of the day; null for the design's.</param>
/// <param name="Motor">Motor file of the day; null for the design's.</param>
internal sealed record FlightEntry(string File, byte[] Body, string Flown, string Words, IReadOnlyList<string> Columns, string? Weather, string? Motor);
