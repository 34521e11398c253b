using CsCheck;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tests.Properties.Air;

namespace Scribeline.Engine.Tests.Properties.Motors;

public class MotorPropertyTests
{
    private static readonly Gen<ThrustHistory> Curves =
        Gen.Select(Gen.Double[0.01, 0.5], Gen.Double[1, 2000]).Array[1, 30].Select(rows =>
        {
            var time = 0.0;
            var points = rows.Select(r => new ThrustPoint(time += r.Item1, r.Item2)).ToList();
            return new ThrustHistory(points.Append(new(time + 0.1, 0)).ToValueList());
        });

    private static readonly Gen<Motor> Motors =
        Gen.Select(Curves, Gen.Double[0.5, 3]).Select((c, m) => new Motor("m", c, 0.054, 0.5, m + 0.4, m, 0.2, 0.25, null, [], true, Basis.Measured));

    [Fact]
    public void Impulse_is_the_integral_of_thrust() => Gen.Select(Curves, Gen.Double[0.001, 0.999]).Sample((curve, share) =>
    {
        var t = share * curve.EndTime;
        const double h = 1e-4;
        var slope = (curve.ImpulseAt<Scalar>(t + h) - curve.ImpulseAt<Scalar>(t - h)).Value / (2 * h);
        var (before, after) = (curve.ThrustAt<Scalar>(t - h).Value, curve.ThrustAt<Scalar>(t + h).Value);
        Assert.InRange(slope, Math.Min(Math.Min(before, after), curve.ThrustAt<Scalar>(t)) - 1e-6, Math.Max(Math.Max(before, after), curve.ThrustAt<Scalar>(t)) + 1e-6);
    });

    [Fact]
    public void Mass_never_grows_and_ends_burnt() => Gen.Select(Motors, Gen.Double[-1, 20], Gen.Double[0, 5]).Sample((motor, t, dt) =>
    {
        Assert.True(motor.MassAt<Scalar>(t + dt) <= motor.MassAt<Scalar>(t) + 1e-12);
        Assert.Equal(motor.LoadedMass, motor.MassAt<Scalar>(0), 1e-12);
        Assert.Equal(motor.BurntMass, motor.MassAt<Scalar>(motor.Curve.EndTime), 1e-12);
        Assert.Equal(motor.ThrustAt<Scalar>(t), motor.MassFlowAt<Scalar>(t) * motor.ExhaustVelocity, 1e-9);
    });

    [Fact]
    public void Scaling_scales() => Gen.Select(Motors, Gen.Double[0.5, 2], Gen.Double[0.5, 2], Gen.Double[0, 1]).Sample((motor, impulse, time, share) =>
    {
        var scaled = motor.Scaled(impulse, time);
        var curve = motor.Curve;
        Assert.Equal(curve.TotalImpulse * impulse, scaled.Curve.TotalImpulse, 1e-9 * scaled.Curve.TotalImpulse);
        Assert.Equal(curve.BurnTime * time, scaled.Curve.BurnTime, 1e-9);
        Assert.Equal(curve.AverageThrust * impulse / time, scaled.Curve.AverageThrust, 1e-7);
        Assert.Equal(
            curve.ImpulseAt<Scalar>(share * curve.EndTime) * impulse,
            scaled.Curve.ImpulseAt<Scalar>(share * scaled.Curve.EndTime),
            1e-9 * scaled.Curve.TotalImpulse);
    });

    [Fact]
    public void Lanes_equal_one_number() => Gen.Select(Motors, Gen.Double[-1, 16], Gen.Double[-1, 16]).Sample((motor, a, b) =>
    {
        Pair both(Func<Pair, Pair> f) => f(new Pair(a, b));
        Assert.Equal(new Pair(motor.ThrustAt<Scalar>(a), motor.ThrustAt<Scalar>(b)), both(motor.ThrustAt));
        Assert.Equal(new Pair(motor.MassAt<Scalar>(a), motor.MassAt<Scalar>(b)), both(motor.MassAt));
        Assert.Equal(new Pair(motor.BalanceAt<Scalar>(a), motor.BalanceAt<Scalar>(b)), both(motor.BalanceAt));
    });
}
