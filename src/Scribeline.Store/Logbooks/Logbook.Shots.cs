using Microsoft.Data.Sqlite;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logbooks;

/// <content>Shots of the ground tests.</content>
public sealed partial class Logbook
{
    private const string ShotRows =
        "SELECT s.number, s.body, s.at, coalesce((SELECT m.out FROM shot_mark m WHERE m.design = $design AND m.shot = s.number ORDER BY m.number DESC LIMIT 1), 0) FROM shot s WHERE s.design = $design";

    /// <summary>Keeps a shot.</summary>
    /// <param name="body">See <see cref="ShotText"/>.</param>
    /// <param name="at">Now.</param>
    public Logged<LoggedShot> Shoot(string body, DateTimeOffset at) => Whole(t =>
    {
        Write(t, "INSERT INTO shot (design, body, at) VALUES ($design, $body, $at);", ("$body", body), ("$at", Stamp(at)));
        return Row(t, $"{ShotRows} ORDER BY s.number DESC LIMIT 1;", ShotOf);
    });

    /// <summary>Takes a shot out, so that it no longer counts, or puts it back. Nothing is lost either way.</summary>
    /// <param name="number">Of the shot.</param>
    /// <param name="out">Whether it is out.</param>
    /// <param name="at">Now.</param>
    /// <returns>The shot; nothing where this design has none of that number.</returns>
    public Logged<LoggedShot> Mark(long number, bool @out, DateTimeOffset at) => Whole(t =>
    {
        if (Row(t, $"{ShotRows} AND s.number = $number;", ShotOf, ("$number", number)) is not { } shot || shot.Out == @out) return Row(t, $"{ShotRows} AND s.number = $number;", ShotOf, ("$number", number));
        Write(t, "INSERT INTO shot_mark (design, shot, out, at) VALUES ($design, $number, $out, $at);", ("$number", number), ("$out", @out ? 1 : 0), ("$at", Stamp(at)));
        return shot with { Out = @out };
    });

    /// <summary>Every shot of the design, oldest first, those taken out included.</summary>
    public Logged<ValueList<LoggedShot>> Shots() => Whole(t => Rows(t, $"{ShotRows} ORDER BY s.number;", ShotOf), writing: false);

    private static LoggedShot ShotOf(SqliteDataReader row) => new(row.GetInt64(0), row.GetString(1), Time(row.GetString(2)), row.GetInt64(3) != 0);
}
