using Scribeline.App.Commands;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store.Logs;

namespace Scribeline.App.Documents;

/// <content>Flights that were flown, in the logbook beside it.</content>
public sealed partial class DesignDocument
{
    private FlownFlights? flights;

    /// <summary>Recorded flights. What one says is worked out once, however often the design changes.</summary>
    public FlownFlights Flights => flights ??= journal.Flights.Value ?? FlownFlights.None;

    /// <summary>Names of tables in the design's folder that may be an altimeter's.</summary>
    public IReadOnlyList<string> NearRecords
    {
        get
        {
            try
            {
                return [.. Directory.EnumerateFiles(System.IO.Path.GetDirectoryName(Path)!, "*.csv").Select(f => System.IO.Path.GetFileName(f)).Order(StringComparer.Ordinal).Take(50)];
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                return [];
            }
        }
    }

    /// <summary>Adds a flight with an altimeter's file.</summary>
    /// <returns>What the file was taken for, and why it was not kept; no problems where it was.</returns>
    internal (LogReading? Read, ValueList<Problem> Problems) AddFlight(FlightEntry entry, DateTimeOffset now)
    {
        FlightEntries entries = new(Path, now);
        var text = Reading.Text;
        var problems = journal.Enter((book, found) => entries.Add(book, text, entry, found));
        if (problems.Count == 0) FlightsChanged();
        return (entries.Read, problems);
    }

    /// <summary>Adds a flight with a table of the design's folder.</summary>
    internal (LogReading? Read, ValueList<Problem> Problems) AddNearFlight(FlightEntry entry, DateTimeOffset now)
    {
        if (!NearRecords.Contains(entry.File)) return (null, [new("", $"There is no table {entry.File} in the design's folder.", "Choose another.")]);
        try
        {
            var file = new FileInfo(System.IO.Path.Combine(System.IO.Path.GetDirectoryName(Path)!, entry.File));
            return file.Length > LogFile.Largest
                ? (null, [new("", $"{entry.File} is larger than {LogFile.Largest / 1_000_000} MB.", "Cut it to the flight.")])
                : AddFlight(entry with { Body = File.ReadAllBytes(file.FullName) }, now);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return (null, [new("", $"{entry.File} cannot be read: {failure.Message.TrimEnd('.')}.", "Look who may read it.")]);
        }
    }

    /// <summary>Takes a flight out.</summary>
    /// <returns>Why not; empty where it was.</returns>
    public ValueList<Problem> RemoveFlight(long number, DateTimeOffset now) => Entered(new(Path, now), (entries, book, found) => entries.Remove(book, number, found));

    /// <summary>Asks about a flight from now on.</summary>
    /// <returns>Why not; empty where it is.</returns>
    public ValueList<Problem> AskAbout(long number, DateTimeOffset now) => Entered(new(Path, now), (entries, book, found) => entries.Ask(book, number, found));

    /// <summary>Writes what flights teach into the text, as a change that can be undone.</summary>
    /// <param name="study">Study of the design, with its flights.</param>
    /// <param name="id">Name of what is accepted.</param>
    /// <returns>Why not; null where it was.</returns>
    public Problem? Accept(Study study, string id) => Change(text => AcceptedLessons.Accept(text, study.Teachings, id), "");

    /// <summary>Takes what was accepted out of the text, as a change that can be undone.</summary>
    /// <param name="id">Name of what is taken back.</param>
    /// <returns>Why not; null where it was.</returns>
    public Problem? TakeBack(string id) => Reading.Design is { } design ? Change(text => AcceptedLessons.TakeBack(text, design, id), "") : null;

    private ValueList<Problem> Entered(FlightEntries entries, Action<FlightEntries, Scribeline.Store.Logbooks.Logbook, List<Problem>> what)
    {
        var problems = journal.Enter((book, found) => what(entries, book, found));
        if (problems.Count == 0) FlightsChanged();
        return problems;
    }

    // What was worked out of a flight stays: it depends on nothing that changed.
    private void FlightsChanged()
    {
        lock (gate)
        {
            var before = Flights;
            var next = journal.Flights.Value ?? FlownFlights.None;
            flights = next with { Flights = next.Flights.Select(f => before.Flights.FirstOrDefault(b => b.Number == f.Number) ?? f).ToValueList() };
            Ask();
        }

        Changed?.Invoke();
    }
}
