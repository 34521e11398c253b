using System.Text;
using Microsoft.Data.Sqlite;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <content>Saved revisions and unsaved work.</content>
public sealed partial class Logbook
{
    /// <summary>
    /// Keeps a design that was saved, and drops its unsaved work. Write the design file first: if all ends between the two, the file is
    /// the newer one and the next save keeps it. Texts equal to those of the newest revision are not kept again.
    /// </summary>
    /// <param name="text">All of the design file's text.</param>
    /// <param name="files">The files it names, as they are with it.</param>
    /// <param name="words">Why, in the builder's words; may be empty.</param>
    /// <param name="at">Now.</param>
    public Logged<Revision> Save(string text, IReadOnlyList<KeptFile> files, string words, DateTimeOffset at) => Whole(t =>
    {
        Write(t, "DELETE FROM unsaved WHERE design = $design;");
        if (Newest(t) is { } newest && newest.Hash == HashOf(text) && FilesOf(t, newest).SequenceEqual(files)) return newest;
        Write(
            t,
            "INSERT INTO revision (design, saved, hash, words) VALUES ($design, $saved, $hash, $words);",
            ("$saved", Stamp(at)),
            ("$hash", Deposit(t, text)),
            ("$words", words));
        var revision = Newest(t)!;
        foreach (var (file, place) in files.Select((f, i) => (f, i)))
        {
            Write(
                t,
                "INSERT INTO revision_file (revision, place, name, hash) VALUES ($revision, $place, $name, $hash);",
                ("$revision", revision.Number),
                ("$place", place),
                ("$name", file.Name),
                ("$hash", Deposit(t, file.Text)));
        }

        return revision;
    });

    /// <summary>All revisions of the design, newest first.</summary>
    public Logged<ValueList<Revision>> Revisions() => Whole(
        t => Rows(t, "SELECT number, saved, hash, words FROM revision WHERE design = $design ORDER BY number DESC;", RevisionOf), writing: false);

    /// <summary>The text of a revision; null where the logbook does not have it.</summary>
    public Logged<string> TextOf(Revision revision) => Whole(
        t => Row(t, "SELECT body FROM text WHERE hash = $hash;", r => Body(r), ("$hash", revision.Hash)), writing: false);

    /// <summary>The files that a revision names, as they were with it; empty where none were kept.</summary>
    public Logged<ValueList<KeptFile>> FilesOf(Revision revision) => Whole(t => FilesOf(t, revision), writing: false);

    /// <summary>Keeps the text on the screen, in place of what was kept of this design before.</summary>
    /// <param name="text">All of it; it need not be a design without problems.</param>
    /// <param name="basis">Hash of the file it began from, see <see cref="HashOf"/>.</param>
    /// <param name="at">Now.</param>
    public Logged<UnsavedWork> Keep(string text, string basis, DateTimeOffset at) => Whole(t =>
    {
        Write(
            t,
            "INSERT INTO unsaved (design, body, basis, changed) VALUES ($design, $body, $basis, $changed) "
                + "ON CONFLICT (design) DO UPDATE SET body = excluded.body, basis = excluded.basis, changed = excluded.changed;",
            ("$body", Encoding.UTF8.GetBytes(text)),
            ("$basis", basis),
            ("$changed", Stamp(at)));
        return UnsavedIn(t);
    });

    /// <summary>Unsaved work on the design; null where there is none.</summary>
    public Logged<UnsavedWork> Unsaved() => Whole(UnsavedIn, writing: false);

    /// <summary>Drops unsaved work: the builder went back to the file.</summary>
    /// <returns>What was dropped; null where there was none.</returns>
    public Logged<UnsavedWork> Drop() => Whole(t =>
    {
        var work = UnsavedIn(t);
        Write(t, "DELETE FROM unsaved WHERE design = $design;");
        return work;
    });

    /// <summary>Keeps the texts on the screen of the files that the design names, in place of those kept before.</summary>
    /// <param name="files">Name, text, and hash of the file it began from.</param>
    /// <param name="at">Now.</param>
    public Logged<ValueList<UnsavedFile>> KeepFiles(IEnumerable<(string File, string Text, string Basis)> files, DateTimeOffset at) => Whole(t =>
    {
        Write(t, $"DELETE FROM unsaved WHERE {OfItsFiles};");
        foreach (var (file, text, basis) in files)
        {
            Write(
                t,
                "INSERT INTO unsaved (design, body, basis, changed) VALUES ($design || char(10) || $file, $body, $basis, $changed);",
                ("$file", file),
                ("$body", Encoding.UTF8.GetBytes(text)),
                ("$basis", basis),
                ("$changed", Stamp(at)));
        }

        return FilesIn(t);
    });

    /// <summary>Unsaved work on the files that the design names; empty where there is none.</summary>
    public Logged<ValueList<UnsavedFile>> UnsavedFiles() => Whole(FilesIn, writing: false);

    // A file's row is known by the design's name and its own: another design may be working on the same file.
    private const string OfItsFiles = "substr(design, 1, length($design) + 1) = $design || char(10)";

    private ValueList<UnsavedFile> FilesIn(SqliteTransaction transaction) => Rows(
        transaction,
        $"SELECT substr(design, length($design) + 2), body, basis, changed FROM unsaved WHERE {OfItsFiles} ORDER BY design;",
        r => new UnsavedFile(r.GetString(0), new(Body(r, 1), r.GetString(2), Time(r.GetString(3)))));

    private UnsavedWork? UnsavedIn(SqliteTransaction transaction) => Row(
        transaction,
        "SELECT body, basis, changed FROM unsaved WHERE design = $design;",
        r => new UnsavedWork(Body(r), r.GetString(1), Time(r.GetString(2))));

    private Revision? Newest(SqliteTransaction transaction) => Row(
        transaction, "SELECT number, saved, hash, words FROM revision WHERE design = $design ORDER BY number DESC LIMIT 1;", RevisionOf);

    private ValueList<KeptFile> FilesOf(SqliteTransaction transaction, Revision revision) => Rows(
        transaction,
        "SELECT f.name, x.body FROM revision_file f JOIN text x ON x.hash = f.hash WHERE f.revision = $revision ORDER BY f.place;",
        r => new KeptFile(r.GetString(0), Body(r, 1)),
        ("$revision", revision.Number));

    // Every text is kept once, however many revisions and flights have it.
    private string Deposit(SqliteTransaction transaction, string text)
    {
        var hash = HashOf(text);
        Write(transaction, "INSERT INTO text (hash, body) VALUES ($hash, $body) ON CONFLICT (hash) DO NOTHING;", ("$hash", hash), ("$body", Encoding.UTF8.GetBytes(text)));
        return hash;
    }

    private static string Body(SqliteDataReader row, int column = 0) => Encoding.UTF8.GetString((byte[])row.GetValue(column));

    private static Revision RevisionOf(SqliteDataReader row) => new(row.GetInt64(0), Time(row.GetString(1)), row.GetString(2), row.GetString(3));
}
