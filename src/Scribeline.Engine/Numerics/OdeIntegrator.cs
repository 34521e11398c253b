using System.Runtime.InteropServices;

namespace Scribeline.Engine.Numerics;

/// <summary>
/// Integrates one system with an embedded pair: adaptive steps, stops, events, dense output, forward or backward. The
/// working arrays are made once, and a step allocates nothing; use one integrator for one thread.
/// Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, sections II.4 to II.6.
/// </summary>
/// <typeparam name="TPair">The pair.</typeparam>
public sealed partial class OdeIntegrator<TPair>
    where TPair : struct, IRungeKuttaPair
{
    private readonly StepControl control;
    private readonly double[] absolute;
    private readonly double[] stages;
    private readonly double[] next;
    private readonly double[] coefficients;
    private readonly EventSearch search;
    private readonly int n;

    /// <summary>Makes the working arrays.</summary>
    /// <param name="dimension">Components of the state.</param>
    /// <param name="control">Tolerances and limits.</param>
    public OdeIntegrator(int dimension, StepControl control)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimension, 1);
        var given = control.AbsoluteTolerance;
        if (given.Count != 1 && given.Count != dimension)
        {
            throw new ArgumentException($"{given.Count} absolute tolerances for {dimension} components", nameof(control));
        }

        n = dimension;
        this.control = control;
        absolute = new double[n];
        for (var i = 0; i < n; i++) absolute[i] = given[given.Count == 1 ? 0 : i];
        stages = new double[TPair.Stages * n];
        next = new double[n];
        coefficients = new double[TPair.DenseDegree * n];
        search = new EventSearch(n, control.EventTolerance);
    }

    /// <summary>Integrates to an end time without stops or events.</summary>
    public IntegrationEnd Integrate<TSystem>(TSystem system, double from, double to, Span<double> state)
        where TSystem : IOdeSystem =>
        Integrate(system, from, to, state, [], default(NoEvents), default(NoSink));

    /// <summary>Integrates from one time to another or to a terminal event, whichever comes first.</summary>
    /// <param name="system">The equations.</param>
    /// <param name="from">Time at the start.</param>
    /// <param name="to">Time at the end; before the start to integrate backward.</param>
    /// <param name="state">State at the start; replaced by the one where the run ended.</param>
    /// <param name="stops">
    /// Times at which a step must end, in the order in which they are met; those not strictly between start and end are
    /// passed over. A step that ends at a stop evaluates the equations just before it, the next one at it: set one
    /// wherever the equations jump or have a kink in time.
    /// </param>
    /// <param name="events">Functions whose zeros are events.</param>
    /// <param name="sink">Is told of every step.</param>
    /// <param name="just">The <see cref="IntegrationEnd.Events"/> of the run that this one goes on from.</param>
    public IntegrationEnd Integrate<TSystem, TEvents, TSink>(
        TSystem system, double from, double to, Span<double> state, ReadOnlySpan<double> stops, TEvents events, TSink sink, ulong just = 0)
        where TSystem : IOdeSystem
        where TEvents : IEventFunctions
        where TSink : IStepSink
    {
        if (state.Length != n || system.Dimension != n) throw new ArgumentException("state and system must have the integrator's dimension");
        var equations = new ScalarEquations<TSystem>(system);
        var run = new Run { Time = from, Direction = Math.Sign(to - from), Controller = new StepSizeController(TPair.Order) };
        if (from == to) return run.End(IntegrationOutcome.Reached);
        Restart(ref equations, ref run, state);
        if (!AllFinite(state) || !AllFinite(stages.AsSpan(0, n))) return run.End(IntegrationOutcome.NotFinite);
        search.Begin(ref events, from, state, just);
        run.Step = control.FirstStep > 0 ? run.Direction * control.FirstStep : FirstStep(ref equations, ref run, Math.Abs(to - from), state);
        var stop = 0;
        while (true)
        {
            while (stop < stops.Length && (stops[stop] - run.Time) * run.Direction <= 0) stop++;
            var bound = stop < stops.Length && (to - stops[stop]) * run.Direction > 0 ? stops[stop] : to;
            if (run.Accepted + run.Rejected >= control.MaxSteps) return run.End(IntegrationOutcome.TooManySteps);

            if (Math.Abs(run.Step) > control.MaxStep) run.Step = run.Direction * control.MaxStep;
            var bounded = (run.Time + 1.01 * run.Step - bound) * run.Direction > 0;
            var width = bounded ? bound - run.Time : run.Step;
            if (!bounded && Math.Abs(width) < 10 * (Math.BitIncrement(Math.Abs(run.Time)) - Math.Abs(run.Time)))
            {
                return run.End(IntegrationOutcome.StepTooSmall);
            }

            if (!Try(ref equations, ref run, width, bounded, bound, state)) continue;
            if (Finish(ref events, ref sink, ref run, width, bounded ? bound : run.Time + width, state)) return run.End(IntegrationOutcome.Event);
            if (bounded && bound == to) return run.End(IntegrationOutcome.Reached);
            if (bounded)
            {
                run.Controller.Reset();
                Restart(ref equations, ref run, state);
            }
            else
            {
                stages.AsSpan((TPair.Stages - 1) * n, n).CopyTo(stages);
            }
        }
    }

    /// <summary>Takes a step and judges it; chooses the next width either way.</summary>
    private bool Try<TSystem>(
        ref ScalarEquations<TSystem> equations, ref Run run, double width, bool bounded, double bound, Span<double> state)
        where TSystem : IOdeSystem
    {
        // A forward step up to a stop must not see what begins there.
        var end = bounded ? (run.Direction > 0 ? Math.BitDecrement(bound) : bound) : run.Time + width;
        var y = AsScalar(state);
        var k = AsScalar(stages);
        var y1 = AsScalar(next);
        RungeKuttaStep.Take<Scalar, TPair, ScalarEquations<TSystem>>(ref equations, run.Time, width, end, y, k, y1);
        run.Evaluations += TPair.Stages - 1;
        double error = RungeKuttaStep.Error<Scalar, TPair>(
            width, y, y1, k, control.RelativeTolerance, AsScalar(absolute), AsScalar(coefficients));
        if (error <= 1)
        {
            run.Accepted++;
            var proposed = width * run.Controller.Accept(error);
            // A step cut short by a stop says nothing against the width wanted before.
            run.Step = bounded && Math.Abs(proposed) < Math.Abs(run.Step) ? run.Step : proposed;
            return true;
        }

        run.Rejected++;
        run.Step = width * run.Controller.Reject(error);
        return false;
    }

    /// <summary>Tells the sink of an accepted step and moves on; true if a terminal event cut it off.</summary>
    private bool Finish<TEvents, TSink>(
        ref TEvents events, ref TSink sink, ref Run run, double width, double end, Span<double> state)
        where TEvents : IEventFunctions
        where TSink : IStepSink
    {
        var ended = false;
        if (events.Count > 0 || typeof(TSink) != typeof(NoSink))
        {
            RungeKuttaStep.Interpolant<Scalar, TPair>(width, AsScalar(stages), AsScalar(coefficients));
            var step = new DenseStep(run.Time, width, end, state, coefficients);
            if (events.Count > 0 && search.Search(ref events, ref sink, step, next))
            {
                ended = true;
                (run.Event, run.Events, end) = (search.Fired, search.FiredSet, search.FiredTime);
            }

            sink.Accept(new DenseStep(run.Time, width, end, state, coefficients));
        }

        run.Time = end;
        next.CopyTo(state);
        return ended;
    }

    private void Restart<TSystem>(ref ScalarEquations<TSystem> equations, ref Run run, ReadOnlySpan<double> state)
        where TSystem : IOdeSystem
    {
        // A backward step from a stop sees what was before it.
        var time = run.Direction > 0 ? run.Time : Math.BitDecrement(run.Time);
        equations.System.Derivative(time, state, stages.AsSpan(0, n));
        run.Evaluations++;
    }

    private static bool AllFinite(ReadOnlySpan<double> values)
    {
        foreach (var value in values)
        {
            if (!double.IsFinite(value)) return false;
        }

        return true;
    }

    private static Span<Scalar> AsScalar(Span<double> values) => MemoryMarshal.Cast<double, Scalar>(values);
}
