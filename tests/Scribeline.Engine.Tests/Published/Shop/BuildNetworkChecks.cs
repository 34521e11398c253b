using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tests.Published.Flight;

namespace Scribeline.Engine.Tests.Published.Shop;

/// <summary>
/// The critical-path method (Kelley and Walker, Proc. Eastern Joint Computer Conf. 1959) on an altimeter bay of seventeen operations. The
/// values were worked out by hand with its rules: early start the latest early finish before, late finish the earliest late start after.
/// </summary>
public class BuildNetworkChecks
{
    private const double Hour = 3600;

    // Id, hours, wait or work, what comes before.
    private static readonly (string Id, double Hours, bool Waits, string Before)[] Bay =
    [
        ("A", 0.75, false, ""), ("B", 0.5, false, "A"), ("C", 0.5, false, "B"), ("D", 0.25, false, "C"), ("E", 0.5, false, "D"),
        ("F", 0.25, false, "E"), ("G", 12, true, "F"), ("H", 2, false, "A"), ("I", 0.5, false, "H"), ("J", 24, true, "I"), ("K", 1, false, "G"),
        ("L", 0.75, false, "K"), ("M", 0.5, false, "L"), ("N", 24, true, "M"), ("O", 3, false, "I"), ("P", 0.5, false, "JNO"), ("Q", 0.5, false, "P"),
    ];

    [Fact]
    public void The_bay_takes_42_hours_of_which_11_and_a_half_are_work()
    {
        var network = Solved();
        Assert.Equal(42, network.Duration / Hour, 0.01);
        Assert.Equal(11.5, network.HandsOn / Hour, 0.01);
        Assert.Equal("A B C D E F G K L M N P Q", string.Join(' ', network.CriticalPath));
    }

    [Theory]
    [InlineData("H", 13.75)]
    [InlineData("I", 13.75)]
    [InlineData("J", 13.75)]
    [InlineData("O", 34.75)]
    [InlineData("G", 0)]
    public void Total_float(string id, double hours) => Assert.Equal(hours, Of(Solved(), id).Float / Hour, 0.01);

    [Theory]
    [InlineData("J", 3.25, 17)]
    [InlineData("O", 3.25, 38)]
    public void Early_and_late_start(string id, double early, double late)
    {
        var times = Of(Solved(), id);
        Assert.Equal(early, times.EarlyStart / Hour, 0.01);
        Assert.Equal(late, times.LateStart / Hour, 0.01);
    }

    [Fact]
    public void A_warm_cure_of_4_hours_ends_it_at_34_by_the_same_path()
    {
        var network = Solved(bandCure: 4);
        Assert.Equal(34, network.Duration / Hour, 0.01);
        Assert.Equal("A B C D E F G K L M N P Q", string.Join(' ', network.CriticalPath));
    }

    // By hand, what can start soonest first, then what must start soonest: evening 1 A to F, 2.75 h, no room for H; evening 2 H, which must start
    // at 14.5, before K, at 14.75: 3 h; evening 3 I L M, 1.75 h, no room for O; evening 4 O, 72 to 75; evening 5 P Q, 96 to 97.
    [Fact]
    public void Evenings_of_three_hours_end_it_on_the_fifth()
    {
        var plan = EveningPlan.Of(Solved(), 3 * Hour);
        Assert.Equal(["ABCDEF", "HK", "ILM", "O", "PQ"], plan.Turns.Where(t => t.Activity.HandsOn).GroupBy(t => t.Evening).Select(e => string.Concat(e.Select(t => t.Activity.Id).Order(StringComparer.Ordinal))));
        Assert.Equal(97, plan.Elapsed / Hour, 0.01);
        Assert.Equal(5, plan.Evenings);
    }

    // One pair of hands and no nights: the work fits into the waits of the critical path, so nothing is lost.
    [Fact]
    public void Without_nights_it_takes_no_longer_than_the_critical_path() => Assert.Equal(42, EveningPlan.Of(Solved(), EveningPlan.Day).Elapsed / Hour, 0.01);

    // By hand: 1 h of the 3 on each of three evenings.
    [Fact]
    public void Work_longer_than_an_evening_is_taken_up_again()
    {
        var network = PrecedenceNetwork.Solve([new("saw", 3 * Hour), new("sand", 0.5 * Hour)], [new("saw", "sand")]).Network!;
        var plan = EveningPlan.Of(network, Hour);
        Assert.Equal([(0, 49), (72, 72.5)], plan.Turns.Select(t => (t.Start / Hour, t.Finish / Hour)));
    }

    // By hand: the sitting of 1.25 h does not begin with 1 h left of the evening.
    [Fact]
    public void A_sitting_is_not_parted_by_a_night()
    {
        var network = PrecedenceNetwork.Solve([new("fit", 2 * Hour), new("mix", 0.25 * Hour, true, "bond"), new("bond", Hour, true, "bond")], [new("fit", "mix"), new("mix", "bond")]).Network!;
        Assert.Equal([0, 24, 24.25], EveningPlan.Of(network, 3 * Hour).Turns.Select(t => t.Start / Hour));
    }

    [Fact]
    public void The_general_rules_of_assembly_form_an_order_of_37_operations()
    {
        var rules = FlightChecks.Lines("shop-precedence.csv").Select(f => new Precedence(f[0], f[1], f[2] == "hard", f[3])).ToValueList();
        var operations = rules.SelectMany(r => (string[])[r.Before, r.After]).Distinct().Select(o => new Activity(o, 1)).ToValueList();
        Assert.Equal((40, 37), (rules.Count, operations.Count));
        var solution = PrecedenceNetwork.Solve(operations, rules);
        Assert.Empty(solution.Cycle);
        Assert.Empty(solution.Network!.GivenUp);
        var place = solution.Network.Times.Select((t, i) => (t.Activity.Id, i)).ToDictionary(t => t.Id, t => t.i);
        Assert.All(rules, r => Assert.True(place[r.Before] < place[r.After], $"{r.Before} before {r.After}"));
    }

    [Fact]
    public void A_circle_is_named()
    {
        Activity[] activities = [new("fit", 1), new("mark", 1), new("drill", 1), new("bond", 1)];
        var solution = PrecedenceNetwork.Solve([.. activities], [new("fit", "mark"), new("mark", "drill"), new("drill", "bond"), new("bond", "mark")]);
        Assert.Null(solution.Network);
        Assert.Equal("mark drill bond mark", string.Join(' ', Turned(solution.Cycle, "mark")));
        var itself = PrecedenceNetwork.Solve([.. activities], [new("fit", "fit")]);
        Assert.Equal("fit fit", string.Join(' ', itself.Cycle));
    }

    [Fact]
    public void A_preference_gives_way_to_physics()
    {
        var network = PrecedenceNetwork.Solve([new("tap", 1), new("drill", 1)], [new("tap", "drill", false), new("drill", "tap")]).Network!;
        Assert.Equal(["drill", "tap"], network.Times.Select(t => t.Activity.Id));
        Assert.Equal([new("tap", "drill", false)], network.GivenUp);
    }

    private static IEnumerable<string> Turned(ValueList<string> cycle, string first)
    {
        var ring = cycle.Skip(1).ToList();
        var at = ring.IndexOf(first);
        return [.. ring[at..], .. ring[..at], first];
    }

    private static PrecedenceNetwork Solved(double bandCure = 12)
    {
        var activities = Bay.Select(o => new Activity(o.Id, (o.Id == "G" ? bandCure : o.Hours) * Hour, !o.Waits)).ToValueList();
        return PrecedenceNetwork.Solve(activities, Bay.SelectMany(o => o.Before.Select(b => new Precedence($"{b}", o.Id))).ToValueList()).Network!;
    }

    private static ActivityTimes Of(PrecedenceNetwork network, string id) => network.Times.Single(t => t.Activity.Id == id);
}
