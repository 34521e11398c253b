using CsCheck;
using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Tests.Properties.Separation;

/// <summary>How bays breathe, whatever the climb.</summary>
public class BreathingTests
{
    private static readonly double[] Times = [.. Enumerable.Range(0, 601).Select(i => 0.05 * i)];

    private static readonly Gen<(double Volume, double Area, double Speed, double Turn)> Climb =
        Gen.Select(Gen.Double[-11.5, -4.6], Gen.Double[-18, -9], Gen.Double[10, 400], Gen.Double[3, 25]).Select((v, a, w, t) => (Math.Exp(v), Math.Exp(a), w, t));

    private static double[] Outside(double speed, double turn) =>
        [.. Times.Select(t => (double)StandardAtmosphere.AtGeopotential<Scalar>(speed * t * Math.Max(0, 2 - (t / turn)) / 2).Pressure)];

    private static double Lag(BreathingBay bay, double[] outside) =>
        Breathing.Pressures(bay, Times, outside).Zip(outside, (p, q) => Math.Abs(p - q)).Max();

    [Fact]
    public void A_bigger_port_never_lags_more() => Climb.Sample(c =>
    {
        var outside = Outside(c.Speed, c.Turn);
        return Lag(new(c.Volume, 1.3 * c.Area, 288), outside) <= Lag(new(c.Volume, c.Area, 288), outside) * (1 + 1e-9) + 1e-6;
    });

    [Fact]
    public void A_bay_without_holes_keeps_its_pressure_and_a_sieve_has_none_of_its_own()
    {
        var outside = Outside(300, 12);
        Assert.All(Breathing.Pressures(new(1e-3, 0, 288), Times, outside), p => Assert.Equal(outside[0], p));
        Assert.InRange(Lag(new(1e-3, 1e-2, 288), outside), 0, 0.01);
    }

    // The pressure inside is always one the outside had: the bay only follows.
    [Fact]
    public void It_never_leaves_the_range_of_the_outside() => Climb.Sample(c =>
    {
        var outside = Outside(c.Speed, c.Turn);
        var inside = Breathing.Pressures(new(c.Volume, c.Area, 288), Times, outside);
        return inside.Min() >= outside.Min() - 1e-6 && inside.Max() <= outside.Max() + 1e-6;
    });

    // Only V/A counts, so a bay of twice the volume with twice the area is the same bay.
    [Fact]
    public void Volume_over_area_decides() => Climb.Sample(c =>
    {
        var outside = Outside(c.Speed, c.Turn);
        double[] a = Breathing.Pressures(new(c.Volume, c.Area, 288), Times, outside), b = Breathing.Pressures(new(2 * c.Volume, 2 * c.Area, 288), Times, outside);
        return a.Zip(b, (p, q) => Math.Abs(p - q)).Max() < 1e-6;
    });

    // Turning the ring of ports the other way round is the same by mirror symmetry.
    [Fact]
    public void Ports_mirrored_feel_the_same() =>
        Gen.Select(Gen.Int[1, 8], Gen.Double[0, 3]).Sample((n, turn) => Math.Abs(StaticPressure.AcrossWind(n, turn) - StaticPressure.AcrossWind(n, -turn)) < 1e-6);
}
