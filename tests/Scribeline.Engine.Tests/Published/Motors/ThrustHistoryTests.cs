using Scribeline.Engine.Motors;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Published.Motors;

/// <summary>Thrust curves whose impulse, burn time and average follow in closed form from their shape.</summary>
public class ThrustHistoryTests
{
    // A trapezoid: up to 1000 N in 0.1 s, level to 1.9 s, down to 0 at 2.0 s. Area 1000 (2.0 - 0.1) = 1900 N s.
    // 5 % of 1000 N is met at 0.005 s and left at 1.995 s; the two corners cut off hold 2 * 50 * 0.005/2 = 0.25 N s.
    [Fact]
    public void Trapezoid()
    {
        var curve = new ThrustHistory([new(0.1, 1000), new(1.9, 1000), new(2, 0)]);
        Assert.Equal(1900, curve.TotalImpulse, 1e-9);
        Assert.Equal(1000, curve.MaximumThrust);
        Assert.Equal(0.005, curve.BurnStart, 1e-12);
        Assert.Equal(1.995, curve.BurnEnd, 1e-12);
        Assert.Equal(1899.75 / 1.99, curve.AverageThrust, 1e-9);
        Assert.Equal(1000, curve.InitialThrust);
        Assert.Equal(500, curve.ThrustAt<Scalar>(0.05), 1e-9);
        Assert.Equal(12.5, curve.ImpulseAt<Scalar>(0.05), 1e-9);
        Assert.Equal(50 + 900, curve.ImpulseAt<Scalar>(1.0), 1e-9);
        Assert.Equal(0, curve.ThrustAt<Scalar>(-0.01));
        Assert.Equal(0, curve.ThrustAt<Scalar>(2.01));
        Assert.Equal(1900, curve.ImpulseAt<Scalar>(5), 1e-9);
    }

    // A triangle falling from 300 N at once to 0 at 4 s: I = 600; 5 % (15 N) is passed at 3.8 s; impulse by then 600 (1 - 0.05²).
    [Fact]
    public void Falling_triangle()
    {
        var curve = new ThrustHistory([new(0, 300), new(4, 0)]);
        Assert.Equal(600, curve.TotalImpulse, 1e-12);
        Assert.Equal(3.8, curve.BurnTime, 1e-12);
        Assert.Equal(600 * (1 - 0.0025) / 3.8, curve.AverageThrust, 1e-9);
        Assert.Equal(300, curve.InitialThrust);
        Assert.Equal(600 * (1 - Math.Pow(0.75, 2)), curve.ImpulseAt<Scalar>(1), 1e-9);
    }

    // Thrust that rises through the first half second: 0.5 s lies between points.
    [Fact]
    public void Initial_thrust_between_points() =>
        Assert.Equal(250, new ThrustHistory([new(0, 0), new(1, 500), new(2, 0)]).InitialThrust, 1e-9);

    // Designation: K600-12, K600-0, K600-P by NFPA 1125 (from memory); 1900 N s is K.
    [Fact]
    public void Designation()
    {
        var motor = Of(new([new(0, 600), new(3.1, 600), new(3.2333333333333334, 0)])) with { Plugged = false };
        Assert.Equal(1900, motor.Curve.TotalImpulse, 1e-9);
        Assert.Equal("K589", MotorDesignation.Of(motor)); // 1899.9 N s over 3.22667 s, the last 5 % cut off: 588.8 N
        Assert.Equal("K589-12", MotorDesignation.Of(motor, 12));
        Assert.Equal("K589-0", MotorDesignation.Of(motor, 0));
        Assert.Equal("K589-P", MotorDesignation.Of(motor with { Plugged = true }, 12));
    }

    // Mass and balance: 3 kg loaded at 0.30 m, 1 kg of propellant, 2 kg burnt at 0.35 m; so the propellant lies at 0.20 m.
    [Fact]
    public void Mass_and_balance_follow_the_impulse()
    {
        var motor = Of(new([new(0, 1000), new(2, 1000), new(2.0000001, 0)])) with { LoadedBalance = 0.30, BurntBalance = 0.35 };
        Assert.Equal(0.20, motor.PropellantBalance, 1e-12);
        Assert.Equal(3, motor.MassAt<Scalar>(0), 1e-12);
        Assert.Equal(2.5, motor.MassAt<Scalar>(1), 1e-6);
        Assert.Equal(2, motor.MassAt<Scalar>(9), 1e-12);
        Assert.Equal(0.30, motor.BalanceAt<Scalar>(0), 1e-12);
        Assert.Equal(((2 * 0.35) + (0.5 * 0.20)) / 2.5, motor.BalanceAt<Scalar>(1), 1e-6);
        Assert.Equal(0.35, motor.BalanceAt<Scalar>(9), 1e-12);
        Assert.Equal(0.5, motor.MassFlowAt<Scalar>(1), 1e-6);
        Assert.Equal(2000, motor.ExhaustVelocity, 1e-3);
        Assert.Equal(203.943, motor.SpecificImpulse, 1e-3);
        Assert.Equal(Basis.Measured, motor.Balances.Basis);
        Assert.Equal(Basis.Estimated, (motor with { BurntBalance = null }).Balances.Basis);
    }

    // Thrust by exp(π_K ΔT), burn time by the inverse (Sutton and Biblarz, from memory): π_K = 0.002/K, 20 K colder.
    [Fact]
    public void Cold_motor()
    {
        var motor = Of(new([new(0, 1000), new(2, 1000), new(2.1, 0)]));
        var cold = motor.AtTemperature(273.15, 293.15, 0.002);
        Assert.Equal(1000 * Math.Exp(-0.04), cold.Curve.MaximumThrust, 1e-9);
        Assert.Equal(2.1 * Math.Exp(0.04), cold.Curve.EndTime, 1e-9);
        Assert.Equal(motor.Curve.TotalImpulse, cold.Curve.TotalImpulse, 1e-9);
        Assert.Equal(motor, motor.AtTemperature(293.15, 293.15, 0.002));
    }

    [Fact]
    public void Problems_are_all_named()
    {
        Assert.Empty(MotorProblems.In([new(0.1, 100), new(1, 0)]));
        Assert.Equal(3, MotorProblems.In([new(0.1, -100), new(0.1, 50), new(1, 5)]).Count);
        Assert.Single(MotorProblems.In([new(0.1, double.NaN), new(1, 0)]));
        Assert.Single(MotorProblems.In([new(1, 0)]));

        var good = Of(new([new(0, 1000), new(2, 1000), new(2.1, 0)]));
        Assert.Empty(MotorProblems.In(good));
        Assert.Contains("exhaust", Assert.Single(MotorProblems.In(good with { PropellantMass = 0.3 })).ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(MotorProblems.In(good with { LoadedMass = 0.9 }));
        Assert.Single(MotorProblems.In(good with { Diameter = double.NaN }));
        Assert.NotEmpty(MotorProblems.In(good with { BurntBalance = 2 }));
        Assert.Single(MotorProblems.In(good with { Plugged = true, Delays = [10] }));
    }

    private static Motor Of(ThrustHistory curve) =>
        new("Test", curve, 0.075, 0.6, 3, 1, 0.3, 0.3, null, [], false, Basis.Measured);
}
