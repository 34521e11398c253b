using System.Data;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Data.Sqlite;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <summary>
/// The logbook beside a design file: its saved revisions, unsaved work, what is built and what was measured. One SQLite file serves all
/// designs of a folder, each by its file's name. What a call has reported as written is on the disk: a process or a machine that ends
/// suddenly loses at most the call under way. Safe to use from several threads and by several processes.
/// </summary>
public sealed partial class Logbook : IDisposable
{
    /// <summary>Name of the logbook's file in the design's folder.</summary>
    public const string FileName = "logbook.sqlite";

    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    private readonly Lock gate = new();
    private readonly SqliteConnection connection;
    private readonly string design;

    private Logbook(SqliteConnection connection, string design) => (this.connection, this.design) = (connection, design);

    /// <summary>Opens the logbook beside a design file, and begins one where there is none.</summary>
    /// <param name="designFile">The design file; it need not be there yet, but its folder must.</param>
    /// <param name="patience">Whole seconds, 1 or more, that every call waits for another program that is writing.</param>
    /// <returns>The logbook; or a problem where its file cannot be used.</returns>
    public static Logged<Logbook> Open(string designFile, int patience = 5)
    {
        var path = Path.GetFullPath(designFile);
        return OpenAs(Path.Combine(Path.GetDirectoryName(path)!, FileName), Path.GetFileName(path), SqliteOpenMode.ReadWriteCreate, patience);
    }

    /// <summary>Opens the logbook beside a design file where there is one, and leaves the folder as it is where there is none.</summary>
    /// <param name="designFile">The design file.</param>
    /// <returns>The logbook, nothing where there is none, or a problem where its file cannot be used.</returns>
    public static Logged<Logbook> OpenExisting(string designFile)
    {
        var file = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(designFile))!, FileName);
        return Path.Exists(file) ? Open(designFile) : new(null);
    }

    /// <summary>SHA-256 of a text in UTF-8, hexadecimal: the name by which revisions know their text.</summary>
    public static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    /// <summary>A number that is another once another program has written into the logbook; null where it cannot be told, or is closed.</summary>
    public long? ByOthers
    {
        get
        {
            lock (gate)
            {
                try
                {
                    return IsOpen ? Number(connection, null, "PRAGMA data_version;") : null;
                }
                catch (SqliteException)
                {
                    return null;
                }
            }
        }
    }

    private bool IsOpen => connection.State == ConnectionState.Open;

    /// <summary>Closes the file; everything reported as written is in it. What is called afterwards says that it is closed.</summary>
    public void Dispose()
    {
        lock (gate) connection.Dispose();
    }

    internal static Logged<Logbook> OpenAs(string file, string design, SqliteOpenMode mode, int patience)
    {
        // Not pooled: a closed logbook must leave no open file behind.
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = mode,
            Pooling = false,
            DefaultTimeout = patience,
            ForeignKeys = true,
        }.ToString());
        try
        {
            connection.Open();
            if (Stranger(connection) is { } stranger)
            {
                connection.Dispose();
                return new(null, stranger);
            }

            // FULL survives a power cut, not only the end of the process.
            Run(connection, null, "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;");
            Migrate(connection);
            return new(new Logbook(connection, design));
        }
        catch (SqliteException failure)
        {
            connection.Dispose();
            return new(null, LogbookProblems.Of(failure, FileName));
        }
    }

    /// <summary>Runs a check of the whole file; empty if it is sound.</summary>
    internal string Check() => Text(connection, null, "PRAGMA integrity_check;") is var found && found == "ok" ? "" : found;

    /// <summary>Why a file is not to be touched; null if it is a logbook, or empty.</summary>
    private static Problem? Stranger(SqliteConnection connection)
    {
        // One moment of the file: another program may be beginning it.
        using var transaction = connection.BeginTransaction(deferred: true);
        var version = Number(connection, transaction, "PRAGMA user_version;");
        var application = Number(connection, transaction, "PRAGMA application_id;");
        if (application != Migrations.ApplicationId)
            return application != 0 || version != 0 || Number(connection, transaction, "SELECT count(*) FROM sqlite_schema;") > 0 ? LogbookProblems.Foreign(FileName) : null;
        return version > Migrations.Newest ? LogbookProblems.Newer(FileName, version) : null;
    }

    private static void Migrate(SqliteConnection connection)
    {
        if (Number(connection, null, "PRAGMA user_version;") == Migrations.Newest) return;
        using var transaction = connection.BeginTransaction(deferred: false);

        // Another process may have been first.
        var version = Number(connection, transaction, "PRAGMA user_version;");
        if (version < Migrations.Newest)
        {
            foreach (var step in Migrations.From(version)) Run(connection, transaction, step);
        }

        transaction.Commit();
    }

    /// <summary>Reads or writes as one whole; a failure of the file becomes a problem, and nothing of it stays.</summary>
    private Logged<T> Whole<T>(Func<SqliteTransaction, T?> what, bool writing = true)
        where T : class
    {
        lock (gate)
        {
            if (!IsOpen) return new(null, LogbookProblems.Closed(FileName));
            try
            {
                using var transaction = connection.BeginTransaction(deferred: !writing);
                var value = what(transaction);
                transaction.Commit();
                return new(value);
            }
            catch (SqliteException failure)
            {
                return new(null, LogbookProblems.Of(failure, FileName));
            }
        }
    }

    private ValueList<T> Rows<T>(SqliteTransaction transaction, string sql, Func<SqliteDataReader, T> row, params (string Name, object Value)[] values)
    {
        using var command = Command(connection, transaction, sql, [.. values, ("$design", design)]);
        using var reader = command.ExecuteReader();
        List<T> rows = [];
        while (reader.Read()) rows.Add(row(reader));
        return rows.ToValueList();
    }

    private T? Row<T>(SqliteTransaction transaction, string sql, Func<SqliteDataReader, T> row, params (string Name, object Value)[] values)
        where T : class => Rows(transaction, sql, row, values) is [var first, ..] ? first : null;

    private int Write(SqliteTransaction transaction, string sql, params (string Name, object Value)[] values) =>
        Run(connection, transaction, sql, [.. values, ("$design", design)]);

    private static int Run(SqliteConnection connection, SqliteTransaction? transaction, string sql, params (string Name, object Value)[] values)
    {
        using var command = Command(connection, transaction, sql, values);
        return command.ExecuteNonQuery();
    }

    private static long Number(SqliteConnection connection, SqliteTransaction? transaction, string sql)
    {
        using var command = Command(connection, transaction, sql, []);
        return Convert.ToInt64(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }

    private static string Text(SqliteConnection connection, SqliteTransaction? transaction, string sql)
    {
        using var command = Command(connection, transaction, sql, []);
        return Convert.ToString(command.ExecuteScalar(), CultureInfo.InvariantCulture) ?? "";
    }

#pragma warning disable CA2100 // The words are ours; every value is a parameter.
    private static SqliteCommand Command(SqliteConnection connection, SqliteTransaction? transaction, string sql, (string Name, object Value)[] values)
    {
        var command = new SqliteCommand(sql, connection, transaction);
        foreach (var (name, value) in values)
        {
            if (sql.Contains(name, StringComparison.Ordinal)) command.Parameters.AddWithValue(name, value is string text ? text.Replace('\0', '\uFFFD') : value);
        }

        return command;
    }
#pragma warning restore CA2100

    private static string Stamp(DateTimeOffset at) => at.UtcDateTime.ToString(TimeFormat, CultureInfo.InvariantCulture);

    private static DateTimeOffset Time(string stamp) =>
        DateTimeOffset.ParseExact(stamp, TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal);
}
