using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Shop;
using UnitsNet;
using static Scribeline.Engine.Tests.Properties.Resolving.SampleDesign;

namespace Scribeline.Engine.Tests.Properties.Shop;

/// <summary>The schedule of a typed design, place by place, and its templates.</summary>
public class HoleScheduleTests
{
    private static readonly JointDesign Pinned = new()
    {
        Between = ["Nose", "Payload"],
        Kind = JointWord.Pinned,
        Pins = new() { Screw = ScrewName.Read("#2-56 nylon").Value!, Count = 2, Clock = [ClockPattern.Read("60 deg").Value!, ClockPattern.Read("-90 deg").Value!], FromEdge = [L("30 mm"), L("34 mm")] },
    };

    private static readonly JointDesign Screwed = new()
    {
        Between = ["Payload", "Bay"],
        Kind = JointWord.Screwed,
        Screws = new() { Thread = ThreadName.Read("6-32").Value!, Count = 3, Clock = [ClockPattern.Read("thirds from 60 deg").Value!], FromEdge = [L("3/4 in")], Into = ScrewHoldWord.CaptiveNut, Head = ScrewHeadWord.Flat },
    };

    private static readonly RocketDesign Design = TypedRocket with
    {
        Parts = [Nose, Payload, Bay with { Ports = new() { Count = 3, Diameter = AutoOr<Length>.Read("1/8 in").Value!, FirstClock = Measure.Read<Angle>("20 deg").Value } }, Booster],
        Joints = [Pinned, Screwed, TypedRocket.Joints[0]],
    };

    private static readonly Rocket Rocket = DesignResolver.Resolve(Design, m => m.Si).Rocket!;

    private static Hole[] Row(HoleKind kind) => [.. Rocket.Shop.Holes.Holes.Where(h => h.Kind == kind)];

    // The tube's edge is where the nose ends, 15 in from its tip; 30 mm of arc per radian times half of 3.12 in.
    [Fact]
    public void Pins_are_measured_from_the_edge_of_the_outer_tube()
    {
        var pins = Row(HoleKind.Pin);
        Assert.Equal([0.381 + 0.030, 0.381 + 0.034], pins.Select(p => p.Station), (a, b) => Math.Abs(a - b) < 1e-12);
        Assert.Equal([Math.PI / 3, 1.5 * Math.PI], pins.Select(p => p.Clock), (a, b) => Math.Abs(a - b) < 1e-12);
        Assert.Equal(Math.PI / 3 * 1.56 * 0.0254, pins[0].Arc, 1e-12);
        Assert.Equal("forward edge of Payload", pins[0].Edge.Name);
        Assert.Equal(["Payload", "Nose"], pins[0].Parts);
    }

    // US shop practice chart: #2-56 taps after #50; ASME B18.2.8 close fit 3/32. The nose's shoulder has a wall of 0.08 in.
    [Fact]
    public void A_pin_is_tapped_in_the_inner_wall()
    {
        var cuts = Row(HoleKind.Pin)[0].Cuts;
        Assert.Equal(["3/32", "#50"], cuts.Select(c => c.Drill!.Name));
        Assert.Equal([null, "#2-56"], cuts.Select(c => c.Tap));
        Assert.Equal(0.08 * 0.0254, cuts[1].Depth, 1e-12);
    }

    // ASME B18.2.8 normal fit of #6 is #18; the flat head is sunk at 82°.
    [Fact]
    public void A_screw_is_clear_through_both_walls_and_sunk_in_the_outer()
    {
        var cuts = Row(HoleKind.Screw)[0].Cuts;
        Assert.Equal(["#18", "#18"], cuts.Select(c => c.Drill!.Name));
        Assert.Equal(82, cuts[0].CountersinkAngle * 180 / Math.PI, 1e-9);
        Assert.Contains("nut #6-32", cuts[1].Remark, StringComparison.Ordinal);
        Assert.Equal(0, cuts[1].Countersink);
    }

    [Fact]
    public void What_was_left_out_is_named() => Assert.Contains(Rocket.Shop.Holes.Missing, m => m.Contains("screw", StringComparison.Ordinal) && m.Contains("rail guides", StringComparison.Ordinal));

    [Fact]
    public void A_hole_off_the_rocket_is_named_and_takes_no_letter()
    {
        var wild = Design with { Joints = [Pinned with { Pins = Pinned.Pins! with { FromEdge = [L("9 m")] } }, Screwed, TypedRocket.Joints[0]] };
        var schedule = DesignResolver.Resolve(wild, m => m.Si).Rocket!.Shop.Holes;
        Assert.Contains(schedule.Missing, m => m.Contains("pins of Nose and Payload", StringComparison.Ordinal));
        Assert.Equal("A1", schedule.Holes[0].Mark);
        Assert.DoesNotContain(schedule.Holes, h => h.Kind == HoleKind.Pin);
    }

    // By the geometry of a rolled strip, not by the code that made it: angle is length over the radius of the paper's middle.
    [Fact]
    public void Every_mark_wrapped_back_lies_on_its_hole()
    {
        var strips = WrapTemplates.Of(Rocket.Vehicle, Rocket.Shop.Holes);
        var marks = strips.SelectMany(s => s.Marks.Select(m => (Strip: s, Mark: m))).ToArray();
        Assert.All(Rocket.Shop.Holes.Holes, h => Assert.Contains(marks, m => m.Mark.Hole == h && m.Strip.Kind == WrapKind.Holes));
        Assert.All(marks, m =>
        {
            var angle = m.Mark.Along / ((m.Strip.Diameter + m.Strip.Paper) / 2);
            Assert.Equal(m.Mark.Hole.Clock, angle, 1e-12);
            Assert.Equal(m.Mark.Hole.Station, m.Strip.Front + m.Mark.Down, 1e-12);
            Assert.InRange(m.Mark.Down, 0, m.Strip.Height);
        });
    }

    [Fact]
    public void A_shoulder_has_the_holes_that_come_through_to_it()
    {
        var shoulder = WrapTemplates.Of(Rocket.Vehicle, Rocket.Shop.Holes).Single(s => s.Kind == WrapKind.Shoulder && s.PartName == "Nose");
        Assert.Equal(2.99 * 0.0254, shoulder.Diameter, 1e-12);
        Assert.Equal([0.030, 0.034], shoulder.Marks.Select(m => m.Down), (a, b) => Math.Abs(a - b) < 1e-12);
    }
}
