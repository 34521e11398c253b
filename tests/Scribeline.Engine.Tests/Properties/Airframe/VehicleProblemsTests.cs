using Scribeline.Engine.Airframe;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Properties.Airframe;

public class VehicleProblemsTests
{
    private static readonly Vehicle Sound = SampleRocket.Vehicle();

    private static ValueList<Problem> With(int index, Func<Part, Part> change)
    {
        Part[] parts = SampleRocket.Parts();
        parts[index] = change(parts[index]);
        return VehicleProblems.In(Vehicle.Stack("Sample", parts, SampleRocket.Kinds));
    }

    private static void Complains(ValueList<Problem> problems, string at, string words)
    {
        Assert.Contains(problems, p => p.At == at && p.Message.Contains(words, StringComparison.Ordinal));
        Assert.All(problems, p => Assert.EndsWith(".", p.Message));
    }

    [Fact]
    public void A_sound_rocket_has_none() => Assert.Empty(VehicleProblems.In(Sound));

    [Fact]
    public void Tubes_must_be_hollow_and_have_a_wall() =>
        Complains(With(1, p => (Tube)p with { InnerDiameter = 0.081 }), "parts[1].inside", "must lie between 0 and its outside");

    [Fact]
    public void A_wall_may_not_fill_the_nose() => Complains(With(0, p => (NoseCone)p with { Wall = 0.05 }), "parts[0].wall", "does not go into");

    [Fact]
    public void A_shoulder_may_not_be_wider_than_the_tube()
    {
        Complains(With(0, p => (NoseCone)p with { Shoulder = new(0.08, 0.0762, 0.07) }), "joints[0]", "0.2 mm too wide");
        Complains(With(0, p => (NoseCone)p with { Shoulder = new(0.08, 0.0812, 0.07) }), "parts[0].shoulder.outside", "wider than");
    }

    [Fact]
    public void A_loose_joint_is_named() => Complains(With(0, p => (NoseCone)p with { Shoulder = new(0.08, 0.0745, 0.07) }), "joints[0]", "of play");

    [Fact]
    public void A_joint_needs_something_that_slides() =>
        Complains(With(0, p => (NoseCone)p with { Shoulder = default }), "joints[0]", "slides into the other");

    [Fact]
    public void Ends_may_not_meet_inside_a_tube() => Complains(With(1, p => (Tube)p with { TubeLength = 0.12 }), "joints[0]", "overlap by 50 mm");

    [Fact]
    public void The_outside_may_not_step() =>
        Complains(With(3, p => (Tube)p with { OuterDiameter = 0.086 }), "joints[2]", "steps by 6 mm");

    [Fact]
    public void Fins_end_with_their_tube() => Complains(
        With(3, p => p with { Fittings = p.Fittings.Select(f => f is FinPlates x ? x with { Fins = x.Fins with { RootLeadingEdge = 0.72 } } : f).ToValueList() }),
        "parts[3].fins", "runs from 720 mm to 920 mm");

    [Fact]
    public void Plates_and_rings_fit_their_place()
    {
        Complains(With(2, p => Changed(p, f => f is BulkPlate x ? x with { Diameter = 0.074 } : f)), "parts[2].plates[0].outside", "there is room for 71.8 mm");
        Complains(With(3, p => Changed(p, f => f is CentringRing x ? x with { InnerDiameter = 0.05 } : f)), "parts[3].motor mount", "does not go over");
        Complains(With(2, p => Changed(p, f => f is Rods x ? x with { CircleRadius = 0.035 } : f)), "parts[2].rods", "reach 75.5 mm across");
    }

    [Fact]
    public void What_is_stowed_must_fit_its_bay()
    {
        Complains(With(1, p => p with { Stowed = [new("Main", 0.1, 0.15, 0.09, 0.2, 1e-4)] }), "stowed", "packs 90 mm across");
        Complains(With(1, p => p with { Stowed = [new("Main", 0.1, 0.15, 0.07, 0.2, 1e-2)] }), "stowed", "cm³");
    }

    [Fact]
    public void An_impossible_weighing_is_named()
    {
        Part[] parts = SampleRocket.Parts();
        parts[0] = parts[0] with { Weighing = new(0.5, null) };
        Complains(VehicleProblems.In(Vehicle.Stack("Sample", parts, SampleRocket.Kinds, [new(new(0, 3), 0.4, null, true)])), "weighings", "weighed 400 g");
    }

    [Fact]
    public void A_motor_must_go_into_its_mount()
    {
        Assert.Empty(VehicleProblems.In(Sound, Motor(0.054, 0.40)));
        Complains(VehicleProblems.In(Sound, Motor(0.075, 0.40)), "parts[3].motor mount", "75 mm across");
        Complains(VehicleProblems.In(Sound, Motor(0.038, 0.40)), "parts[3].motor mount", "far thinner");

        // Mount's rear at 1.825 m, the bay ahead begins at 1.010 m: 0.815 m of room.
        Assert.Empty(VehicleProblems.In(Sound, Motor(0.054, 0.81)));
        Complains(VehicleProblems.In(Sound, Motor(0.054, 0.82)), "parts[3].motor mount", "past Bay bottom");
    }

    private static Part Changed(Part part, Func<Fitting, Fitting> change) => part with { Fittings = part.Fittings.Select(change).ToValueList() };

    private static Motor Motor(double diameter, double length) => new(
        "M", new([new(0, 0), new(0.1, 500), new(2, 400), new(2.1, 0)]), diameter, length, 1.2, 0.6, null, null, null, [], true, Basis.Measured);
}
