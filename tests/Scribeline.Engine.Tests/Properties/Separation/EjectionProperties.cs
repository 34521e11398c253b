using CsCheck;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tests.Published.Separation;

namespace Scribeline.Engine.Tests.Properties.Separation;

/// <summary>What must hold of every ejection, whatever its numbers.</summary>
public class EjectionProperties
{
    private static readonly Gen<EjectionInputs> Any =
        from charge in Gen.Double[0.2e-3, 5e-3]
        from volume in Gen.Double[0.3e-3, 8e-3]
        from bore in Gen.Double[0.05, 0.15]
        from stroke in Gen.Double[0.03, 0.2]
        from ahead in Gen.Double[0.3, 5]
        from behind in Gen.Double[0.5, 15]
        from pins in Gen.Double[0, 900]
        from friction in Gen.Double[0, 150]
        from height in Gen.Double[0, 1]
        from wall in Gen.Double[0.02, 0.3]
        from vents in Gen.Double[0, 60e-6]
        select new EjectionInputs
        {
            ChargeMass = charge,
            FreeVolume = volume,
            Bore = bore,
            Stroke = stroke,
            ForwardMass = ahead,
            AftMass = behind,
            PinForce = pins,
            StaticFriction = friction,
            SlidingFriction = 0.7 * friction,
            AmbientPressure = 101_325 - (60_000 * height),
            AmbientTemperature = 288 - (40 * height),
            WallArea = wall,
            VentArea = vents,
        };

    [Fact]
    public void Energy_and_momentum_are_kept() => Any.Sample(
        inputs =>
        {
            var e = inputs.Fire();
            var momentum = (inputs.ForwardMass * e.ForwardSpeed) - (inputs.AftMass * e.AftSpeed);
            var scale = inputs.ReducedMass * e.SeparationSpeed;
            var kinetic = (inputs.ForwardMass * e.ForwardSpeed * e.ForwardSpeed / 2) + (inputs.AftMass * e.AftSpeed * e.AftSpeed / 2);
            return e.Parted == e.SeparationSpeed > 0 && e.EnergyLost < 1e-6 && Math.Abs(momentum) <= 1e-9 * scale && Math.Abs(kinetic - e.KineticEnergy) <= 1e-9 * e.KineticEnergy;
        },
        iter: 100);

    // A weak charge that cools early draws the pieces together again: its coupler reaches the end of the tube all but standing.
    [Fact]
    public void A_joint_that_is_sucked_back_did_not_part()
    {
        EjectionInputs weak = new()
        {
            ChargeMass = 0.3127e-3,
            FreeVolume = 1.967e-3,
            Bore = 0.10309,
            Stroke = 0.13636,
            ForwardMass = 4.729,
            AftMass = 6.887,
            PinForce = 340,
            StaticFriction = 0,
            SlidingFriction = 0,
            AmbientPressure = 101_325,
            AmbientTemperature = 288,
            WallArea = 0.10074,
            VentArea = 0,
        };
        var back = weak.Fire();
        Assert.NotNull(back.ReleaseTime);
        Assert.True(back.Final.Pressure < weak.AmbientPressure && back.Final.Speed < 0);
        Assert.False(back.Parted);
        Assert.Equal(0, back.SeparationSpeed);
        Assert.True((weak with { ChargeMass = 2 * weak.ChargeMass }).Fire().Parted);
    }

    [Fact]
    public void More_powder_is_never_slower() => Any.Sample(
        inputs => (inputs with { ChargeMass = 1.1 * inputs.ChargeMass }).Fire().PartingSpeed >= inputs.Fire().PartingSpeed * (1 - 1e-6),
        iter: 60);

    [Fact]
    public void A_bigger_bay_never_has_more_pressure() => Any.Sample(
        inputs => (inputs with { FreeVolume = 1.1 * inputs.FreeVolume }).Fire().Peak.Pressure <= inputs.Fire().Peak.Pressure * (1 + 1e-6),
        iter: 60);

    [Fact]
    public void Stronger_pins_never_let_go_sooner() => Any.Sample(
        inputs => ((inputs with { PinForce = inputs.PinForce + 50 }).Fire().ReleaseTime ?? double.PositiveInfinity) >= (inputs.Fire().ReleaseTime ?? double.PositiveInfinity) - 1e-9,
        iter: 60);

    [Fact]
    public void Without_pins_and_friction_no_charge_is_needed()
    {
        var free = EjectionCases.B with { PinForce = 0, StaticFriction = 0, SlidingFriction = 0, VentArea = 0 };
        Assert.Equal(0, (free with { ChargeMass = 0.01e-3 }).Fire().ReleaseTime);

        // In a vacuum a pull from outside does it alone, at the speed a constant force gives.
        var pulled = (free with { ChargeMass = 0, OutsideForce = 1000, AmbientPressure = 1 }).Fire();
        Assert.True(pulled.Parted);
        Assert.Equal(Math.Sqrt(2 * 1000 * free.Stroke / free.ReducedMass), pulled.PartingSpeed, 1e-4);
    }

    [Fact]
    public void A_pull_from_outside_helps() =>
        Assert.True((EjectionCases.B with { OutsideForce = 100 }).Fire().PartingSpeed > EjectionCases.B.Fire().PartingSpeed);
}
