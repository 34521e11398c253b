using CsCheck;
using Scribeline.Engine.Air;
using Scribeline.Engine.Recovery;

namespace Scribeline.Engine.Tests.Properties.Recovery;

/// <summary>What is true of any descent and any opening.</summary>
public class DescentProperties
{
    private static readonly Gen<OpeningInputs> Openings =
        from mass in Gen.Double[0.5, 40]
        from diameter in Gen.Double[0.3, 6]
        from exponent in Gen.OneOf(Gen.Const(1.0), Gen.Const(2.0), Gen.Const(6.0))
        from speed in Gen.Double[5, 60]
        from angle in Gen.Double[0, Math.PI / 2]
        from body in Gen.Double[0, 0.4]
        select new OpeningInputs
        {
            Mass = mass,
            DragArea = 0.75 * ClothArea.Disc(diameter),
            BodyDragArea = body,
            NominalDiameter = diameter,
            FillConstant = 8,
            GrowthExponent = exponent,
            Speed = speed,
            PathAngle = angle,
            Density = 1.1,
        };

    [Fact]
    public void Heavier_never_lands_slower() =>
        Gen.Select(Gen.Double[0.1, 40], Gen.Double[1, 3], Gen.Double[0.01, 20]).Sample((mass, more, area) =>
            SteadyDescent.Rate(mass * more, area, 1.2) >= SteadyDescent.Rate(mass, area, 1.2));

    [Fact]
    public void Two_canopies_are_never_faster_than_one() =>
        Gen.Select(Gen.Double[0.1, 40], Gen.Double[0.1, 10], Gen.Double[0.1, 10]).Sample((mass, one, other) =>
            SteadyDescent.Rate(mass, one + other, 1.2) <= SteadyDescent.Rate(mass, Math.Max(one, other), 1.2));

    /// <summary>What the load gains in motion is what its weight gives less what canopy and body take.</summary>
    [Fact]
    public void Energy_is_accounted_for_through_inflation() =>
        Openings.Sample(i => Math.Abs(i.Open().EnergyLost) <= 1e-5 * i.Mass / 2 * i.Speed * i.Speed, iter: 300);

    /// <summary>Gravity left out: with it a slow canopy on a level path has more time to fall into its opening, and pulls harder.</summary>
    [Fact]
    public void Opening_force_grows_with_speed() =>
        Gen.Select(Openings, Gen.Double[1.01, 1.5]).Sample(
            (i, faster) => (i with { Gravity = 0, Speed = faster * i.Speed }).Open().Peak >= (i with { Gravity = 0 }).Open().Peak, iter: 300);

    [Fact]
    public void Handbook_force_grows_with_speed_and_mass() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[1.01, 2], Gen.Double[0.5, 40], Gen.OneOf(Gen.Const(0.5), Gen.Const(1.0), Gen.Const(2.0))).Sample((speed, more, mass, growth) =>
        {
            OpeningForce At(double v, double m) => new(3, v, 1.2, m, OpeningForce.FillTimeOf(8, 2.2, v), 1.8, growth);
            return At(speed * more, mass).Peak > At(speed, mass).Peak && At(speed, mass * more).Peak >= At(speed, mass).Peak;
        });

    [Fact]
    public void Overshoot_never_makes_it_softer() => Openings.Sample(
        i => (i with { Gravity = 0, Overshoot = 1.15 }).Open().Peak >= (i with { Gravity = 0 }).Open().Peak, iter: 200);

    /// <summary>A load that hardly slows feels the full canopy only once the line that holds its mouth is cut.</summary>
    [Fact]
    public void A_reefed_canopy_pulls_in_full_only_when_it_is_let_go() => Openings.Sample(
        i =>
        {
            var opening = (i with { Mass = 1e7, Gravity = 0, BodyDragArea = 0, Reef = new(0.2, 30) }).Open();
            var full = i.DragArea * i.Density / 2 * i.Speed * i.Speed;
            return opening.PeakTime > 30 && Math.Abs(opening.Peak - full) < 1e-3 * full && opening.FullTime > 30;
        },
        iter: 100);

    [Fact]
    public void Drift_is_linear_in_a_uniform_wind() =>
        Gen.Select(Gen.Double[0, 20], Gen.Double[0, 3], Gen.Double[0, 6.28], Gen.Double[2, 40]).Sample((speed, factor, from, rate) =>
        {
            var one = HandDrift.Through(new PowerLawWind(speed, from, 0), 0, 1000, _ => rate);
            var other = HandDrift.Through(new PowerLawWind(factor * speed, from, 0), 0, 1000, _ => rate);
            return Math.Abs(other.East - (factor * one.East)) < 1e-6 && Math.Abs(other.North - (factor * one.North)) < 1e-6
                && Math.Abs(double.Hypot(one.East, one.North) - (1000 * speed / rate)) < 1e-6;
        });

    [Fact]
    public void A_second_channel_never_harms() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((q, common) => ChannelReliability.BothFail(q, common) <= q + 1e-12);
}
