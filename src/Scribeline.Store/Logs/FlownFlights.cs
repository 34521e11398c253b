using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store.Logbooks;

namespace Scribeline.Store.Logs;

/// <summary>The flights of a logbook as questions ask about them.</summary>
/// <param name="Flights">Oldest first; each is read and worked out only when it is asked about.</param>
/// <param name="Asked">Number of the one that is asked about; null where there is none.</param>
/// <param name="Logged">What the logbook says of each.</param>
public sealed record FlownFlights(ValueList<FlownFlight> Flights, long? Asked, ValueList<LoggedFlight> Logged)
{
    /// <summary>Of a design that was never flown.</summary>
    public static FlownFlights None { get; } = new([], null, []);

    /// <summary>Those of a logbook.</summary>
    /// <param name="book">The logbook of the design.</param>
    /// <param name="path">The design file.</param>
    public static Logged<FlownFlights> Of(Logbook book, string path)
    {
        var logged = book.Flights();
        if (logged.Value is not { } flights) return new(null, logged.Problem);
        if (flights.Count == 0) return new(None);
        var (asked, measured) = (book.Asked(), book.Measured());
        if ((asked.Problem ?? measured.Problem) is { } unread) return new(null, unread);
        List<FlownFlight> flown = [];
        foreach (var flight in flights)
        {
            var (record, files) = (book.RecordOf(flight.Number), book.FilesOf(flight.Number));
            if ((record.Problem ?? files.Problem) is { } problem) return new(null, problem);
            flown.Add(Flown(path, flight, record.Value ?? [], files.Value!, measured.Value!));
        }

        return new(new FlownFlights(flown.ToValueList(), asked.Value?.Number, flights));
    }

    // What had been measured when the flight was added was measured on the rocket that flew.
    private static FlownFlight Flown(string path, LoggedFlight flight, byte[] record, ValueList<KeptFile> files, ValueList<MeasuredValue> measured) => new(
        flight.Number,
        flight.Flown,
        flight.File,
        () => files.Count > 0 && FlightPapers.Read(path, files) is { Good: true, Design: { } design } ? Measured(design, flight, measured) : null,
        () => LogFile.Read(record, flight.Columns).Record);

    private static RocketDesign Measured(RocketDesign design, LoggedFlight flight, ValueList<MeasuredValue> measured) =>
        MeasuredRecords.AddTo(design, measured.Where(m => m.At <= flight.Added).ToValueList()).Design;
}
