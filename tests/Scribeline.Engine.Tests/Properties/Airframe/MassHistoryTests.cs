using CsCheck;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Properties.Airframe;

public class MassHistoryTests
{
    private static readonly Vehicle Rocket = SampleRocket.Vehicle(ballastClock: 0.6);
    private static readonly MassProperties Dry = Rocket.Masses().Of(Rocket.Whole);
    private static readonly MassHistory History = Rocket.History(Rocket.Whole, SampleRocket.Motor);

    private static void Same(MassProperties expected, MassState<Scalar> actual)
    {
        Assert.Equal(expected.Mass, actual.Mass, 1e-12);
        Assert.Equal(expected.Station, actual.Station, 1e-12);
        Assert.Equal(expected.OffsetY, actual.OffsetY, 1e-12);
        Assert.Equal(expected.OffsetZ, actual.OffsetZ, 1e-12);
        Assert.Equal(expected.Inertia.Xx, actual.Axial, 1e-12);
        Assert.Equal(expected.Inertia.Lateral, actual.Lateral, 1e-12);
        MassTensor<Scalar> i = actual.Inertia;
        InertiaTensor difference = expected.Inertia - new InertiaTensor(i.Xx, i.Yy, i.Zz, i.Xy, i.Xz, i.Yz);
        Assert.All([difference.Yy, difference.Zz, difference.Xy, difference.Xz, difference.Yz], d => Assert.Equal(0, d, 1e-12));
    }

    [Fact]
    public void It_begins_loaded_and_ends_burnt()
    {
        Same(MassProperties.Sum(Dry, SampleRocket.Motor.Loaded), History.At<Scalar>(0));
        Same(MassProperties.Sum(Dry, SampleRocket.Motor.Burnt), History.At<Scalar>(1));
    }

    /// <summary>Half way, the cored grain is a thinner hollow cylinder of the same density and length.</summary>
    [Fact]
    public void Half_way_the_core_has_grown() => Gen.Double[0, 1].Sample(burned =>
    {
        MotorLoad motor = SampleRocket.Motor;
        double core = Math.Sqrt(Math.Pow(motor.CoreDiameter, 2) + burned * (Math.Pow(motor.GrainDiameter, 2) - Math.Pow(motor.CoreDiameter, 2)));
        double density = motor.PropellantMass / RevolutionMoments.Ring(0, motor.GrainLength, motor.GrainDiameter, motor.CoreDiameter).Volume;
        MassProperties grain = RevolutionMoments.Ring(motor.Front + motor.GrainFront, motor.GrainLength, motor.GrainDiameter, core).Filled(density);
        Same(MassProperties.Sum(Dry, motor.Burnt, grain), History.At<Scalar>(burned));
    });

    [Fact]
    public void Rates_are_the_derivatives() => Gen.Double[0.01, 0.99].Sample(burned =>
    {
        const double h = 1e-5;
        MassState<Scalar> before = History.At<Scalar>(burned - h), after = History.At<Scalar>(burned + h), rate = History.RateAt<Scalar>(burned);
        Assert.Equal((after.Mass - before.Mass) / (2 * h), rate.Mass, 1e-8);
        Assert.Equal((after.Station - before.Station) / (2 * h), rate.Station, 1e-8);
        Assert.Equal((after.OffsetY - before.OffsetY) / (2 * h), rate.OffsetY, 1e-8);
        Assert.Equal((after.Inertia.Xy - before.Inertia.Xy) / (2 * h), rate.Inertia.Xy, 1e-8);
        Assert.Equal((after.Axial - before.Axial) / (2 * h), rate.Axial, 1e-8);
        Assert.Equal((after.Lateral - before.Lateral) / (2 * h), rate.Lateral, 1e-8);
    });

    [Fact]
    public void Lanes_agree_with_one_flight() => Gen.Double[0, 1].Array[8].Sample(burned =>
    {
        MassState<Wide8> at = History.At(Wide8.Load(burned)), rate = History.RateAt(Wide8.Load(burned));
        for (int lane = 0; lane < 8; lane++)
        {
            Same(History.At<Scalar>(burned[lane]), at, lane);
            Same(History.RateAt<Scalar>(burned[lane]), rate, lane);
        }
    });

    private static void Same(MassState<Scalar> one, MassState<Wide8> many, int lane)
    {
        foreach ((Scalar a, Wide8 b) in new[]
        {
            (one.Mass, many.Mass), (one.Station, many.Station), (one.OffsetY, many.OffsetY), (one.OffsetZ, many.OffsetZ),
            (one.Axial, many.Axial), (one.Lateral, many.Lateral), (one.Inertia.Xy, many.Inertia.Xy), (one.Inertia.Yz, many.Inertia.Yz),
        })
        {
            Assert.Equal(a.Value, Wide8.Lane(b, lane), 1e-15 * (1 + Math.Abs(a.Value)));
        }
    }

    [Fact]
    public void A_piece_without_the_motor_keeps_its_mass()
    {
        MassHistory payload = Rocket.History(new(0, 2), SampleRocket.Motor);
        Assert.Equal(payload.At<Scalar>(0), payload.At<Scalar>(1));
        Assert.Equal(Rocket.Masses().Of(new(0, 2)).Mass, payload.At<Scalar>(0.5).Mass, 1e-12);
    }
}
