using Microsoft.Data.Sqlite;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <summary>What can be wrong with a logbook, and what to do about it.</summary>
internal static class LogbookProblems
{
    internal static Problem Newer(string name, long version) => new(
        "",
        $"{name} was written by a newer version of this program (its format {version}, ours {Migrations.Newest}).",
        "Use the newer version, or move the file aside: a new logbook is begun, and the design file itself is not touched.");

    internal static Problem Foreign(string name) => new(
        "",
        $"{name} is a database of another program.",
        "Move or rename it: a logbook of that name is begun in its place.");

    internal static Problem Closed(string name) => new("", $"{name} is closed.", "Open the design again.");

    /// <summary>The problem behind an error of the database.</summary>
    internal static Problem Of(SqliteException failure, string name) => failure.SqliteErrorCode switch
    {
        NotADatabase or Corrupt => new("", $"{name} is damaged, or is not a logbook.", "Move it aside: a new one is begun, and the design file itself is not touched. If there is a copy of it, put that in its place."),
        Busy or Locked => new("", $"{name} is held by another program.", "Close that program, or wait until it has finished, and do it again."),
        ReadOnly or CannotOpen or NoPermission => new("", $"{name} cannot be opened or written.", "Change the permissions of its folder, or copy the folder to a place that may be written."),
        Full => new("", $"The disk is full: {name} took nothing in.", "Free some space and do it again."),
        InputOutput => new("", $"The disk refused to read or write {name}.", "Check that it is still there, and do it again."),
        _ => new("", $"{name} refused: {failure.Message.TrimEnd('.')}.", "Do it again; if it stays so, move the file aside."),
    };

    // Primary result codes of SQLite.
    private const int NoPermission = 3, Busy = 5, Locked = 6, ReadOnly = 8, InputOutput = 10, Corrupt = 11, Full = 13, CannotOpen = 14, NotADatabase = 26;
}
