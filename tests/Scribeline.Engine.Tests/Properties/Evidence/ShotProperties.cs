using CsCheck;
using Scribeline.Engine.Evidence.Shots;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tests.Published.Evidence;

namespace Scribeline.Engine.Tests.Properties.Evidence;

/// <summary>What must hold of any set of shots.</summary>
public class ShotProperties
{
    private static readonly JointPrior Prior = new(0.35, 0.15, -0.08, 0.11);

    private static readonly Gen<ShotEvidence> AnyShot = Gen.Select(Gen.Double[0.5, 8], Gen.Int[1, 6], Gen.Bool, (grams, pins, letGo) =>
        new ShotEvidence(ShotCheckValues.Proportional(grams), new(350, 30, 0.1 / Math.Sqrt(pins)), letGo));

    [Fact]
    public void A_shot_that_lets_go_never_lowers_the_probability_and_one_that_stays_never_raises_it() =>
        Gen.Select(AnyShot.Array[0, 5], AnyShot, AnyShot).Sample((shots, next, flight) =>
        {
            var before = JointPosterior.Of(Prior, shots).LetsGo(flight).Mean;
            var after = JointPosterior.Of(Prior, [.. shots, next]).LetsGo(flight).Mean;
            return next.LetGo ? after >= before - 1e-9 : after <= before + 1e-9;
        }, iter: 300);

    [Fact]
    public void The_order_of_shots_does_not_matter() => Gen.Select(AnyShot.Array[2, 6], AnyShot).Sample((shots, flight) =>
    {
        var (one, other) = (JointPosterior.Of(Prior, shots), JointPosterior.Of(Prior, shots.Reverse()));
        return Math.Abs(one.LetsGo(flight).Mean - other.LetsGo(flight).Mean) < 1e-12 && Math.Abs(one.Powder.High - other.Powder.High) < 1e-9;
    }, iter: 100);

    [Fact]
    public void More_powder_is_never_less_likely_to_let_go() => Gen.Select(AnyShot.Array[0, 5], Gen.Double[1, 6], Gen.Double[0, 2]).Sample((shots, grams, more) =>
    {
        var after = JointPosterior.Of(Prior, shots);
        double At(double m) => after.LetsGo(new(ShotCheckValues.Proportional(m), new(350, 30, 0.06), true)).Mean;
        return At(grams + more) >= At(grams) - 1e-12;
    }, iter: 100);

    [Fact]
    public void The_shots_still_needed_are_the_least_that_suffice() => Gen.Select(AnyShot.Array[0, 3], Gen.Double[5, 9]).Sample((shots, grams) =>
    {
        var next = new ShotEvidence(ShotCheckValues.Proportional(grams), new(350, 30, 0.06), true);
        if (JointPosterior.Of(Prior, shots).MoreShots(next, next, 0.95, 0.95, 60) is not { } more) return true;
        int? Then(int count) => JointPosterior.Of(Prior, [.. shots, .. Enumerable.Repeat(next, count)]).MoreShots(next, next, 0.95, 0.95, 60);
        return Then(more) == 0 && (more == 0 || Then(more - 1) > 0);
    }, iter: 60);

    // Whatever was recorded, the sums stay finite and the quantiles in order: no shot is impossible.
    [Fact]
    public void Even_contradictory_shots_leave_a_belief() => Gen.Select(AnyShot.Array[0, 12], Gen.Double[1e-3, 1e3]).Sample((shots, speed) =>
    {
        var odd = new ShotEvidence(ShotCheckValues.Proportional(4), new(0, 0, 0), false, null, new ShotReading(speed, 0.01));
        var after = JointPosterior.Of(Prior, [.. shots, odd, odd]);
        return double.IsFinite(after.Powder.Mean) && after.Powder.Low <= after.Powder.Mean * 3 && after.Powder.Low <= after.Powder.High && after.Hold.Low <= after.Hold.High;
    }, iter: 100);

    // The curves are those of the integrated ejection itself, at places between those they were made from.
    [Fact]
    public void The_response_is_that_of_the_ejection()
    {
        var inputs = new EjectionInputs
        {
            ChargeMass = 2e-3,
            FreeVolume = 3e-3,
            Bore = 0.099,
            Stroke = 0.1,
            ForwardMass = 1.5,
            AftMass = 4,
            PinForce = 400,
            StaticFriction = 60,
            SlidingFriction = 40,
            AmbientPressure = 101_325,
            AmbientTemperature = 288.15,
            WallArea = 0.15,
            VentArea = 20e-6,
        };
        var response = ChargeResponse.Of(inputs);
        foreach (var x in (double[])[-0.7, -0.25, 0, 0.3, 0.8])
        {
            var at = inputs with { Powder = inputs.Powder.Scaled(Math.Exp(x)) };
            Assert.Equal((at with { PinForce = double.PositiveInfinity }).Fire().PeakGauge * inputs.Area, Math.Exp(response.Push(x)), 0.01 * Math.Exp(response.Push(x)));
            if (at.Fire() is { Parted: true } fired) Assert.Equal(fired.SeparationSpeed, Math.Exp(response.Speed(x)), 0.02 * fired.SeparationSpeed);
            Assert.Equal(x, response.Needed(response.Push(x)).Needed, 0.005);
        }
    }
}
