namespace Scribeline.Store.Logbooks;

/// <summary>
/// The tables of a logbook, one step for each version of their format. A step that has been released is never changed: the next one follows
/// it. Nothing is ever overwritten but unsaved work: ticks, measured values, shots and marks on them are added, and the latest counts. A flight is
/// taken out only when its builder says so.
/// </summary>
internal static class Migrations
{
    /// <summary>Marks a database as a logbook of ours: the letters Scrb.</summary>
    internal const long ApplicationId = 0x53637262;

    // Bodies are bytes of UTF-8: a text read from the database would end at its first zero.
    private static readonly string[] Steps =
    [
        """
        CREATE TABLE text (
            hash TEXT PRIMARY KEY,
            body BLOB NOT NULL
        ) STRICT, WITHOUT ROWID;
        CREATE TABLE revision (
            number INTEGER PRIMARY KEY,
            design TEXT NOT NULL,
            saved TEXT NOT NULL,
            hash TEXT NOT NULL REFERENCES text (hash),
            words TEXT NOT NULL
        ) STRICT;
        CREATE INDEX revision_of ON revision (design, number);
        CREATE TABLE unsaved (
            design TEXT PRIMARY KEY,
            body BLOB NOT NULL,
            basis TEXT NOT NULL,
            changed TEXT NOT NULL
        ) STRICT, WITHOUT ROWID;
        CREATE TABLE tick (
            number INTEGER PRIMARY KEY,
            design TEXT NOT NULL,
            step TEXT NOT NULL,
            done INTEGER NOT NULL,
            note TEXT NOT NULL,
            at TEXT NOT NULL
        ) STRICT;
        CREATE INDEX tick_of ON tick (design, step, number);
        CREATE TABLE measured (
            number INTEGER PRIMARY KEY,
            design TEXT NOT NULL,
            what TEXT NOT NULL,
            value TEXT NOT NULL,
            step TEXT NOT NULL,
            at TEXT NOT NULL
        ) STRICT;
        CREATE INDEX measured_of ON measured (design, what, number);
        """,
        """
        CREATE TABLE shot (
            number INTEGER PRIMARY KEY,
            design TEXT NOT NULL,
            body TEXT NOT NULL,
            at TEXT NOT NULL
        ) STRICT;
        CREATE INDEX shot_of ON shot (design, number);
        CREATE TABLE shot_mark (
            number INTEGER PRIMARY KEY,
            design TEXT NOT NULL,
            shot INTEGER NOT NULL REFERENCES shot (number),
            out INTEGER NOT NULL,
            at TEXT NOT NULL
        ) STRICT;
        CREATE INDEX shot_mark_of ON shot_mark (design, shot, number);
        """,
        """
        CREATE TABLE confirmed (
            number INTEGER PRIMARY KEY,
            design TEXT NOT NULL,
            rule TEXT NOT NULL,
            day TEXT NOT NULL,
            basis TEXT NOT NULL,
            given INTEGER NOT NULL,
            at TEXT NOT NULL
        ) STRICT;
        CREATE INDEX confirmed_of ON confirmed (design, day, rule, basis, number);
        CREATE TABLE checked (
            number INTEGER PRIMARY KEY,
            design TEXT NOT NULL,
            item TEXT NOT NULL,
            words TEXT NOT NULL,
            day TEXT NOT NULL,
            done INTEGER NOT NULL,
            at TEXT NOT NULL
        ) STRICT;
        CREATE INDEX checked_of ON checked (design, item, number);
        """,
        """
        CREATE TABLE flight (
            number INTEGER PRIMARY KEY,
            design TEXT NOT NULL,
            flown TEXT NOT NULL,
            words TEXT NOT NULL,
            file TEXT NOT NULL,
            body BLOB NOT NULL,
            columns TEXT NOT NULL,
            added TEXT NOT NULL
        ) STRICT;
        CREATE INDEX flight_of ON flight (design, number);
        CREATE TABLE flight_file (
            flight INTEGER NOT NULL REFERENCES flight (number) ON DELETE CASCADE,
            place INTEGER NOT NULL,
            name TEXT NOT NULL,
            hash TEXT NOT NULL REFERENCES text (hash),
            PRIMARY KEY (flight, place)
        ) STRICT, WITHOUT ROWID;
        CREATE TABLE flight_asked (
            number INTEGER PRIMARY KEY,
            design TEXT NOT NULL,
            flight INTEGER NOT NULL,
            at TEXT NOT NULL
        ) STRICT;
        """,
        """
        CREATE TABLE revision_file (
            revision INTEGER NOT NULL REFERENCES revision (number),
            place INTEGER NOT NULL,
            name TEXT NOT NULL,
            hash TEXT NOT NULL REFERENCES text (hash),
            PRIMARY KEY (revision, place)
        ) STRICT, WITHOUT ROWID;
        """,
    ];

    /// <summary>The version this program writes.</summary>
    internal static int Newest => Steps.Length;

    /// <summary>What brings a logbook of an older version to the newest; the version itself is written last.</summary>
    internal static IEnumerable<string> From(long version) => Steps.Skip((int)version)
        .Append($"PRAGMA application_id = {ApplicationId}; PRAGMA user_version = {Newest};");
}
