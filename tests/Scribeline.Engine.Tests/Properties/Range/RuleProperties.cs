using CsCheck;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Range;
using Scribeline.Engine.Tables;
using UnitsNet;

namespace Scribeline.Engine.Tests.Properties.Range;

public class RuleProperties
{
    public static TheoryData<string> Tables => [.. SafeDistance.All.Select(r => r.Table).Distinct()];

    [Theory]
    [MemberData(nameof(Tables))]
    public void More_impulse_never_lessens_a_distance(string table) => Gen.Select(Gen.Double[0, 42_000], Gen.Double[0, 20_000], Gen.Bool).Sample((impulse, more, complex) =>
    {
        if (SafeDistance.Of(table, impulse) is not { } one || SafeDistance.Of(table, impulse + more) is not { } other) return;
        Assert.True(other.People(complex) is not { } far || far >= one.People(complex));
        Assert.True(one.Cleared is null || other.Cleared >= one.Cleared);
    });

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_complex_rocket_never_stands_nearer_and_rows_follow_each_other(string table)
    {
        var rows = SafeDistance.All.Where(r => r.Table == table).ToArray();
        Assert.All(rows, r => Assert.True(r.People(true) is not { } far || far >= r.People(false)));
        Assert.All(rows.Zip(rows.Skip(1)), p => Assert.Equal(p.First.To, p.Second.Above));
        Assert.Null(SafeDistance.Of(table, rows[^1].To + 0.01));
        Assert.Same(rows[^1], SafeDistance.Of(table, rows[^1].To));
        Assert.Same(rows[0], SafeDistance.Of(table, 0));
    }

    [Fact]
    public void Higher_flights_never_need_less_room() => Gen.Select(Gen.Double[0, 12_000], Gen.Double[0, 5000]).Sample((height, more) =>
        RuleBounds.Outsiders(height + more) >= RuleBounds.Outsiders(height)
        && RuleBounds.Side(height + more) >= RuleBounds.Side(height)
        && RuleBounds.Several(100, 60, height + more) >= RuleBounds.Several(100, 60, height)
        && (RuleBounds.SideByHeight(height + more) is not { } side || side >= RuleBounds.SideByHeight(height)));

    [Fact]
    public void Several_at_once_never_stand_nearer_than_one() => Gen.Select(Gen.Double[1, 700], Gen.Double[0, 5000], Gen.Double[0, 1]).Sample((complex, height, share) =>
        RuleBounds.Several(complex, share * complex, height) >= share * complex);

    // A distance typed in the table's own feet meets the table, whatever turning units does to its last digit.
    [Fact]
    public void A_distance_of_the_table_typed_in_feet_meets_it()
    {
        foreach (var row in SafeDistance.All)
        {
            var typed = Measure.Read<Length>(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{row.PeopleFeet} ft")).Value!.Si;
            Assert.True(RuleBounds.Snap(typed, row.People(false)!.Value) >= row.People(false));
        }
    }

    [Fact]
    public void Every_condition_belongs_to_a_set_and_every_id_is_its_own()
    {
        Assert.All(Rule.All, r => Assert.NotNull(RuleSet.Find(r.Set)));
        Assert.Equal(Rule.All.Count, Rule.All.Select(r => r.Id).Distinct().Count());
        Assert.All(RuleSet.All, s => Assert.Contains(Rule.All, r => r.Set == s.Name));
        Assert.All(RuleSet.All.Where(s => s.Distances.Length > 0), s => Assert.Contains(SafeDistance.All, d => d.Table == s.Distances));
        Assert.All(Rule.All, r => Assert.EndsWith(".", r.Text, StringComparison.Ordinal));
        Assert.All(Rule.All.Where(r => r.Judged.StartsWith("person", StringComparison.Ordinal)), r => Assert.True(r.Must));
    }

    private static readonly DateOnly Today = new(2026, 5, 2);

    private static readonly ValueList<DayList> Lists =
    [
        new("Evening", [new("A", "seen", Hold: true), new("B", "seen")], "said") { Eve = true },
        new("Pad", [new("C", "seen"), new("D", "seen", Hold: true), new("E", "seen")], "said"),
        new("Aside", [new("F", "seen", Hold: true), new("G", "seen")], "said") { Aside = true },
    ];

    private static DayTick Tick(string item, string words = "", int days = 0, bool done = true) =>
        new(item, words.Length > 0 ? words : $"{item[^1..].ToUpperInvariant()}: seen", Today.AddDays(days), done, new(2026, 5, 2, 9, 0, 0, TimeSpan.Zero));

    private static string[] Done(params DayTick[] ticks) => [.. DayProgress.Of(Lists, ticks, Today).Items.Where(i => i.At is not null).Select(i => i.Id)];

    [Fact]
    public void A_tick_counts_for_its_words_and_its_day_alone()
    {
        Assert.Equal(["evening/a", "pad/c"], Done(Tick("evening/a"), Tick("pad/c")));
        Assert.Empty(Done(Tick("pad/c", "C: seen and more")));
        Assert.Empty(Done(Tick("pad/c", days: -1)));
        Assert.Equal(["evening/a"], Done(Tick("evening/a", days: -1)));
        Assert.Empty(Done(Tick("evening/a", days: -2), Tick("pad/c", days: 1)));
        Assert.Empty(Done(Tick("pad/c"), Tick("pad/c", done: false)));
    }

    [Fact]
    public void Holds_stand_before_all_that_follows_in_the_day_but_not_across_lists_aside()
    {
        var progress = DayProgress.Of(Lists, [], Today);
        string? Held(string id, params string[] also) => progress.HeldBy(progress.Named(id)!, also.ToHashSet())?.Id;
        Assert.Null(Held("evening/a"));
        Assert.Equal("evening/a", Held("evening/b"));
        Assert.Equal("evening/a", Held("pad/e"));
        Assert.Equal("pad/d", Held("pad/e", "evening/a"));
        Assert.Null(Held("aside/f"));
        Assert.Equal("aside/f", Held("aside/g"));
        Assert.Equal("evening/a", progress.Next!.Id);
    }
}
