using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tables;
using Scribeline.Engine.Tests.Published.Separation;

namespace Scribeline.Engine.Tests.Properties.Separation;

/// <summary>The least charge, and what holds a joint at its weakest and strongest.</summary>
public class ChargeSizingTests
{
    private static readonly EjectionInputs Corner = EjectionCases.B with { ChargeMass = 0 };

    [Fact]
    public void Pressure_of_the_least_charge_pushes_as_hard_as_asked()
    {
        var sizing = new ChargeSizing(Corner, 1.5, 0, 0);
        var push = StaticCharge.GaugePressure(sizing.ForForce, Corner.FreeVolume) * Corner.Area;
        Assert.Equal(1.5 * (400 + 60), push, 1e-9);
        Assert.Equal(0, sizing.ForDrawOut);
    }

    [Fact]
    public void Without_anything_that_holds_no_charge_is_needed() =>
        Assert.Equal(0, new ChargeSizing(Corner with { PinForce = 0, StaticFriction = 0, SlidingFriction = 0 }, 1.5, 0, 0).ForForce);

    [Fact]
    public void The_least_charge_just_draws_the_gear_out()
    {
        var sizing = new ChargeSizing(Corner, 1.5, 1, 60);
        var least = sizing.ForDrawOut;
        double Energy(double mass) => (Corner with { ChargeMass = mass, Powder = Powder.Customary.Scaled(StaticCharge.SuccessShare) }).Fire().KineticEnergy;
        Assert.True(Energy(least) >= 60);
        Assert.True(Energy(least - 0.02e-3) < 60);
        Assert.True(new ChargeSizing(Corner, 1.5, 1, 80).ForDrawOut > least);
        Assert.Equal(double.PositiveInfinity, new ChargeSizing(Corner with { PinForce = 1e6 }, 1.5, 1, 60).ForDrawOut);
    }

    [Fact]
    public void A_charge_is_rounded_up_to_a_tenth_of_a_gram()
    {
        Assert.Equal(1.3e-3, new ChargeChoice(1.21e-3, "", 0, 0).Mass, 1e-12);
        Assert.Equal(1.2e-3, new ChargeChoice(1.2e-3, "", 0, 0).Mass, 1e-12);
    }

    [Fact]
    public void Supposed_friction_must_be_overcome_but_does_not_hold()
    {
        var pins = PinSet.Of("#2-56 nylon", 2, ThreadGeometry.Of(ThreadName.Read("#2-56").Value!)!.Value, PinMaterial.Find("nylon")!);
        var supposed = new JointRetention(0, JointKind.Pinned, pins, new(45, 0, 45, false));
        var measured = supposed with { Friction = new(45, 35, 55, true) };
        Assert.Equal(2 * pins.Low, supposed.Weakest(296.15), 1e-9);
        Assert.Equal((2 * pins.High) + 45, supposed.Strongest(296.15), 1e-9);
        Assert.Equal((2 * pins.Low) + 35, measured.Weakest(296.15), 1e-9);
        Assert.True(measured.Weakest(300) < measured.Nominal(300) && measured.Nominal(300) < measured.Strongest(300));
    }

    [Fact]
    public void A_tested_pin_takes_its_own_tolerance_or_the_usual_scatter()
    {
        var stated = PinSet.Tested("pin", 3, 130, 12, Basis.Tested);
        Assert.Equal(3 * 118, stated.Weakest(250), 1e-9);
        Assert.Equal(3 * 142, stated.Strongest(330), 1e-9);
        Assert.Equal(PinSharing.Weak(130, 3), PinSet.Tested("pin", 3, 130, 0, Basis.Tested).Weakest(296), 1e-9);
    }

    /// <summary>Woven nylon: a tenth of its length at a quarter of its strength, all of its stretch at break (from memory).</summary>
    [Fact]
    public void Nylon_stretches_along_two_lines()
    {
        var nylon = CordMaterial.Find("tubular nylon 9/16 in")!;
        var cord = StretchingCord.Nylon(nylon.Strength!.Value, nylon.Stretch, 10);
        Assert.Equal(1, cord.StretchAt(nylon.Strength.Value / 4), 1e-9);
        Assert.Equal(2.75, cord.StretchAt(nylon.Strength.Value), 1e-9);
        Assert.Null(CordMaterial.Find("aramid 1/4 in")!.Strength);
        Assert.Null(CordMaterial.Find("hemp"));

        // The load rises with the energy without a jump at the knee.
        var knee = cord.Knee * cord.Knee / (2 * cord.Soft);
        Assert.Equal(cord.PeakTension(knee * 0.999999), cord.PeakTension(knee * 1.000001), 0.01);
    }
}
