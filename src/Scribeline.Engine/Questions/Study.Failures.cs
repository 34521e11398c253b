using System.Collections.Concurrent;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Questions;

/// <content>What happens when something fails.</content>
public sealed partial class Study
{
    // A flight for each failure, and one more for each thing that follows from it.
    private const int FailuresKept = 64;

    private readonly ConcurrentDictionary<Failure, Lazy<FailureOutcome>> failed = [];
    private ResultCache? failing;
    private ValueList<FailureOutcome>? failureOutcomes;
    private Dictionary<string, double>? canopyStrengths;

    /// <summary>The flight as planned, then one for each failure of the rocket, in their order.</summary>
    public ValueList<FailureOutcome> FailureOutcomes =>
        LazyInitializer.EnsureInitialized(ref failureOutcomes, () => cache.Get((Rocket, Day, IsSample), _ => FlyFailures()));

    /// <summary>Flies one failure, which need not be among those of the rocket; once, whoever asks.</summary>
    /// <param name="failure">What fails.</param>
    public FailureOutcome Fail(Failure failure) => failed.GetOrAdd(failure, f => new(() => cache.Get((Rocket, Day, IsSample, f), _ =>
        new FailureFlight(this, f, LazyInitializer.EnsureInitialized(ref failing, NewFailureCache)).Outcome))).Value;

    /// <summary>The failure of one altimeter and nothing else.</summary>
    /// <param name="altimeter">Its name.</param>
    public Failure Dead(string altimeter) =>
        Rocket.Failures.FirstOrDefault(f => f.Things == 1 && f.Dead.Contains(altimeter)) ?? new($"{altimeter} dead", "common practice") { Dead = [altimeter] };

    /// <summary>The study of the rocket that came down in a failure, with all that followed in it: its flight is that of the outcome.</summary>
    /// <param name="outcome">Of this study.</param>
    public Study Flown(FailureOutcome outcome) => Failing(outcome.Rocket, outcome.Failure.Of(Motor), cache, outcome.NoseFirst);

    /// <summary>Joints still shut that a harness pulls open: those with part of a piece beyond them, seen from where the cord is tied.</summary>
    /// <param name="harness">It pulls.</param>
    /// <param name="opened">Index of the joint that opened and that it spans.</param>
    /// <param name="ahead">The piece ahead of that joint.</param>
    /// <param name="behind">The piece behind it.</param>
    internal IEnumerable<(int Joint, Piece Piece, double Beyond)> PulledBy(Harness harness, int opened, Piece ahead, Piece behind)
    {
        // A cord tied on one side alone runs out against nothing.
        if (!harness.Spans(opened)) yield break;
        foreach (var joint in Vehicle.Joints.Where(j => j.Separable && Rocket.Separation.Of(j.Forward) is not null).Select(j => j.Forward))
        {
            var isAhead = joint >= ahead.First && joint < ahead.Last;
            if (!isAhead && !(joint >= behind.First && joint < behind.Last)) continue;
            var piece = isAhead ? ahead : behind;
            var tie = isAhead ? harness.Ties.Last(t => t <= opened) : harness.Ties.First(t => t > opened);
            if (isAhead ? tie <= joint : tie > joint) continue;
            var past = isAhead ? new Piece(piece.First, joint) : new Piece(joint + 1, piece.Last);
            var leaning = Bays.Where(b => b.Opens.Contains(joint)).SelectMany(StowedIn).Distinct()
                .Where(s => !Enumerable.Range(past.First, past.Last - past.First + 1).Any(i => Vehicle.Parts[i].Stowed.Contains(s))).Sum(s => s.Mass);
            yield return (joint, piece, PieceProperties(past).Mass + leaning);
        }
    }

    /// <summary>What breaks a cord with its ends, N; infinite where it is not known.</summary>
    internal double StrengthOf(Harness harness)
    {
        var cord = Rocket.Separation.Harnesses.ToList().IndexOf(harness);
        return (harness.Strength * (cord >= 0 && cord < Rocket.Rigging.Cords.Count ? Rocket.Rigging.Cords[cord].EndShare : 1)) ?? double.PositiveInfinity;
    }

    /// <summary>What tears a canopy, N: its lines, or its cloth and seams; infinite where it is not known, or never opens as planned.</summary>
    internal double StrengthOf(string canopy) => CanopyStrengths.GetValueOrDefault(canopy, double.PositiveInfinity);

    private Dictionary<string, double> CanopyStrengths => LazyInitializer.EnsureInitialized(ref canopyStrengths, () => LoadPathOf(Flight)
        .Where(e => e.Name == $"{e.Path}: lines" || e.Name == $"{e.Path}: canopy and seams")
        .GroupBy(e => e.Path).ToDictionary(g => g.Key, g => g.Min(e => e.Capacity) ?? double.PositiveInfinity));

    /// <summary>The study of a rocket in which something has failed, on the same day.</summary>
    /// <param name="rocket">The failed rocket.</param>
    /// <param name="motor">Its motor.</param>
    /// <param name="kept">Where its results are kept.</param>
    /// <param name="noseFirst">Whether it dives where nothing opens at apogee, see <see cref="FlightOptions.NoseFirst"/>.</param>
    internal Study Failing(Rocket rocket, Motor motor, ResultCache kept, bool noseFirst) =>
        new(rocket, motor, Day with { Motor = motor }, Missing, kept, IsSample) { NoseFirst = noseFirst };

    private bool NoseFirst { get; init; }

    private ValueList<FailureOutcome> FlyFailures()
    {
        Failure[] failures = [Failure.None, .. Rocket.Failures];
        var outcomes = new FailureOutcome[failures.Length];
        Parallel.For(0, failures.Length, i => outcomes[i] = Fail(failures[i]));

        // All that share it are flown; the flights in it are large.
        failing = null;
        return outcomes.ToValueList();
    }

    // Knows the aerodynamics and the climb of the flight as planned, which nearly every failure shares.
    private ResultCache NewFailureCache()
    {
        var kept = new ResultCache(FailuresKept);
        kept.Get(Shape, _ => Aero);
        var climbing = Inputs(Plan).Climbing();
        kept.Get(climbing, c => cache.Get(c, i => i.Climb(Aero)));
        return kept;
    }
}
