using Microsoft.Data.Sqlite;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;

namespace Scribeline.Store.Logbooks;

/// <content>What is built, and what was measured.</content>
public sealed partial class Logbook
{
    private const string TickColumns = "step, done, note, at";
    private const string MeasuredColumns = "what, value, step, at";

    /// <summary>Ticks off a step of the build, or takes that back. Earlier ticks stay in the logbook; the latest counts.</summary>
    /// <param name="step">Id of the step.</param>
    /// <param name="done">Whether it is done.</param>
    /// <param name="note">The builder's words; may be empty.</param>
    /// <param name="at">Now.</param>
    public Logged<StepTick> Tick(string step, bool done, string note, DateTimeOffset at) => Whole(t =>
    {
        Write(
            t,
            "INSERT INTO tick (design, step, done, note, at) VALUES ($design, $step, $done, $note, $at);",
            ("$step", step),
            ("$done", done ? 1 : 0),
            ("$note", note),
            ("$at", Stamp(at)));
        return new StepTick(step, done, note, Time(Stamp(at)));
    });

    /// <summary>The latest tick of every step that has one, by time.</summary>
    public Logged<ValueList<StepTick>> Progress() => Whole(
        t => Rows(t, $"SELECT {TickColumns} FROM tick WHERE number IN (SELECT max(number) FROM tick WHERE design = $design GROUP BY step) ORDER BY number;", TickOf),
        writing: false);

    /// <summary>Keeps a measured value. Earlier values stay in the logbook; the latest counts.</summary>
    /// <param name="what">What was measured.</param>
    /// <param name="value">As typed; empty takes it back.</param>
    /// <param name="step">Step of the build at which it was measured; may be empty.</param>
    /// <param name="at">Now.</param>
    public Logged<MeasuredValue> Measure(string what, string value, string step, DateTimeOffset at) => Whole(t =>
    {
        Write(
            t,
            "INSERT INTO measured (design, what, value, step, at) VALUES ($design, $what, $value, $step, $at);",
            ("$what", what),
            ("$value", value),
            ("$step", step),
            ("$at", Stamp(at)));
        return new MeasuredValue(what, value, step, Time(Stamp(at)));
    });

    /// <summary>The latest value of everything measured, by time; what was taken back is left out.</summary>
    public Logged<ValueList<MeasuredValue>> Measured() => Whole(
        t => Rows(
            t,
            $"SELECT {MeasuredColumns} FROM measured WHERE number IN (SELECT max(number) FROM measured WHERE design = $design GROUP BY what) AND value <> '' ORDER BY number;",
            MeasuredOf),
        writing: false);

    /// <summary>Every value ever measured of one thing, oldest first, with those taken back as empty.</summary>
    public Logged<ValueList<MeasuredValue>> MeasuredOf(string what) => Whole(
        t => Rows(t, $"SELECT {MeasuredColumns} FROM measured WHERE design = $design AND what = $what ORDER BY number;", MeasuredOf, ("$what", what)),
        writing: false);

    private static StepTick TickOf(SqliteDataReader row) => new(row.GetString(0), row.GetInt64(1) != 0, row.GetString(2), Time(row.GetString(3)));

    private static MeasuredValue MeasuredOf(SqliteDataReader row) => new(row.GetString(0), row.GetString(1), row.GetString(2), Time(row.GetString(3)));
}
