using System.Runtime.InteropServices;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>The whole rocket from ignition until something lets go, the ground, or the end asked for.</summary>
internal sealed class WholeFlight<TModel>
    where TModel : struct, IFlightModel
{
    private readonly FlightEquations<TModel> equations;
    private readonly RailGeometry rail;
    private readonly double[] knots;
    private readonly FlightOptions options;
    private readonly FlightLog log;
    private readonly FlightRecorder recorder;
    private readonly double[] y = new double[FlightState<Scalar>.Size];
    private FlightPhase phase;
    private bool burning;
    private readonly List<FreedCanopy> canopies = [];
    private RecoveryAction? stretching;
    private double lineStretch = double.PositiveInfinity;
    private FlightSample? forwardExit;

    /// <param name="equations">Rocket and day.</param>
    /// <param name="rail">The rail.</param>
    /// <param name="knots">Times at which the slope of the thrust changes, s after ignition, ascending; the last is burnout.</param>
    /// <param name="plan">What fires when.</param>
    /// <param name="options">Tolerance and extent.</param>
    /// <param name="log">Told what happens.</param>
    public WholeFlight(
        FlightEquations<TModel> equations, RailGeometry rail, double[] knots, FiringPlan plan, FlightOptions options, FlightLog log)
    {
        (this.equations, this.rail, this.knots, Plan, this.options, this.log) = (equations, rail, knots, plan, options, log);
        recorder = new(options.RelativeTolerance, FlightTolerance.Whole(equations.Model.TotalImpulse), options.MaximumSteps);
    }

    /// <summary>Goes on from apogee, where another flight ended, and leaves that as it is.</summary>
    /// <param name="climb">Ended at apogee.</param>
    /// <param name="plan">What fires when: at apogee or later.</param>
    /// <param name="options">Tolerance and extent.</param>
    /// <param name="log">A copy of what happened on the climb.</param>
    public WholeFlight(WholeFlight<TModel> climb, FiringPlan plan, FlightOptions options, FlightLog log)
    {
        (equations, rail, knots, Plan, this.options, this.log) = (climb.equations, climb.rail, climb.knots, plan, options, log);
        recorder = new(climb.recorder, options.RelativeTolerance, FlightTolerance.Whole(equations.Model.TotalImpulse), options.MaximumSteps);
        climb.y.CopyTo(y, 0);
        (phase, burning, forwardExit, Time, ApogeePassed) = (climb.phase, climb.burning, climb.forwardExit, climb.Time, climb.ApogeePassed);
        Plan.KnowApogee(Time, log.Apogee!.AltimeterHeight);
        if (options.NoseFirst && !burning) phase = FlightPhase.Dive;
    }

    /// <summary>What has not fired.</summary>
    public FiringPlan Plan { get; }

    /// <summary>s after ignition.</summary>
    public double Time { get; private set; }

    /// <summary>Whether apogee has passed.</summary>
    public bool ApogeePassed { get; private set; }

    /// <summary>Whether it flew to its end on the ground.</summary>
    public bool Landed { get; private set; }

    /// <summary>On their way out.</summary>
    public IReadOnlyList<FreedCanopy> Canopies => canopies;

    /// <summary>The state now.</summary>
    public FlightState<Scalar> State =>
        FlightState<Scalar>.Read(MemoryMarshal.Cast<double, Scalar>(y.AsSpan()));

    public FlightEffort Effort => recorder.Effort;

    /// <summary>Everything now.</summary>
    public FlightSample Sample => SampleMaker.Whole(equations, Time, phase, burning, y, rail);

    /// <summary>The motion so far.</summary>
    public WholeTrack<TModel> Track()
    {
        recorder.KeepAtLeast(Time, y, Mark);
        return new(equations, recorder, rail);
    }

    private int Mark => WholeTrack<TModel>.Mark(phase, burning);

    private bool Free => phase is FlightPhase.Boost or FlightPhase.Coast or FlightPhase.Dive;

    /// <summary>Puts the rocket on the rail with the motor lit.</summary>
    public void Ignite(Quaternion<Scalar> attitude)
    {
        new FlightState<Scalar>(rail.Start, Vector3<Scalar>.Zero, attitude, Vector3<Scalar>.Zero, 0)
            .Write(MemoryMarshal.Cast<double, Scalar>(y.AsSpan()));
        (phase, burning) = (FlightPhase.Held, true);
        log.Add(FlightEventKind.Ignition, "ignition", 0, Sample);
        if (Motion.Value(0, 0, y) > 0) LiftOff();
    }

    /// <summary>Puts the rocket in free flight.</summary>
    public void Release(double time, in FlightState<Scalar> state)
    {
        state.Write(MemoryMarshal.Cast<double, Scalar>(y.AsSpan()));
        Time = time;
        burning = knots.Length > 0 && time < knots[^1];
        phase = burning ? FlightPhase.Boost : FlightPhase.Coast;
    }

    /// <summary>Flies until something lets go and returns it; null at the end, whether good or bad.</summary>
    public RecoveryAction? Fly()
    {
        while (true)
        {
            if (Free)
            {
                if (!ApogeePassed && y[5] <= 0 && Apogee()) return null;
                if (ApogeePassed) Plan.KnowReading(Time, equations.Model.AltimeterHeight(y[2]));
                if (Fire() is { } parted) return parted;
            }

            double until = Math.Min(burning ? knots[^1] : double.PositiveInfinity, Free ? Math.Min(Plan.NextTime, lineStretch) : double.PositiveInfinity);
            (Time, int happened, FlightFailure failure) = recorder.Run(Motion, Time, until, y, burning ? knots : [], Mark);
            State.Settled().Write(MemoryMarshal.Cast<double, Scalar>(y.AsSpan()));
            if (failure != FlightFailure.None)
            {
                log.Fail(failure);
                return null;
            }

            if (happened >= 0 ? Happened(happened) : burning && Time >= knots[^1] && BurnedOut()) return null;
        }
    }

    private WholeMotion<TModel> Motion => new(equations, phase, burning, rail, new(!ApogeePassed, ApogeePassed ? Plan.NextReading : null));

    /// <summary>
    /// Fires what is due. Sides without a cord part at once; sides on a cord, and a canopy, follow the rocket without force until the
    /// lines are stretched: the rocket flies on whole until then.
    /// </summary>
    /// <returns>What takes the rocket apart now, or null.</returns>
    private RecoveryAction? Fire()
    {
        while (Plan.Due(Time) is { } action)
        {
            log.Add(FlightEventKind.Charge, action.Name, 0, Sample);
            FreedCanopy.Free(canopies, action.Canopies, Time);
            if (action.Joint is not null && (!action.Tethered || action.Canopies.Count == 0)) return action;
            if (action.Canopies.Count == 0) continue;
            stretching ??= action;
            lineStretch = canopies.Min(c => c.LineStretch);
        }

        return lineStretch <= Time ? stretching : null;
    }

    /// <summary>Acts on an event; true where the flight ends with it.</summary>
    private bool Happened(int which)
    {
        switch (phase)
        {
            case FlightPhase.Held:
                LiftOff();
                return false;
            case FlightPhase.OnRail or FlightPhase.Pivoting when which == 1:
                log.Fail(FlightFailure.NoLiftOff);
                return true;
            case FlightPhase.OnRail:
                forwardExit = Sample;
                log.Add(FlightEventKind.ForwardGuideExit, "forward guide leaves the rail", 0, forwardExit);
                phase = FlightPhase.Pivoting;
                return rail.AftTravel <= rail.ForwardTravel && LeaveRail();
            case FlightPhase.Pivoting:
                return LeaveRail();
            default:
                return which switch
                {
                    Watch.AtApogee => Apogee(),
                    Watch.AtReading => Reading(),
                    _ => Land(),
                };
        }
    }

    private void LiftOff()
    {
        log.Add(FlightEventKind.LiftOff, "lift-off", 0, Sample);
        double now = Time;
        Plan.Know(t => t is AfterLiftOff a ? now + a.Time : null);
        phase = FlightPhase.OnRail;
        if (rail.ForwardTravel > 0) return;
        Happened(0);
    }

    private bool LeaveRail()
    {
        FlightSample aft = Sample;
        log.Add(FlightEventKind.AftGuideExit, "aft guide leaves the rail", 0, aft);
        FlightSample forward = forwardExit!;
        double gravity = equations.Model.Gravity<Scalar>(forward.Height);
        log.RailExit = new(forward, aft, forward.Thrust / (forward.Mass * gravity));
        phase = burning ? FlightPhase.Boost : FlightPhase.Coast;
        return options.Extent == FlightExtent.RailExit;
    }

    private bool BurnedOut()
    {
        log.Burnout = Sample;
        log.Add(FlightEventKind.Burnout, "burnout", 0, log.Burnout);
        double now = Time;
        Plan.Know(t => t is AfterBurnout a ? now + a.Delay : null);
        burning = false;
        if (phase == FlightPhase.Boost) phase = FlightPhase.Coast;
        if (phase != FlightPhase.Held) return false;
        log.Fail(FlightFailure.NoLiftOff);
        return true;
    }

    private bool Apogee()
    {
        log.Apogee = Sample;
        log.Add(FlightEventKind.Apogee, "apogee", 0, log.Apogee);
        ApogeePassed = true;
        Plan.KnowApogee(Time, log.Apogee.AltimeterHeight);
        if (options.NoseFirst && !burning) phase = FlightPhase.Dive;
        return options.Extent == FlightExtent.Apogee;
    }

    private bool Reading()
    {
        Plan.KnowReading(Time, Plan.NextReading!.Value);
        return false;
    }

    private bool Land() => Landed = true;
}
