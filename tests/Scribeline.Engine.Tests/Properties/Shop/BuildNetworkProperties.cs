using CsCheck;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Tests.Properties.Shop;

/// <summary>What must be true of any network and of any plan made from it.</summary>
public class BuildNetworkProperties
{
    // Precedences from any activity to any other, so that some networks are circles.
    private static readonly Gen<(Activity[] Activities, Precedence[] Precedences)> Networks =
        Gen.Int[1, 12].SelectMany(n => Gen.Select(
            Gen.Select(Gen.Double[0, 5], Gen.Bool, Gen.Int[0, 6]).Array[n],
            Gen.Select(Gen.Int[0, n - 1], Gen.Int[0, n - 1], Gen.Bool).Array[0, 2 * n]))
        .Select((a, p) => (
            a.Select((x, i) => new Activity($"{i}", x.Item1, x.Item2, x.Item3 < 2 ? $"s{x.Item3}" : null)).ToArray(),
            p.Select(x => new Precedence($"{x.Item1}", $"{x.Item2}", x.Item3)).ToArray()));

    [Fact]
    public void A_network_is_solved_or_shows_a_circle_of_its_own_precedences() => Networks.Sample(n =>
    {
        var solution = PrecedenceNetwork.Solve([.. n.Activities], [.. n.Precedences]);
        if (solution.Network is null)
        {
            Assert.True(solution.Cycle.Count > 1 && solution.Cycle[0] == solution.Cycle[^1]);
            Assert.All(solution.Cycle.Zip(solution.Cycle.Skip(1)), pair => Assert.Contains(n.Precedences, p => p.Hard && p.Before == pair.First && p.After == pair.Second));
            return;
        }

        var times = solution.Network.Times.ToDictionary(t => t.Activity.Id);
        Assert.All(solution.Network.Precedences, p => Assert.True(times[p.Before].EarlyFinish <= times[p.After].EarlyStart && times[p.Before].LateFinish <= times[p.After].LateStart + 1e-9));
        Assert.All(n.Precedences.Where(p => p.Hard), p => Assert.Contains(p, solution.Network.Precedences));
        Assert.All(times.Values, t => Assert.True(t.Float >= -1e-9));
        Assert.All(solution.Network.CriticalPath, id => Assert.Equal(0, times[id].Float, 1e-9));
        Assert.Equal(solution.Network.Duration, solution.Network.CriticalPath.Sum(id => times[id].Activity.Duration), 1e-9);
    });

    [Fact]
    public void A_plan_keeps_every_precedence_does_one_thing_at_a_time_and_beats_no_critical_path() =>
        Gen.Select(Networks, Gen.Double[1, 24]).Sample((n, hours) =>
        {
            if (PrecedenceNetwork.Solve([.. n.Activities.Select(a => a with { Duration = 3600 * a.Duration })], [.. n.Precedences]).Network is not { } network) return;
            var plan = EveningPlan.Of(network, 3600 * hours);
            Assert.Equal(n.Activities.Select(a => a.Id).Order(StringComparer.Ordinal), plan.Turns.Select(t => t.Activity.Id).Order(StringComparer.Ordinal));
            var turns = plan.Turns.ToDictionary(t => t.Activity.Id);
            Assert.All(network.Precedences, p => Assert.True(turns[p.Before].Finish <= turns[p.After].Start + 1e-6));
            var works = plan.Turns.Where(t => t.Activity is { HandsOn: true, Duration: > 0 }).OrderBy(t => t.Start).ToArray();
            Assert.All(works.Zip(works.Skip(1)), pair => Assert.True(pair.First.Finish <= pair.Second.Start + 1e-6));
            Assert.All(works.Where(t => t.Activity.Sitting is null && t.Activity.Duration <= plan.Hours), t => Assert.True((t.Start % EveningPlan.Day) + t.Activity.Duration <= plan.Hours + 1e-5));
            Assert.True(plan.Elapsed >= network.Duration - 1e-6);
        });
}
