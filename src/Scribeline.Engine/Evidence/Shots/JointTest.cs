using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Evidence.Shots;

/// <summary>A joint that charges open, the shots fired at it, and what they say.</summary>
/// <param name="Name">The two parts it joins.</param>
/// <param name="Retention">What holds it.</param>
/// <param name="Shots">All that were fired at it, also those that no longer count.</param>
/// <param name="Before">What was held before any shot.</param>
/// <param name="After">What is held after those that count.</param>
/// <param name="Charges">Every charge that opens it.</param>
public sealed record JointTest(
    string Name, JointRetention Retention, ValueList<JudgedShot> Shots, JointPosterior Before, JointPosterior After, ValueList<ChargeTest> Charges)
{
    /// <summary>Shots needed before anything they say may count: no calibration rests on a single one.</summary>
    public const int LeastShots = 2;

    /// <summary>Shots that count.</summary>
    public IEnumerable<JudgedShot> Counted => Shots.Where(s => s.Evidence is not null);

    /// <summary>Whether there are enough of them to count.</summary>
    public bool Enough => Counted.Count() >= LeastShots;

    /// <summary>
    /// Shots in a row, to the last one, at which the joint let go with no more powder than a charge has. One that stayed shut with as much powder or
    /// more ends a run, and what was fired with more powder says nothing of the charge.
    /// </summary>
    /// <param name="charge">One of the joint's.</param>
    public int Run(ChargeTest charge)
    {
        var run = 0;
        var mass = charge.Ground.ChargeMass;
        foreach (var shot in Counted.Select(s => s.Shot))
        {
            if (!shot.LetGo && shot.Powder >= mass * (1 - Near)) run = 0;
            else if (shot.LetGo && shot.Powder <= mass * (1 + Near)) run++;
        }

        return run;
    }

    // Two weighings of one load differ by as much.
    private const double Near = 0.02;
}

/// <summary>A shot, and whether it is one of the joint as it is now.</summary>
/// <param name="Shot">As recorded.</param>
/// <param name="Evidence">What it tells; null where it no longer counts.</param>
/// <param name="Why">Why it does not count, or what of it does not; empty where all of it counts.</param>
public sealed record JudgedShot(Shot Shot, ShotEvidence? Evidence, string Why);

/// <summary>A charge, and what the shots of its joint say of it.</summary>
/// <param name="Firing">In flight, as computed.</param>
/// <param name="Ground">The same load on the ground.</param>
/// <param name="Before">Probability that it opens its joint in flight, before any shot.</param>
/// <param name="After">The same after those that count.</param>
/// <param name="More">Further shots in a row until that probability is 95 % with 95 % credibility; null for more than 200.</param>
/// <param name="BeforeOnGround">Probability that a shot with this load opens the joint, before any shot.</param>
public sealed record ChargeTest(ChargeFiring Firing, EjectionInputs Ground, Believed Before, Believed After, int? More, Believed BeforeOnGround);

/// <summary>What shots say of a charge, where the builder lets it count.</summary>
/// <param name="Charge">Name of the charge.</param>
/// <param name="Shots">Shots that count.</param>
/// <param name="Powder">Effectiveness of the powder.</param>
/// <param name="Hold">Strength of the hold.</param>
/// <param name="LetsGo">Probability that it opens its joint in flight.</param>
public sealed record TestedCharge(string Charge, int Shots, Believed Powder, Believed Hold, Believed LetsGo)
{
    /// <summary>Effectiveness to judge a margin by: the mean, never more than the customary one.</summary>
    public double Margin => Math.Min(1, Powder.Mean);
}
