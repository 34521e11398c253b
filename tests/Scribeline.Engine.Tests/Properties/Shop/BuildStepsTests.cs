using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tests.Published.Flight;
using UnitsNet;
using static Scribeline.Engine.Tests.Properties.Resolving.SampleDesign;

namespace Scribeline.Engine.Tests.Properties.Shop;

/// <summary>The steps that a typed design asks for, and their order.</summary>
public class BuildStepsTests
{
    private static readonly JointDesign Pinned = new()
    {
        Between = ["Nose", "Payload"],
        Kind = JointWord.Pinned,
        Pins = new() { Screw = ScrewName.Read("#2-56 nylon").Value!, Count = 2, Clock = [ClockPattern.Read("60 deg").Value!, ClockPattern.Read("240 deg").Value!], FromEdge = [L("30 mm")] },
    };

    private static readonly JointDesign Screwed = new()
    {
        Between = ["Payload", "Bay"],
        Kind = JointWord.Screwed,
        Screws = new() { Thread = ThreadName.Read("6-32").Value!, Count = 3, Clock = [ClockPattern.Read("thirds from 60 deg").Value!], FromEdge = [L("3/4 in")], Into = ScrewHoldWord.CaptiveNut, Head = ScrewHeadWord.Flat },
    };

    private static readonly FinsDesign Tabbed = Booster.Fins[0] with { Tab = new() { Length = L("6 in"), Depth = L("0.3 in") }, Fillet = L("1/4 in") };

    private static readonly RocketDesign Design = TypedRocket with
    {
        Parts = [Nose, Payload, Bay, Booster with { Fins = [Tabbed] }],
        Joints = [Pinned, Screwed, TypedRocket.Joints[0]],
        Surface = new() { Finish = Finish.SprayedPaint },
    };

    private static readonly BuildSteps Steps = Build(Design);

    private static readonly PrecedenceNetwork Network = Steps.Solve().Network!;

    [Fact]
    public void No_two_steps_share_an_id_and_none_waits_for_itself()
    {
        Assert.Equal(Steps.Steps.Count, Steps.Steps.Select(s => s.Id).Distinct().Count());
        Assert.Empty(Steps.Solve().Cycle);
        Assert.Empty(Network.GivenUp);
        Assert.All(Steps.Steps, s => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*/[a-z]+(-[a-z]+)*$", s.Id));
    }

    [Theory]
    [InlineData("booster-rings/bond", "booster-mount/dry-fit", "booster-mount/bond", "booster-fins/dry-fit", "booster-fins/bond", "booster-fillets/bond")]
    [InlineData("rocket/mark-datum", "booster-fins/cut-slots", "booster-fins/dry-fit", "booster-fins/scuff", "booster-fins/clean", "booster-fins/mask", "booster-fins/mix", "booster-fins/bond", "booster-fins/wipe", "booster-fins/unmask", "booster-fins/cure", "booster-fins/full-cure", "rocket/ready")]
    [InlineData("nose-to-payload/fit-joint", "rocket/mark-datum", "pins-of-nose-and-payload/mark-holes", "pins-of-nose-and-payload/drill", "pins-of-nose-and-payload/deburr", "pins-of-nose-and-payload/tap", "rocket/test-fit", "nose/weigh", "rocket/balance", "rocket/ready")]
    [InlineData("screws-of-payload-and-bay/drill", "screws-of-payload-and-bay/deburr", "screws-of-payload-and-bay/bond-nuts", "screws-of-payload-and-bay/cure-nuts", "rocket/paint", "rocket/dry-paint", "rocket/test-fit")]
    [InlineData("bay/fit-hardware", "bay/wire", "rocket/test-fit")]
    public void One_thing_comes_after_the_other(params string[] ids)
    {
        var plan = EveningPlan.Of(Network, 3 * 3600).Turns.ToDictionary(t => t.Activity.Id);
        Assert.All(ids.Zip(ids.Skip(1)), pair => Assert.True(plan[pair.First].Finish <= plan[pair.Second].Start + 1e-6, $"{pair.First} before {pair.Second}"));
    }

    // The general rules of assembly, in their own words; those that speak of what no step here is have no pair.
    [Fact]
    public void Every_general_rule_of_assembly_is_kept_at_its_place()
    {
        Dictionary<string, string> works = new()
        {
            ["dry_fit"] = "dry-fit",
            ["bond"] = "bond",
            ["mark_datum"] = "mark-datum",
            ["mark_holes"] = "mark-holes",
            ["scuff"] = "scuff",
            ["drill"] = "drill",
            ["clean"] = "clean",
            ["mask"] = "mask",
            ["mix"] = "mix",
            ["wipe"] = "wipe",
            ["unmask"] = "unmask",
            ["cure_handling"] = "cure",
            ["cure_full"] = "full-cure",
            ["match_drill"] = "drill",
            ["deburr"] = "deburr",
            ["countersink"] = "countersink",
            ["tap"] = "tap",
            ["clean_chips"] = "deburr",
            ["bond_captive_nut"] = "bond-nuts",
            ["cure_nut"] = "cure-nuts",
            ["torque_screws"] = "test-fit",
            ["drill_vents"] = "drill",
            ["solder"] = "wire",
            ["fit_electronics"] = "wire",
            ["test_fit"] = "test-fit",
            ["threadlocker"] = "fit-hardware",
            ["cure_threadlocker"] = "cure-locker",
            ["paint"] = "paint",
            ["weigh_balance"] = "balance",
            ["bring_energetics"] = "ready",
            ["load_test"] = "ready",
        };
        var start = Network.Times.ToDictionary(t => t.Activity.Id, t => t);
        var checkedPairs = 0;
        foreach (var rule in FlightChecks.Lines("shop-precedence.csv").Where(f => works.ContainsKey(f[0]) && works.ContainsKey(f[1]) && works[f[0]] != works[f[1]]))
        {
            // Joints are fitted dry before the line is scribed; what is bonded later, before its own bond.
            var first = rule[0] == "dry_fit" && rule[1] == "mark_datum" ? "fit-joint" : works[rule[0]];
            foreach (var before in Steps.Steps.Where(s => s.Id.EndsWith($"/{first}", StringComparison.Ordinal)))
            {
                foreach (var after in Steps.Steps.Where(s => s.Id.EndsWith($"/{works[rule[1]]}", StringComparison.Ordinal) && (s.Place == before.Place || s.Place == "rocket")))
                {
                    checkedPairs++;
                    Assert.True(start[before.Id].EarlyFinish <= start[after.Id].EarlyStart, $"{before.Id} before {after.Id}: {rule[3]}");
                }
            }
        }

        Assert.True(checkedPairs > 60, $"only {checkedPairs} pairs");
    }

    [Fact]
    public void Powder_comes_last()
    {
        Assert.Equal("rocket/ready", Network.Times[^1].Activity.Id);
        HashSet<string> before = ["rocket/ready"];
        foreach (var times in Network.Times.Reverse()) before.UnionWith(before.Contains(times.Activity.Id) ? Network.Precedences.Where(p => p.Hard && p.After == times.Activity.Id).Select(p => p.Before) : []);
        Assert.Empty(Steps.Steps.Where(s => !before.Contains(s.Id) && s.Work is not BuildWork.Weigh and not BuildWork.Balance and not BuildWork.Measure).Select(s => s.Id));
    }

    [Fact]
    public void Ids_stay_when_something_else_changes()
    {
        var changed = Design with
        {
            Parts = [Nose with { Length = L("17 in") }, Payload with { Vents = [new() { Count = 1, Diameter = AutoOr<Length>.Read("1/8 in").Value!, FromForwardEnd = L("5 in") }] }, Bay, Booster with { Fins = [Tabbed with { Count = 4, Root = L("9 in") }] }],
            Surface = null,
        };
        var ids = Build(changed).Steps.Select(s => s.Id).ToHashSet();
        Assert.Equal(["rocket/dry-paint", "rocket/paint"], Steps.Steps.Select(s => s.Id).Where(i => !ids.Contains(i)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Sizes_are_asked_for_where_they_can_be_measured()
    {
        Assert.Equal(["Booster length", "Booster outside", "Booster wall"], Steps.Named("booster/measure")!.Asks);
        Assert.Contains("Booster fins thickness", Steps.Named("booster-fins/dry-fit")!.Asks);
        Assert.Equal(["Booster mass", "Booster balance"], Steps.Named("booster/weigh")!.Asks);
        Assert.Contains("Bay top thickness", Steps.Named("bay/measure")!.Asks);
    }

    // Paste: handling 7 h and full strength 72 h at 25 °C. At 15 °C cures take 2.160 times as long (55 kJ/mol, by hand).
    [Theory]
    [InlineData(null, 7, 65)]
    [InlineData("25 °C", 7, 65)]
    [InlineData("15 °C", 15.12, 140.4)]
    public void A_named_adhesive_sets_by_its_sheet_and_the_workshop(string? temperature, double handling, double more)
    {
        var design = Design with
        {
            Parts = [Nose, Payload, Bay, Booster with { Fins = [Tabbed with { Adhesive = "structural epoxy paste" }] }],
            Bench = temperature is null ? null : new() { Temperature = Measure.Read<Temperature>(temperature).Value },
        };
        var steps = Build(design);
        Assert.Equal(handling, steps.Named("booster-fins/cure")!.Duration / 3600, 0.04);
        Assert.Equal(more, steps.Named("booster-fins/full-cure")!.Duration / 3600, 0.4);
        Assert.DoesNotContain(steps.Missing, m => m.Contains("fins", StringComparison.Ordinal));
        Assert.Contains(Steps.Missing, m => m.Contains("fins", StringComparison.Ordinal));
    }

    [Fact]
    public void A_wait_begins_with_the_last_step_before_it_and_ends_by_itself()
    {
        var start = new DateTimeOffset(2026, 5, 4, 18, 0, 0, TimeSpan.Zero);
        var all = new[] { "dry-fit", "scuff", "clean", "mask", "mix", "bond", "wipe", "unmask" }.Select((w, i) => new StepTick($"booster-rings/{w}", true, "", start.AddMinutes(i))).ToArray();
        var later = start.AddMinutes(7);

        // 24 h of setting begin when the tape is off.
        var setting = BuildProgress.Of(Steps, Network, all, later.AddHours(23));
        var cure = Assert.Single(setting.Setting);
        Assert.Equal(("booster-rings/cure", later.AddHours(24)), (cure.Step.Id, cure.At!.Value));
        Assert.Equal(3600, setting.Left.Times.Single(t => t.Activity.Id == "booster-rings/cure").Activity.Duration);
        Assert.DoesNotContain(setting.Next, s => s.Step.Place == "booster-mount");
        var set = BuildProgress.Of(Steps, Network, all, later.AddHours(24));
        Assert.Contains(set.Next, s => s.Step.Id == "booster-mount/dry-fit");
        Assert.Equal(StepState.Done, set.Steps.Single(s => s.Step.Id == "booster-rings/cure").State);
    }

    [Fact]
    public void What_was_taken_back_or_has_gone_from_the_design_is_not_done()
    {
        var now = new DateTimeOffset(2026, 5, 4, 18, 0, 0, TimeSpan.Zero);
        var progress = BuildProgress.Of(Steps, Network, [new("nose/measure", true, "round", now), new("payload/measure", false, "", now), new("tail-cone/measure", true, "", now)], now);
        Assert.Equal(["nose/measure"], progress.Steps.Where(s => s.State == StepState.Done).Select(s => s.Step.Id));
        Assert.Equal(["tail-cone/measure"], progress.Strangers);
        Assert.Contains(progress.Next, s => s.Step.Id == "payload/measure");
        Assert.DoesNotContain(progress.Next, s => s.Step.Id == "rocket/mark-datum");
    }

    [Fact]
    public void All_done_leaves_nothing()
    {
        var now = new DateTimeOffset(2026, 5, 4, 18, 0, 0, TimeSpan.Zero);
        var progress = BuildProgress.Of(Steps, Network, Steps.Steps.Select(s => new StepTick(s.Id, true, "", now)), now);
        Assert.Empty(progress.Next);
        Assert.Empty(progress.Left.Times);
        Assert.Equal(0, EveningPlan.Of(progress.Left, 3600).Elapsed);
    }

    [Fact]
    public void A_drawn_case_is_not_built() =>
        Assert.Equal(BuildSteps.None, DesignResolver.Resolve(Design, m => m.Si, chosen: []).Rocket!.Build);

    private static BuildSteps Build(RocketDesign design) => DesignResolver.Resolve(design, m => m.Si).Rocket!.Build;
}
