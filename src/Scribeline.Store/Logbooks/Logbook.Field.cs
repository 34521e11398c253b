using System.Globalization;
using Microsoft.Data.Sqlite;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;

namespace Scribeline.Store.Logbooks;

/// <content>What persons confirmed at the field, and what was ticked off on the day. No names are kept.</content>
public sealed partial class Logbook
{
    private const string DayFormat = "yyyy-MM-dd";

    /// <summary>Keeps that a person confirmed a condition, or took that back.</summary>
    /// <param name="rule">Id of the condition.</param>
    /// <param name="day">The local day it holds for.</param>
    /// <param name="basis">What it was given for, see <see cref="FlightBasis"/>.</param>
    /// <param name="given">Whether it was given; otherwise taken back.</param>
    /// <param name="at">Now.</param>
    public Logged<Confirmation> Confirm(string rule, DateOnly day, string basis, bool given, DateTimeOffset at) => Whole(t =>
    {
        Write(
            t,
            "INSERT INTO confirmed (design, rule, day, basis, given, at) VALUES ($design, $rule, $day, $basis, $given, $at);",
            ("$rule", rule),
            ("$day", Day(day)),
            ("$basis", basis),
            ("$given", given ? 1 : 0),
            ("$at", Stamp(at)));
        return new Confirmation(rule, Time(Stamp(at)));
    });

    /// <summary>What stands confirmed for a day and a basis, by time: the latest word on each condition, where it was not taken back.</summary>
    /// <param name="day">The local day.</param>
    /// <param name="basis">What it must have been given for.</param>
    public Logged<ValueList<Confirmation>> Confirmed(DateOnly day, string basis) => Whole(
        t => Rows(
            t,
            "SELECT rule, at FROM confirmed WHERE given = 1 AND number IN (SELECT max(number) FROM confirmed WHERE design = $design AND day = $day AND basis = $basis GROUP BY rule) ORDER BY number;",
            r => new Confirmation(r.GetString(0), Time(r.GetString(1))),
            ("$day", Day(day)),
            ("$basis", basis)),
        writing: false);

    /// <summary>Ticks off items of the day's lists, or takes that back; all of them or none.</summary>
    /// <param name="items">Ids with the words they have.</param>
    /// <param name="day">The local day.</param>
    /// <param name="done">Whether they are done.</param>
    /// <param name="at">Now.</param>
    public Logged<ValueList<DayTick>> Check(IReadOnlyCollection<(string Id, string Words)> items, DateOnly day, bool done, DateTimeOffset at) => Whole(t =>
    {
        foreach (var (id, words) in items)
        {
            Write(
                t,
                "INSERT INTO checked (design, item, words, day, done, at) VALUES ($design, $item, $words, $day, $done, $at);",
                ("$item", id),
                ("$words", words),
                ("$day", Day(day)),
                ("$done", done ? 1 : 0),
                ("$at", Stamp(at)));
        }

        return items.Select(i => new DayTick(i.Id, i.Words, day, done, Time(Stamp(at)))).ToValueList();
    });

    /// <summary>The latest tick of every item that has one since a day, by time.</summary>
    /// <param name="since">The first local day.</param>
    public Logged<ValueList<DayTick>> Checked(DateOnly since) => Whole(
        t => Rows(
            t,
            "SELECT item, words, day, done, at FROM checked WHERE day >= $since AND number IN (SELECT max(number) FROM checked WHERE design = $design GROUP BY item) ORDER BY number;",
            TickOfDay,
            ("$since", Day(since))),
        writing: false);

    private static DayTick TickOfDay(SqliteDataReader row) => new(
        row.GetString(0), row.GetString(1), DateOnly.ParseExact(row.GetString(2), DayFormat, CultureInfo.InvariantCulture), row.GetInt64(3) != 0, Time(row.GetString(4)));

    private static string Day(DateOnly day) => day.ToString(DayFormat, CultureInfo.InvariantCulture);
}
