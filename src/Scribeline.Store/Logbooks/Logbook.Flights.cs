using System.IO.Compression;
using Microsoft.Data.Sqlite;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <content>Flights: the altimeter's file, with the design, motor and weather of that day.</content>
public sealed partial class Logbook
{
    private const string FlightColumns = "number, flown, words, file, columns, added";

    /// <summary>Adds a flight.</summary>
    /// <param name="flown">When it was flown, in the builder's words; may be empty.</param>
    /// <param name="words">A note; may be empty.</param>
    /// <param name="file">Name of the altimeter's file.</param>
    /// <param name="body">All of that file.</param>
    /// <param name="columns">What the builder said of its columns.</param>
    /// <param name="files">The design as it flew, then every file it names.</param>
    /// <param name="at">Now.</param>
    public Logged<LoggedFlight> AddFlight(
        string flown, string words, string file, ReadOnlySpan<byte> body, IReadOnlyList<string> columns, IReadOnlyList<KeptFile> files, DateTimeOffset at)
    {
        var packed = Packed(body);
        return Whole(t =>
        {
            Write(
                t,
                "INSERT INTO flight (design, flown, words, file, body, columns, added) VALUES ($design, $flown, $words, $file, $body, $columns, $added);",
                ("$flown", flown),
                ("$words", words),
                ("$file", file),
                ("$body", packed),
                ("$columns", string.Join('\n', columns)),
                ("$added", Stamp(at)));
            var added = Row(t, $"SELECT {FlightColumns} FROM flight WHERE design = $design ORDER BY number DESC LIMIT 1;", FlightOf)!;
            foreach (var (kept, place) in files.Select((f, i) => (f, i)))
            {
                Write(
                    t,
                    "INSERT INTO flight_file (flight, place, name, hash) VALUES ($flight, $place, $name, $hash);",
                    ("$flight", added.Number),
                    ("$place", place),
                    ("$name", kept.Name),
                    ("$hash", Deposit(t, kept.Text)));
            }

            return added;
        });
    }

    /// <summary>All flights of the design, oldest first.</summary>
    public Logged<ValueList<LoggedFlight>> Flights() => Whole(
        t => Rows(t, $"SELECT {FlightColumns} FROM flight WHERE design = $design ORDER BY number;", FlightOf), writing: false);

    /// <summary>The altimeter's file of a flight; null where the logbook does not have it.</summary>
    public Logged<byte[]> RecordOf(long flight) => Whole(
        t => Row(t, "SELECT body FROM flight WHERE design = $design AND number = $flight;", r => Unpacked((byte[])r.GetValue(0)), ("$flight", flight)), writing: false);

    /// <summary>The design as it flew, then every file it named.</summary>
    public Logged<ValueList<KeptFile>> FilesOf(long flight) => Whole(
        t => Rows(
            t,
            "SELECT f.name, x.body FROM flight_file f JOIN text x ON x.hash = f.hash WHERE f.flight = $flight ORDER BY f.place;",
            r => new KeptFile(r.GetString(0), Body(r, 1)),
            ("$flight", flight)),
        writing: false);

    /// <summary>Takes a flight out, its record with it.</summary>
    /// <returns>What was taken out; null where there is none of that number.</returns>
    public Logged<LoggedFlight> RemoveFlight(long flight) => Whole(t =>
    {
        var gone = Row(t, $"SELECT {FlightColumns} FROM flight WHERE design = $design AND number = $flight;", FlightOf, ("$flight", flight));
        Write(t, "DELETE FROM flight WHERE design = $design AND number = $flight;", ("$flight", flight));
        return gone;
    });

    /// <summary>Asks about a flight from now on.</summary>
    /// <returns>That flight; null where there is none of that number.</returns>
    public Logged<LoggedFlight> AskAbout(long flight, DateTimeOffset at) => Whole(t =>
    {
        var chosen = Row(t, $"SELECT {FlightColumns} FROM flight WHERE design = $design AND number = $flight;", FlightOf, ("$flight", flight));
        if (chosen is not null) Write(t, "INSERT INTO flight_asked (design, flight, at) VALUES ($design, $flight, $at);", ("$flight", flight), ("$at", Stamp(at)));
        return chosen;
    });

    /// <summary>The flight that is asked about: the one chosen last where it was not added before the newest; null where there is none.</summary>
    public Logged<LoggedFlight> Asked() => Whole(
        t => Row(
            t,
            $"""
            SELECT {FlightColumns} FROM flight WHERE design = $design AND number = coalesce(
                (SELECT a.flight FROM flight_asked a WHERE a.design = $design AND a.flight IN (SELECT number FROM flight WHERE design = $design)
                    AND a.at >= (SELECT max(added) FROM flight WHERE design = $design) ORDER BY a.number DESC LIMIT 1),
                (SELECT max(number) FROM flight WHERE design = $design));
            """,
            FlightOf),
        writing: false);

    private static LoggedFlight FlightOf(SqliteDataReader row) => new(
        row.GetInt64(0), row.GetString(1), row.GetString(2), row.GetString(3), row.GetString(4).Split('\n', StringSplitOptions.RemoveEmptyEntries).ToValueList(), Time(row.GetString(5)));

    private static byte[] Packed(ReadOnlySpan<byte> body)
    {
        using var packed = new MemoryStream();
        using (var packing = new BrotliStream(packed, CompressionLevel.Fastest)) packing.Write(body);
        return packed.ToArray();
    }

    private static byte[] Unpacked(byte[] body)
    {
        using var unpacking = new BrotliStream(new MemoryStream(body), CompressionMode.Decompress);
        using var whole = new MemoryStream();
        unpacking.CopyTo(whole);
        return whole.ToArray();
    }
}
