using CsCheck;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Properties.Airframe;

public class VehicleTests
{
    private static readonly Vehicle Rocket = SampleRocket.Vehicle();

    [Fact]
    public void Shoulders_add_no_length_and_a_band_does()
    {
        Assert.Equal(0.40 + 0.50 + 0.025 + 0.90, Rocket.Length, 1e-12);
        Assert.Equal([0, 0.40, 0.90, 0.925], Rocket.Parts.Select(p => Math.Round(p.Front, 9)));
        OuterShape outside = Rocket.Outside();
        Assert.Equal(Rocket.Length, outside.Length, 1e-12);
        Assert.Equal(0.925 + 0.69, outside.Fins[0].RootLeadingEdge, 1e-12);
        for (int i = 1; i < outside.Body.Count; i++) Assert.Equal(outside.Body[i - 1].Front + outside.Body[i - 1].Length, outside.Body[i].Front, 1e-12);
    }

    [Fact]
    public void Joints_know_what_slides_into_what()
    {
        Joint nose = Rocket.Joints[0], bay = Rocket.Joints[1], booster = Rocket.Joints[2];
        Assert.Equal((0.40, 0.08, true, true), (nose.Break, nose.Engagement, nose.ShoulderAhead, nose.Separable));
        Assert.Equal((0.90, 0.09, false, false), (Math.Round(bay.Break, 9), bay.Engagement, bay.ShoulderAhead, bay.Separable));
        Assert.Equal(0.085, booster.Engagement, 1e-12);
        Assert.Equal(0.0002, booster.Play, 1e-12);
    }

    [Fact]
    public void Equal_inputs_make_equal_vehicles()
    {
        Assert.Equal(SampleRocket.Vehicle(), SampleRocket.Vehicle());
        Assert.Equal(SampleRocket.Vehicle().GetHashCode(), SampleRocket.Vehicle().GetHashCode());
        Assert.NotEqual(SampleRocket.Vehicle(), SampleRocket.Vehicle(0.1));
        Assert.Equal(Rocket.Bays(), SampleRocket.Vehicle().Bays());
    }

    [Fact]
    public void Pieces_follow_from_the_joints_that_let_go()
    {
        Assert.Equal([new Piece(0, 3)], Rocket.PiecesAfter());
        Assert.Equal([new Piece(0, 2), new Piece(3, 3)], Rocket.PiecesAfter(2));
        Assert.Equal([new Piece(0, 0), new Piece(1, 2), new Piece(3, 3)], Rocket.PiecesAfter(2, 0));
        Assert.Equal(6, Rocket.PossiblePieces().Count);
        Assert.Contains(new Piece(1, 3), Rocket.PossiblePieces());
        Assert.Equal("Payload to Bay", Rocket.NameOf(new(1, 2)));
    }

    [Fact]
    public void Pieces_add_up_to_the_whole_whatever_lets_go() => Gen.Int[0, 2].Array[0, 3].Sample(released =>
    {
        MassBreakdown masses = Rocket.Masses();
        MassProperties sum = MassProperties.Sum(Rocket.PiecesAfter(released).Select(p => masses.Of(p)));
        MassPropertiesTests.Near(masses.Of(Rocket.Whole), sum, 1e-12);
    });

    [Fact]
    public void Bays_lie_between_closures_and_say_which_joints_open_them()
    {
        ValueList<Bay> bays = Rocket.Bays();
        Assert.Equal(["Payload", "Bay", "Booster"], bays.Select(b => b.Name));
        Assert.Equal([0], bays[0].Opens);
        Assert.Empty(bays[1].Opens);
        Assert.Equal([2], bays[2].Opens);
        Assert.Equal(("Bay bottom", "Mount"), (bays[2].Forward.Name, bays[2].Aft.Name));

        // By hand: bay length 188 mm at 71.8 mm bore less two 5.5 mm rods; booster from the plate at 1.010 through the coupler's end at 1.010
        // to the ring at 1.445, less 20 mm of 57 mm mount.
        double rods = 2 * Math.PI / 4 * 0.0055 * 0.0055 * 0.188;
        Assert.Equal(Math.PI / 4 * 0.0718 * 0.0718 * 0.188 - rods, bays[1].Volume, 1e-12);
        double lastRods = 2 * Math.PI / 4 * 0.0055 * 0.0055 * (0.90 + 0.12 - 1.010);
        Assert.Equal(Math.PI / 4 * (0.076 * 0.076 * 0.435 - 0.057 * 0.057 * 0.020) - lastRods, bays[2].Volume, 1e-12);
        Assert.Equal(bays[2].Volume - 1e-4, bays[2].FreeVolume, 1e-12);

        // The payload bay includes the hollow of the nose and of its shoulder.
        NoseCone nose = (NoseCone)Rocket.Parts[0];
        double cavity = nose.Outside[0].Cavity(nose.Wall).Volume, rodsAhead = 2 * Math.PI / 4 * 0.0055 * 0.0055 * 0.010;
        double tube = Math.PI / 4 * (0.0718 * 0.0718 * 0.08 + 0.076 * 0.076 * (0.90 - 0.09 - 0.48));
        Assert.Equal(cavity + tube - rodsAhead, bays[0].Volume, 1e-9);
    }

    [Fact]
    public void A_weighing_of_the_whole_is_met_exactly() => Gen.Select(Gen.Double[3, 8], Gen.Double[0.9, 1.4], Gen.Bool).Sample((mass, balance, motor) =>
    {
        MotorLoad? load = motor ? SampleRocket.Motor : null;
        PieceWeighing weighing = new(Rocket.Whole, mass, balance, true, load);
        Vehicle weighed = SampleRocket.Vehicle(weighings: [weighing]);
        MassBreakdown masses = weighed.Masses();
        MassProperties whole = MassProperties.Sum(masses.Of(Rocket.Whole), load?.Loaded ?? MassProperties.None());
        Assert.True(masses.Differences[0].Applied);
        Assert.Equal(mass, whole.Mass, 1e-12);
        Assert.Equal(balance, whole.Station, 1e-12);
        Assert.Equal(Basis.Measured, whole.Basis);
    });

    [Fact]
    public void A_weighing_leaves_measured_parts_alone()
    {
        Part[] parts = SampleRocket.Parts();
        parts[0] = parts[0] with { Weighing = new(0.318, 0.24) };
        Vehicle weighed = Vehicle.Stack("Sample", parts, SampleRocket.Kinds, [new(new(0, 3), 4.0, null, true)]);
        MassBreakdown masses = weighed.Masses();
        Assert.Equal(0.318, masses.Parts[0].Built.Mass, 1e-12);
        Assert.Equal(0.24, masses.Parts[0].Built.Station, 1e-12);
        Assert.Equal(4.0, masses.Of(weighed.Whole).Mass, 1e-12);
        Assert.True(masses.Differences[0].SummedMass < 4.0);
    }

    [Fact]
    public void An_impossible_weighing_is_reported_and_not_applied()
    {
        Part[] parts = SampleRocket.Parts();
        parts[0] = parts[0] with { Weighing = new(0.318, null) };
        MassBreakdown masses = Vehicle.Stack("Sample", parts, SampleRocket.Kinds, [new(new(0, 3), 0.2, null, true)]).Masses();
        Assert.False(masses.Differences[0].Applied);
        Assert.Equal(0.318, masses.Parts[0].Built.Mass, 1e-12);
    }

    [Fact]
    public void A_weighed_part_keeps_its_shape() => Gen.Double[0.1, 3].Sample(mass =>
    {
        Part part = SampleRocket.Parts()[1];
        MassProperties drawn = PartMass.Of(part).Built, weighed = PartMass.Of(part with { Weighing = new(mass, null) }).Built;
        Assert.Equal(mass, weighed.Mass, 1e-12);
        Assert.Equal(drawn.Station, weighed.Station);
        Assert.Equal(drawn.Inertia.Yy / drawn.Mass, weighed.Inertia.Yy / mass, 1e-12);
    });
}
