using System.Runtime.InteropServices;

namespace Scribeline.Engine.Numerics;

/// <summary>
/// Integrates many runs of one system side by side, each lane with its own time, step, error and end; a lane whose run has ended takes
/// the next. Nothing passes from lane to lane, so a run comes out the same to the last bit whatever flies beside it.
/// Steps, control and location of events are those of <see cref="OdeIntegrator{TPair}"/>.
/// </summary>
/// <typeparam name="T">The pack of lanes.</typeparam>
/// <typeparam name="TPair">The pair.</typeparam>
internal sealed class LaneIntegrator<T, TPair>
    where T : struct, IReal<T>
    where TPair : struct, IRungeKuttaPair
{
    private readonly int n;
    private readonly int mostSteps;
    private readonly T relative;
    private readonly T[] absolute, state, next, stages, work;
    private readonly double[] time = new double[T.Width], step = new double[T.Width], width = new double[T.Width], end = new double[T.Width];
    private readonly double[] to = new double[T.Width], bound = new double[T.Width], error = new double[T.Width];
    private readonly bool[] live = new bool[T.Width], bounded = new bool[T.Width];
    private readonly int[] steps = new int[T.Width];
    private readonly StepSizeController[] control = new StepSizeController[T.Width];
    private readonly double[] one, reached, oneStages, coefficients, probe;
    private int living;

    /// <param name="relative">Relative tolerance.</param>
    /// <param name="absolute">Absolute tolerance of each component.</param>
    /// <param name="mostSteps">Steps after which a run is given up.</param>
    public LaneIntegrator(double relative, ReadOnlySpan<double> absolute, int mostSteps)
    {
        (n, this.mostSteps, this.relative) = (absolute.Length, mostSteps, T.From(relative));
        this.absolute = new T[n];
        for (var i = 0; i < n; i++) this.absolute[i] = T.From(absolute[i]);
        (state, next, work, stages) = (new T[n], new T[n], new T[n], new T[n * TPair.Stages]);
        (one, reached, probe) = (new double[n], new double[n], new double[n]);
        (oneStages, coefficients) = (new double[n * TPair.Stages], new double[n * TPair.DenseDegree]);
    }

    /// <summary>Steps taken in all, for those who watch the speed of computing; a step of the pack counts once.</summary>
    public long PackSteps { get; private set; }

    /// <summary>Runs everything that waits.</summary>
    /// <param name="runs">The runs.</param>
    /// <param name="cancel">Ends the work with an <see cref="OperationCanceledException"/>.</param>
    public void Run<TRuns>(ref TRuns runs, CancellationToken cancel)
        where TRuns : struct, ILaneRuns<T>
    {
        for (var lane = 0; lane < T.Width; lane++) Fill(ref runs, lane);
        if (living == 0) return;
        Spread();
        runs.Derivative(T.Load(time), state, stages.AsSpan(0, n));
        for (var round = 0; living > 0; round++)
        {
            if (round % 256 == 0) cancel.ThrowIfCancellationRequested();
            for (var lane = 0; lane < T.Width; lane++) Aim(ref runs, lane);
            RungeKuttaStep.Take<T, TPair, TRuns>(ref runs, T.Load(time), T.Load(width), T.Load(end), state, stages, next);
            var errors = RungeKuttaStep.Error<T, TPair>(T.Load(width), state, next, stages, relative, absolute, work);
            PackSteps++;
            var anew = false;
            for (var lane = 0; lane < T.Width; lane++)
            {
                error[lane] = T.Lane(errors, lane);
                if (live[lane]) anew |= Judge(ref runs, lane);
            }

            Accept();
            if (!anew) continue;
            Spread();
            runs.Derivative(T.Load(time), state, stages.AsSpan(0, n));
        }
    }

    /// <summary>Takes a run into a lane, its state at once.</summary>
    private bool Fill<TRuns>(ref TRuns runs, int lane)
        where TRuns : struct, ILaneRuns<T>
    {
        (width[lane], live[lane]) = (0, false);
        if (!runs.Load(lane, one, out var run)) return false;
        live[lane] = true;
        living++;
        (time[lane], to[lane], step[lane], steps[lane]) = (run.From, run.To, run.FirstStep, 0);
        control[lane] = new StepSizeController(TPair.Order);
        for (var i = 0; i < n; i++) Number(state, i, lane) = one[i];
        return true;
    }

    /// <summary>Lanes that never held a run get the state of one that does: what is not a number costs time.</summary>
    private void Spread()
    {
        var from = Array.IndexOf(live, true);
        if (from < 0) return;
        for (var lane = 0; lane < T.Width; lane++)
        {
            if (live[lane]) continue;
            time[lane] = time[from];
            for (var i = 0; i < n; i++) Number(state, i, lane) = Number(state, i, from);
        }
    }

    private void Aim<TRuns>(ref TRuns runs, int lane)
        where TRuns : struct, ILaneRuns<T>
    {
        if (!live[lane])
        {
            (width[lane], end[lane]) = (0, time[lane]);
            return;
        }

        bound[lane] = Math.Min(to[lane], runs.NextStop(lane, time[lane]));
        bounded[lane] = time[lane] + (1.01 * step[lane]) > bound[lane];
        width[lane] = bounded[lane] ? bound[lane] - time[lane] : step[lane];

        // A step up to a stop must not see what begins there.
        end[lane] = bounded[lane] ? Math.BitDecrement(bound[lane]) : time[lane] + width[lane];
    }

    /// <summary>Accepts or rejects a lane's step; true where the equations must be evaluated anew at its start.</summary>
    private bool Judge<TRuns>(ref TRuns runs, int lane)
        where TRuns : struct, ILaneRuns<T>
    {
        if (!(error[lane] <= 1))
        {
            step[lane] = width[lane] * control[lane].Reject(error[lane]);
            return (++steps[lane] > mostSteps || step[lane] < 1e-12) && Leave(ref runs, lane, state, new(time[lane], -1, step[lane], Failed: true));
        }

        var proposed = width[lane] * control[lane].Accept(error[lane]);
        step[lane] = bounded[lane] && proposed < step[lane] ? step[lane] : proposed;
        if (First(ref runs, lane) is { } found) return Leave(ref runs, lane, [], found);
        var at = bounded[lane] ? bound[lane] : time[lane] + width[lane];
        if (at >= to[lane]) return Leave(ref runs, lane, next, new(at, -1, step[lane], Failed: false));
        if (++steps[lane] > mostSteps) return Leave(ref runs, lane, next, new(at, -1, step[lane], Failed: true));
        time[lane] = at;
        return bounded[lane]; // the equations begin anew at a stop
    }

    /// <summary>The first event within an accepted step, its state left in <see cref="reached"/>.</summary>
    private LaneEnd? First<TRuns>(ref TRuns runs, int lane)
        where TRuns : struct, ILaneRuns<T>
    {
        var (first, share) = (-1, double.PositiveInfinity);
        for (var i = 0; i < runs.EventCount; i++)
        {
            Column(next, lane, one);
            if (runs.Event(lane, i, one) < 0) continue;
            Column(state, lane, probe);
            if (runs.Event(lane, i, probe) >= 0) continue;
            var at = Locate(ref runs, lane, i);
            if (at < share) (first, share) = (i, at);
        }

        if (first < 0) return null;
        Dense(lane);
        StateAt(lane, share, reached);
        return new(time[lane] + (share * width[lane]), first, step[lane], Failed: false);
    }

    /// <summary>Share of the step at the far side of an event's zero: bisection with the secant where it helps (Illinois).</summary>
    private double Locate<TRuns>(ref TRuns runs, int lane, int index)
        where TRuns : struct, ILaneRuns<T>
    {
        Dense(lane);
        double low = 0, high = 1;
        Column(state, lane, probe);
        var atLow = runs.Event(lane, index, probe);
        Column(next, lane, probe);
        var atHigh = runs.Event(lane, index, probe);
        var least = Math.Max(1e-10 / width[lane], 1e-15);
        for (var i = 0; i < 200 && high - low > least && atHigh > 0; i++)
        {
            var trial = i % 3 == 2 ? 0.5 * (low + high) : low - (atLow * (high - low) / (atHigh - atLow));
            trial = Math.Clamp(trial, low + (0.01 * least), high - (0.01 * least));
            StateAt(lane, trial, probe);
            var value = runs.Event(lane, index, probe);
            if (value >= 0) (high, atHigh, atLow) = (trial, value, 0.5 * atLow);
            else (low, atLow, atHigh) = (trial, value, 0.5 * atHigh);
        }

        return high;
    }

    private bool Leave<TRuns>(ref TRuns runs, int lane, ReadOnlySpan<T> from, in LaneEnd how)
        where TRuns : struct, ILaneRuns<T>
    {
        if (from.Length > 0) Column(from, lane, reached);
        living--;
        runs.Unload(lane, reached, how);
        error[lane] = double.NaN; // what Fill has put into the state stays there
        return Fill(ref runs, lane);
    }

    private void Accept()
    {
        var (errors, limit) = (T.Load(error), T.From(1));
        var last = stages.AsSpan((TPair.Stages - 1) * n, n);
        for (var i = 0; i < n; i++)
        {
            state[i] = T.SelectLess(limit, errors, state[i], T.SelectLess(errors, T.From(double.PositiveInfinity), next[i], state[i]));
            stages[i] = T.SelectLess(limit, errors, stages[i], T.SelectLess(errors, T.From(double.PositiveInfinity), last[i], stages[i]));
        }
    }

    /// <summary>The dense output of one lane's step.</summary>
    private void Dense(int lane)
    {
        Column(stages, lane, oneStages);
        RungeKuttaStep.Interpolant<Scalar, TPair>(width[lane], Scalars(oneStages), Scalars(coefficients));
    }

    private void StateAt(int lane, double share, double[] result)
    {
        Span<double> start = stackalloc double[n];
        Column(state, lane, start);
        RungeKuttaStep.Evaluate<Scalar>(share, Scalars(start), Scalars(coefficients), Scalars(result));
    }

    private static Span<Scalar> Scalars(Span<double> values) => MemoryMarshal.Cast<double, Scalar>(values);

    private static void Column(ReadOnlySpan<T> from, int lane, Span<double> result)
    {
        var numbers = MemoryMarshal.Cast<T, double>(from);
        for (var i = 0; i < result.Length; i++) result[i] = numbers[(i * T.Width) + lane];
    }

    private static ref double Number(Span<T> values, int index, int lane) => ref MemoryMarshal.Cast<T, double>(values)[(index * T.Width) + lane];
}
