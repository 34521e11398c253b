namespace Scribeline.Store.Logbooks;

/// <summary>
/// The tables of a logbook, one step for each version of their format. A step that has been released is never changed: the next one follows
/// it. Nothing is ever overwritten but unsaved work: ticks and measured values are added, and the latest counts.
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
    ];

    /// <summary>The version this program writes.</summary>
    internal static int Newest => Steps.Length;

    /// <summary>What brings a logbook of an older version to the newest; the version itself is written last.</summary>
    internal static IEnumerable<string> From(long version) => Steps.Skip((int)version)
        .Append($"PRAGMA application_id = {ApplicationId}; PRAGMA user_version = {Newest};");
}
