using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Tests.Published.Separation;

/// <summary>A second charge fired into what the first left of gas, volume and pins.</summary>
public class SecondChargeTests
{
    // Half a gram in the 98 mm bay: 151.6 kPa where 161.1 kPa are needed, so the joint stays shut.
    private static readonly EjectionInputs Weak = EjectionCases.B with { ChargeMass = 0.50e-3 };

    /// <summary>
    /// The same equations integrated by another hand: classic Runge-Kutta of 5 and 2.5 µs, which agree to seven figures and give the published
    /// cases B and D of the method (284.7 and 151.6 kPa).
    /// </summary>
    [Fact]
    public void While_the_gas_is_hot_it_parts_a_joint_that_neither_parts_alone()
    {
        var first = Weak.Fire();
        Assert.False(first.Parted);
        var second = first.Next(0.05, 0.50e-3, 0.15e-3);
        Assert.Equal(178_210, second.Peak.Pressure, 20.0);
        Assert.Equal(3.545e-3, second.ReleaseTime!.Value, 5e-6);
        Assert.Equal(28.057e-3, second.PartingTime!.Value, 5e-6);
        Assert.Equal(7.4205, second.PartingSpeed, 1e-3);
        Assert.InRange(second.EnergyLost, 0, 1e-6);
    }

    // The bay has cooled and leaked: what hangs there of the first charge's products takes up heat, so the second does a little worse than alone.
    [Fact]
    public void A_second_later_the_same_charge_fails_the_same_way()
    {
        var second = Weak.Fire().Next(1, 0.50e-3, 0.15e-3);
        Assert.False(second.Parted);
        Assert.Equal(150_487, second.Peak.Pressure, 20.0);
        Assert.True(second.Peak.Pressure < Weak.Fire().Peak.Pressure);
    }

    // Where nothing is lost and nothing moves, the order does not matter: mixed as one, p = (m_a R_a + m R_p) T/V, T by heat.
    [Theory]
    [InlineData(0.005)]
    [InlineData(0.5)]
    public void In_a_bay_that_holds_and_loses_nothing_two_are_one_of_their_sum(double gap)
    {
        var tight = EjectionCases.B with { PinForce = double.PositiveInfinity, HeatTransfer = 0, VentArea = 0, ChargeMass = 0.8e-3 };
        var last = tight.Fire().Next(gap, 1.2e-3, 0.15e-3);
        var powder = tight.Powder;
        double air = tight.AirMass, capacity = (air * EjectionInputs.AirGasConstant / 0.4) + (2e-3 * powder.HeatCapacity);
        var temperature = ((air * EjectionInputs.AirGasConstant / 0.4 * tight.AmbientTemperature) + (2e-3 * powder.HeatCapacity * powder.FlameTemperature)) / capacity;
        var pressure = ((air * EjectionInputs.AirGasConstant) + (2e-3 * powder.GasConstant)) * temperature / tight.FreeVolume;
        Assert.Equal(pressure, last.Final.Pressure, 2e-4 * pressure);
    }

    [Fact]
    public void Into_an_open_bay_it_burns_in_vain()
    {
        var first = EjectionCases.B.Fire();
        var second = first.Next(1.5, 2.6e-3, 0.15e-3);
        Assert.True(second.Parted);
        Assert.InRange(second.PeakGauge, 0, 0.1 * first.PeakGauge);
        Assert.InRange(second.SeparationSpeed / first.SeparationSpeed, 0.999, 1.1);
    }

    // On its way out the joint takes the second push along: faster than with the first alone, slower than with both at once.
    [Fact]
    public void On_a_moving_joint_it_adds_to_the_speed()
    {
        var first = EjectionCases.B.Fire();
        var moving = (first.ReleaseTime!.Value + first.PartingTime!.Value) / 2;
        var second = first.Next(moving, 1e-3, 0.15e-3);
        Assert.InRange(second.PartingSpeed, first.PartingSpeed, (EjectionCases.B with { ChargeMass = 3e-3 }).Fire().PartingSpeed);
        Assert.InRange(second.EnergyLost, 0, 1e-6);
    }

    [Fact]
    public void At_the_same_moment_they_are_one_charge()
    {
        var both = Weak.Fire().Next(0, 1.50e-3, 0.15e-3);
        Assert.Equal(EjectionCases.B.Fire().PartingSpeed, both.PartingSpeed, 1e-6);
    }
}
