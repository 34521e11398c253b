using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// Many flights of one rocket, flown side by side in the lanes of the machine's vectors and on all its cores. Equations, pair, tolerances and
/// events are those of one flight; every flight has its own time and step. Equal cases give equal ends to the last bit, whatever flies beside
/// them, on however many threads, in packs of four or of eight.
/// </summary>
/// <param name="Nominal">What all cases share: shape, thrust curve, latitude, turn of the rocket on its rail, tolerance, whether it dives.</param>
/// <param name="Aerodynamics">Table of its shape.</param>
/// <param name="Top">Height above which air and wind are held, m above the pad.</param>
public sealed record EnsembleInputs(FlightInputs Nominal, AeroTable Aerodynamics, double Top)
{
    // Enough to keep lanes full, few enough for their tables to stay near the core.
    private const int Batch = 128, LeastBatch = 16;

    /// <summary>Lanes side by side on this machine: 8 where its vectors hold as many, else 4.</summary>
    public static int UsualLanes => System.Runtime.Intrinsics.Vector512.IsHardwareAccelerated ? Wide8.Width : Wide4.Width;

    /// <summary>
    /// Where each case goes on from instead of the rail: the apogee of the same case with another plan, in which nothing opens before; null
    /// for the rail. The climb is then not computed again.
    /// </summary>
    internal Func<int, EnsembleApex?>? From { get; init; }

    /// <summary>Whether a plan leaves the climb as it is: everything in it happens at apogee or later.</summary>
    internal static bool LeavesClimb(RecoveryPlan plan) => plan.Actions.All(a => a.Trigger is AtApogee or DescendingThrough);

    /// <summary>Flies cases.</summary>
    /// <param name="count">How many.</param>
    /// <param name="draw">Case 0, 1, 2 ...: a pure function of the number, called from several threads; null counts as failed.</param>
    /// <param name="progress">Told the share done, 0 to 1, from any thread; may be null.</param>
    /// <param name="lanes">1, 4 or 8; 0 for the machine's own.</param>
    /// <param name="threads">Threads at most; 0 for one per core.</param>
    /// <param name="cancel">Ends the work with an <see cref="OperationCanceledException"/>.</param>
    /// <returns>One end for each case, in their order.</returns>
    public EnsembleEnd[] Fly(
        int count, Func<int, EnsembleCase?> draw, Action<double>? progress = null, int lanes = 0, int threads = 0, CancellationToken cancel = default) =>
        (lanes == 0 ? UsualLanes : lanes) switch
        {
            8 => Fly<Wide8>(count, draw, progress, threads, cancel),
            4 => Fly<Wide4>(count, draw, progress, threads, cancel),
            1 => Fly<Scalar>(count, draw, progress, threads, cancel),
            _ => throw new ArgumentOutOfRangeException(nameof(lanes), lanes, "Lanes come in packs of 1, 4 or 8."),
        };

    private EnsembleEnd[] Fly<T>(int count, Func<int, EnsembleCase?> draw, Action<double>? progress, int threads, CancellationToken cancel)
        where T : struct, IReal<T>
    {
        var ends = new EnsembleEnd[count];
        var done = 0;
        var size = Math.Clamp(count / 8, LeastBatch, Batch);
        var options = new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = threads == 0 ? -1 : threads };
        Parallel.For(0, (count + size - 1) / size, options, () => new EnsembleBatch<T>(this), (number, _, batch) =>
        {
            var from = number * size;
            var flown = ends.AsSpan(from, Math.Min(size, count - from));
            batch.Fly(from, draw, flown, cancel);
            progress?.Invoke((double)Interlocked.Add(ref done, flown.Length) / count);
            return batch;
        }, _ => { });
        return ends;
    }
}
