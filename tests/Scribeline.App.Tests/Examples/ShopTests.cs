using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Shop;
using Scribeline.Store;
using UnitsNet;

namespace Scribeline.App.Tests.Examples;

/// <summary>The bench's questions on the examples, and on an example with faults planted in it.</summary>
public class ShopTests
{
    private static Answer Ask(Study study, string id) => Questionnaire.Named(id)!.Ask(study);

    private static Study Changed(Func<RocketDesign, RocketDesign> change) =>
        Studies.Of(change(DesignFile.Read(Path.Combine(AppContext.BaseDirectory, "examples", "night-heron")).Design!)).Nominal!;

    private static RocketDesign Bay(RocketDesign design, Func<AltimeterBayDesign, AltimeterBayDesign> change) =>
        design with { Parts = design.Parts.Select(p => p is AltimeterBayDesign bay ? change(bay) : p).ToValueList() };

    private static RocketDesign Joint(RocketDesign design, int at, Func<JointDesign, JointDesign> change) =>
        design with { Joints = design.Joints.Select((j, i) => i == at ? change(j) : j).ToValueList() };

    private static ValueList<Measure<Length>> Edges(params string[] typed) => typed.Select(t => Measure.Read<Length>(t).Value!).ToValueList();

    private static ValueList<ClockPattern> Clock(string typed) => [ClockPattern.Read(typed).Value!];

    private static Verdict Of(Answer answer, string finding) => answer.Findings.Single(f => f.Name == finding).Verdict;

    [Theory]
    [MemberData(nameof(Example.Sound), MemberType = typeof(Example))]
    public void Examples_leave_nothing_open(string example)
    {
        foreach (var id in new[] { "holes-clear", "plates-clear", "templates", "bonds" })
        {
            var answer = Ask(Example.Nominal(example), id);
            Assert.Empty(answer.Missing);
            Assert.Equal(Verdict.Clear, answer.Verdict);
        }
    }

    [Fact]
    public void A_port_behind_a_screw_head_is_found() =>
        Assert.Equal(Verdict.Stop, Of(Ask(Changed(d => Bay(d, b => b with { Ports = b.Ports! with { FirstClock = Measure.Read<Angle>("30 deg").Value } })), "holes-clear"), "ports of Bay: off the line of what stands ahead"));

    // The widest 1/4-20 wing nut sweeps 18.3 mm about a rod 22.2 mm from the middle of a bore of 38.1 mm radius.
    [Fact]
    public void A_wing_nut_that_touches_the_tube_is_found()
    {
        var answer = Ask(Changed(d => Bay(d, b => b with { Rods = b.Rods! with { Nuts = RodNutWord.Wing } })), "plates-clear");
        var wall = answer.Findings.Single(f => f.Name == "Bay top: narrowest to wall or edge");
        Assert.Equal(Verdict.Stop, wall.Verdict);
        Assert.Equal((38.1 - 22.225 - (36.58 / 2)) / 1000, wall.Value, 1e-5);
    }

    [Fact]
    public void A_hole_on_the_rail_line_is_found()
    {
        var answer = Ask(Changed(d => Joint(d, 2, j => j with { Pins = j.Pins! with { Clock = Clock("halves from 0 deg") } })), "holes-clear");
        Assert.Equal(Verdict.Stop, Of(answer, "free of rail line, least"));
        Assert.Contains(answer.Notes, n => n.Contains("lies on the rail line", StringComparison.Ordinal));
    }

    [Fact]
    public void An_unkeyed_joint_is_found_and_the_proposed_offset_keys_it()
    {
        RocketDesign Even(RocketDesign d) => Joint(d, 0, j => j with { Pins = j.Pins! with { FromEdge = Edges("30 mm") } });
        var answer = Ask(Changed(Even), "holes-clear");
        Assert.Equal(Verdict.Stop, Of(answer, "Nose and Payload: key beyond what blocks a wrong fit"));

        // As the note proposes: 1/8 in farther from the edge.
        Assert.Contains(answer.Notes, n => n.Contains("Move A1 1/8 in farther", StringComparison.Ordinal));
        var keyed = Ask(Changed(d => Joint(d, 0, j => j with { Pins = j.Pins! with { FromEdge = Edges("33.175 mm", "30 mm", "30 mm") } })), "holes-clear");
        Assert.NotEqual(Verdict.Stop, Of(keyed, "Nose and Payload: key beyond what blocks a wrong fit"));
        var said = Ask(Changed(d => Joint(Even(d), 0, j => j with { Unkeyed = true })), "holes-clear");
        Assert.DoesNotContain(said.Findings, f => f.Name.StartsWith("Nose and Payload: key", StringComparison.Ordinal));
    }

    // 8 mm from the edge to the middle of a #9 hole (4.978 mm) is 1.6 diameters.
    [Fact]
    public void An_edge_too_near_is_found()
    {
        var answer = Ask(Changed(d => Joint(d, 1, j => j with { Screws = j.Screws! with { FromEdge = Edges("8 mm") } })), "holes-clear");
        var edge = answer.Findings.Single(f => f.Name == "screws of Payload and Bay: edge distance in diameters");
        Assert.Equal(8 / 4.9784, edge.Value, 1e-3);
        Assert.Equal(Verdict.Stop, edge.Verdict);
    }

    // A guide's screw 35 in from the aft end of a 36 in tube goes through the coupler that must slide out.
    [Fact]
    public void A_screw_in_the_path_of_a_coupler_is_found()
    {
        var study = Changed(d => d with { Parts = d.Parts.Select(p => p.Name == "Booster" ? p with { RailGuides = [p.RailGuides[0] with { FromAftEnd = Edges("1 in", "35 in") }] } : p).ToValueList() });
        Assert.Equal(Verdict.Stop, Of(Ask(study, "holes-clear"), "fasteners across a joint that must let go"));
    }

    // Asked for a place, the program names one for rods and U-bolt, alike on both plates, and nothing touches.
    [Fact]
    public void Rods_and_bolt_without_a_place_are_placed()
    {
        var study = Changed(d => Bay(d, b => b with { Rods = b.Rods! with { Spacing = null, FirstClock = null }, Plates = b.Plates.Select(p => p with { Bolt = p.Bolt! with { Clock = null } }).ToValueList() }));
        var answer = Ask(study, "plates-clear");
        Assert.NotEqual(Verdict.Stop, answer.Verdict);
        Assert.Equal(4, answer.Notes.Count(n => n.Contains("is proposed", StringComparison.Ordinal)));
        var rods = study.Plates.Where(p => p.Proposals.Any(q => q.Group == "rod")).Select(p => p.Proposals.Single(q => q.Group == "rod")).ToArray();
        Assert.Equal(2, rods.Length);
        Assert.Equal(rods[0], rods[1]);
    }

    [Fact]
    public void A_charge_without_a_cup_is_open() =>
        Assert.Equal(Verdict.Open, Ask(Changed(d => Bay(d, b => b with { Plates = b.Plates.Select(p => p with { Carries = [] }).ToValueList() })), "plates-clear").Verdict);

    [Fact]
    public void A_bond_without_an_adhesive_is_open() =>
        Assert.Equal(Verdict.Open, Ask(Changed(d => Bay(d, b => b with { Band = b.Band with { Adhesive = null } })), "bonds").Verdict);

    // Two rows of guides on one tube: every mark is one hole's alone, on walls and plates.
    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Every_mark_is_one_holes_alone(string example)
    {
        var schedule = Example.Nominal(example).HoleSchedule;
        string[] marks = [.. schedule.Holes.Select(h => h.Mark), .. schedule.PlateHoles.Select(h => h.Mark)];
        Assert.Equal(marks.Length, marks.Distinct().Count());
    }

    // π 75.946 mm by 25 mm at 5 MPa, the most laminate carries: 29.82 kN, by hand.
    [Fact]
    public void A_band_carries_its_design_shear()
    {
        var answer = Ask(Example.Nominal("night-heron"), "bonds");
        var load = answer.Working.Steps.First(s => s.Meaning.StartsWith("band of Bay:", StringComparison.Ordinal)).Value;
        Assert.Equal(29.82e3, load * answer.Findings.Single(f => f.Name == "band of Bay: strength over load").Value, 10.0);
    }

    // Warmer by 10 K: exp((55000/8.31446)(1/T2 - 1/T1)) of the working time, by hand.
    [Fact]
    public void Warmth_shortens_the_working_time()
    {
        double Time(string temperature) => Ask(Changed(d => d with { Bench = d.Bench! with { Temperature = Measure.Read<Temperature>(temperature).Value } }), "bonds").Findings.Single(f => f.Name == "laminating epoxy: working time").Value;
        Assert.Equal(Math.Exp(55000 / 8.31446 * ((1 / 303.15) - (1 / 293.15))), Time("30 °C") / Time("20 °C"), 1e-4);
    }

    // What the sheet shows, wrapped back, is where the schedule says: for every hole of every example.
    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Every_hole_has_its_mark(string example)
    {
        var study = Example.Nominal(example);
        foreach (var hole in study.HoleSchedule.Holes)
        {
            var (strip, mark) = study.WrapTemplates.Where(s => s.Kind == WrapKind.Holes).SelectMany(s => s.Marks.Select(m => (s, m))).Single(m => m.m.Hole == hole);
            Assert.Equal(hole.Clock, mark.Along / ((strip.Diameter + strip.Paper) / 2), 1e-9);
            Assert.Equal(hole.Station, strip.Front + mark.Down, 1e-9);
        }
    }
}
