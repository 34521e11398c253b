using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// Integrates one body run by run and keeps its motion, with a mark of the owner's for each run.
/// Pair of Tsitouras (2011), orders 5 and 4.
/// </summary>
internal sealed class FlightRecorder
{
    private readonly OdeIntegrator<Tsitouras54> integrator;
    private readonly Trajectory trajectory;
    private readonly List<(double Start, int Mark)> runs = [];
    private readonly int mostSteps;

    /// <param name="relative">Relative tolerance of a step.</param>
    /// <param name="scale">Magnitude of each number below which its relative error is of no interest.</param>
    /// <param name="mostSteps">Steps after which the flight is given up.</param>
    public FlightRecorder(double relative, double[] scale, int mostSteps)
    {
        this.mostSteps = mostSteps;
        StepControl control = new()
        {
            RelativeTolerance = relative,
            AbsoluteTolerance = [.. scale.Select(s => relative * s)],
            MaxSteps = mostSteps,
        };
        integrator = new(scale.Length, control);
        trajectory = new(scale.Length);
    }

    /// <summary>Goes on from what another has recorded, and leaves it as it is.</summary>
    /// <param name="other">Not recording at the moment.</param>
    /// <param name="relative">As above.</param>
    /// <param name="scale">As above.</param>
    /// <param name="mostSteps">As above.</param>
    public FlightRecorder(FlightRecorder other, double relative, double[] scale, int mostSteps)
        : this(relative, scale, mostSteps)
    {
        trajectory = other.trajectory.Copy();
        runs.AddRange(other.runs);
        Effort = other.Effort;
    }

    public double Start => trajectory.Count > 0 ? trajectory.Start : runs[0].Start;

    public double End => trajectory.Count > 0 ? trajectory.End : runs[0].Start;

    public FlightEffort Effort { get; private set; }

    /// <summary>One run to an end time or an event; the state is carried along.</summary>
    /// <returns>Time reached, event or −1, failure.</returns>
    public (double Time, int Event, FlightFailure Failure) Run<TMotion>(
        TMotion motion, double from, double to, double[] state, ReadOnlySpan<double> stops, int mark)
        where TMotion : struct, IOdeSystem, IEventFunctions
    {
        runs.Add((from, mark));
        IntegrationEnd end = integrator.Integrate(motion, from, to, state, stops, motion, trajectory);
        Effort = new(Effort.Steps + end.Accepted, Effort.Rejected + end.Rejected, Effort.Evaluations + end.Evaluations);
        FlightFailure failure = end.Outcome switch
        {
            IntegrationOutcome.StepTooSmall or IntegrationOutcome.NotFinite => FlightFailure.NotFinite,
            IntegrationOutcome.TooManySteps => FlightFailure.TooManySteps,
            _ => Effort.Steps + Effort.Rejected > mostSteps ? FlightFailure.TooManySteps : FlightFailure.None,
        };
        return (end.Time, end.Event, failure);
    }

    /// <summary>State at a time, held to start and end, and the mark of its run; where two runs meet, the later one's.</summary>
    /// <returns>The time held to start and end, and the mark.</returns>
    public (double Time, int Mark) StateAt(double time, Span<double> state)
    {
        double held = Math.Clamp(time, Start, End);
        trajectory.StateAt(held, state);
        int low = 0, high = runs.Count - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (runs[middle].Start <= held) low = middle;
            else high = middle - 1;
        }

        return (held, runs[low].Mark);
    }

    /// <summary>Spans of the steps, in order.</summary>
    public IEnumerable<(double Start, double End)> Steps
    {
        get
        {
            for (int i = 0; i < trajectory.Count; i++)
            {
                yield return (trajectory.StepStart(i), i + 1 < trajectory.Count ? trajectory.StepStart(i + 1) : trajectory.End);
            }
        }
    }

    /// <summary>Where nothing was computed, keeps the state as it is, so that there is always something to look at.</summary>
    public void KeepAtLeast(double time, ReadOnlySpan<double> state, int mark)
    {
        if (trajectory.Count > 0) return;
        runs.Add((time, mark));
        trajectory.Accept(new DenseStep(time, 1, time, state, new double[Tsitouras54.DenseDegree * state.Length]));
    }
}
