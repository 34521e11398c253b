using System.Globalization;
using Scribeline.Engine.Evidence.Shots;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Questions;

/// <content>What the charges did on the ground.</content>
public sealed partial class Study
{
    // A bay that has changed by more is another bay: 5 % of the volume is 5 % of the pressure, a third of the scatter from shot to shot.
    private const double SameVolume = 0.05;

    private ValueList<JointTest>? jointTests;
    private ValueList<TestedCharge>? tested;

    /// <summary>Every joint that charges open, nose to tail, with its shots; a joint that lacks an input is left out.</summary>
    public ValueList<JointTest> JointTests => LazyInitializer.EnsureInitialized(
        ref jointTests, () => ChargeFirings.GroupBy(f => f.Charge.Joint).OrderBy(g => g.Key).Select(g => Test(g.ToValueList())).ToValueList());

    /// <summary>What the shots say of each charge, where the builder lets it count and there are enough of them; empty otherwise.</summary>
    public ValueList<TestedCharge> Tested => LazyInitializer.EnsureInitialized(ref tested, () => TestedBefore?.Value ?? Accepted());

    /// <summary>What the shots say, as the nominal study has it: cases drawn from tolerances do not ask them again.</summary>
    internal Lazy<ValueList<TestedCharge>>? TestedBefore { private get; init; }

    /// <summary>A charge on the ground at the pad's height: lying level, motor out, with only the two pieces of its joint on the stand.</summary>
    /// <param name="firing">The charge.</param>
    /// <param name="mass">Powder, kg.</param>
    /// <param name="temperature">Of air and pins, K; null for that of the day.</param>
    /// <param name="held">Whether the piece behind is strapped fast.</param>
    public EjectionInputs OnGround(ChargeFiring firing, double mass, double? temperature = null, bool held = false)
    {
        var air = Air.At<Scalar>(Air.Elevation);
        var kelvins = temperature ?? air.Temperature;
        return firing.Fired.Inputs with
        {
            ChargeMass = mass,
            ForwardMass = Masses.Of(firing.Ahead).Mass,
            AftMass = held ? double.PositiveInfinity : Masses.Of(firing.Behind).Mass,
            PinForce = firing.Retention.Pins?.Nominal(kelvins) ?? 0,
            AmbientPressure = air.Pressure,
            AmbientTemperature = kelvins,
        };
    }

    /// <summary>
    /// Probability that a joint lets go in flight, by powder in place of a charge's own, before and after its shots: nine loads, joined by
    /// monotone cubics.
    /// </summary>
    internal ValueList<(double Mass, double Before, double After)> LettingGoBy(JointTest test, ChargeFiring firing)
    {
        var loads = Enumerable.Range(0, 9).Select(i => (0.4 + (0.15 * i)) * firing.Fired.Inputs.ChargeMass).ToValueList();
        var inputs = firing.Fired.Inputs;
        var responses = cache.Get((inputs with { ForwardMass = 1, AftMass = 1, PinForce = 0 }, "by powder"), _ => loads.Select(m => ChargeResponse.Shut(inputs with { ChargeMass = m })).ToValueList());
        var fired = responses.Select(r => new ShotEvidence(r, InFlight(firing.Retention), LetGo: true)).ToArray();
        MonotoneCubic before = new(loads, fired.Select(f => test.Before.Chance(f)).ToValueList()), after = new(loads, fired.Select(f => test.After.Chance(f)).ToValueList());
        return Enumerable.Range(0, 65).Select(i => loads[0] + ((loads[^1] - loads[0]) * i / 64)).Select(m => (m, (double)before.At(new Scalar(m)), (double)after.At(new Scalar(m)))).ToValueList();
    }

    private ValueList<TestedCharge> Accepted() => !Rocket.ShotsCount ? [] : JointTests.Where(t => t.Enough)
        .SelectMany(t => t.Charges.Select(c => new TestedCharge(c.Firing.Charge.Name, t.Counted.Count(), t.After.Powder, t.After.Hold, c.After))).ToValueList();

    private JointTest Test(ValueList<ChargeFiring> firings)
    {
        var held = firings[0].Retention;
        var prior = held.Pins is { } pins ? JointPrior.Between(pins.Low, pins.Middle, pins.High)
            : JointPrior.Between(held.Friction.Least, held.Friction.Force, held.Friction.Most);
        var joint = Vehicle.Joints[held.Joint];
        var shots = Rocket.Shots.Select(s => (Shot: s, Firing: firings.FirstOrDefault(f => f.Charge.Name.Equals(s.Charge, StringComparison.OrdinalIgnoreCase))))
            .Where(s => s.Firing is not null).Select(s => Judge(s.Shot, s.Firing!, prior)).ToValueList();
        var evidence = shots.Select(s => s.Evidence).OfType<ShotEvidence>().ToValueList();
        var loads = firings.Select(f => (Ground: OnGround(f, f.Fired.Inputs.ChargeMass), Firing: f)).Where(l => l.Ground is { ForwardMass: > 0, AftMass: > 0, ChargeMass: > 0 })
            .Select(l => (l.Firing, l.Ground, Here: new ShotEvidence(Shut(l.Ground), Hold(held, l.Ground.AmbientTemperature), true), There: new ShotEvidence(Shut(l.Firing.Fired.Inputs), InFlight(held), true)))
            .ToValueList();
        var key = (prior, evidence, loads.Select(l => (l.Here, l.There)).ToValueList());
        var (before, after, charges) = cache.Get(key, _ =>
        {
            JointPosterior before = JointPosterior.Of(prior, []), after = JointPosterior.Of(prior, evidence);
            return Tuple.Create(before, after, loads.Select(l => (before.LetsGo(l.There), after.LetsGo(l.There), after.MoreShots(l.Here, l.There, 0.95, 0.95), before.LetsGo(l.Here))).ToValueList());
        });
        return new(
            $"{Vehicle.Parts[joint.Forward].Name} to {Vehicle.Parts[joint.Aft].Name}", held, shots, before, after,
            loads.Zip(charges, (l, c) => new ChargeTest(l.Firing, l.Ground, c.Item1, c.Item2, c.Item3, c.Item4)).ToValueList());
    }

    private JudgedShot Judge(Shot shot, ChargeFiring firing, JointPrior prior)
    {
        if (Stranger(shot, firing) is { } why) return new(shot, null, why);
        var inputs = OnGround(firing, shot.Powder, shot.Temperature, shot.Held);
        if (inputs.ForwardMass <= 0 || inputs.AftMass <= 0) return new(shot, null, "a piece without mass");
        var response = cache.Get((inputs, "shot"), k => ChargeResponse.Of(k.inputs));
        var evidence = new ShotEvidence(response, Hold(firing.Retention, inputs.AmbientTemperature), shot.LetGo, shot.LetGo ? shot.Speed : null, shot.Pressure);
        var (speed, pressure) = evidence.Surprise(prior);
        List<string> left = [];
        if (Math.Abs(speed) > 3) left.Add(string.Create(CultureInfo.InvariantCulture, $"its speed lies {speed:F1} standard deviations from what was expected and is not averaged in"));
        if (Math.Abs(pressure) > 3) left.Add(string.Create(CultureInfo.InvariantCulture, $"its pressure lies {pressure:F1} standard deviations from what was expected and is not averaged in"));
        return new(shot, evidence with { Speed = Math.Abs(speed) > 3 ? null : evidence.Speed, Pressure = Math.Abs(pressure) > 3 ? null : evidence.Pressure }, string.Join("; ", left));
    }

    // Why a shot tells nothing of the joint as it is now; null where it does.
    private static string? Stranger(Shot shot, ChargeFiring firing)
    {
        var now = firing.Bay.FreeVolume;
        if (shot.Volume is { } then && Math.Abs(then - now) > SameVolume * now) return string.Create(CultureInfo.InvariantCulture, $"the bay had {then * 1e6:F0} cm³ free, now {now * 1e6:F0} cm³");
        if (shot.GrainRadius is { } grain && Math.Abs(grain - firing.Charge.GrainRadius) > 1e-9) return "powder of another grain";
        var pins = firing.Retention.Pins;
        if (shot.Pins is { } count && count != (pins?.Count ?? 0)) return string.Create(CultureInfo.InvariantCulture, $"{count} pins, now {pins?.Count ?? 0}");
        return shot is { Screw: { } screw, Pins: not 0 } && pins is not null && !screw.Equals(pins.Name, StringComparison.OrdinalIgnoreCase) ? $"pins {screw}, now {pins.Name}" : null;
    }

    private ChargeResponse Shut(EjectionInputs inputs) =>
        cache.Get((inputs with { ForwardMass = 1, AftMass = 1, PinForce = 0 }, "shut"), k => ChargeResponse.Shut(k.Item1));

    private JointHold InFlight(JointRetention held) => Hold(held, PinTemperature);

    private static JointHold Hold(JointRetention held, double temperature) => held.Pins is { } pins
        ? new(pins.Nominal(temperature), Math.Max(held.Friction.Force, 0), PinSharing.UsualScatter / Math.Sqrt(pins.Count))
        : new(Math.Max(held.Friction.Force, 0), 0, 0);
}
