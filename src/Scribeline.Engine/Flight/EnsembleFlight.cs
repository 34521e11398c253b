using System.Runtime.InteropServices;
using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>
/// One of many flights on its way through the lanes: where it is, what it waits for, what happens when a lane has carried it to an event.
/// The order of events is that of <see cref="WholeFlight{TModel}"/> and <see cref="DescentFlight{TModel}"/>.
/// </summary>
internal sealed class EnsembleFlight
{
    // s. At apogee all is slow; a step of its own there makes a flight the same whether it climbed or went on from another's apogee.
    private const double FirstStep = 0.01, StepAtApogee = 0.1;

    private readonly EnsembleCase flown;
    private readonly RailGeometry rail;
    private readonly double burnout;
    private readonly bool noseFirst;
    private readonly RecoveryPlan plan;
    private readonly double[] y = new double[FlightState<Scalar>.Size];
    private readonly List<EnsembleLanding> landings = [];
    private readonly Queue<DescentStart> waiting = new();
    private List<FreedCanopy> canopies = [];
    private FiringPlan firing;
    private DescentStart? body;
    private RecoveryAction? stretching;
    private double lineStretch = double.PositiveInfinity, apogee = double.NaN, step = FirstStep, until = double.PositiveInfinity;
    private EnsembleApex? apex;
    private bool failed;

    /// <param name="flown">The case.</param>
    /// <param name="nominal">What all share.</param>
    /// <param name="rail">Its rail in the frame of flight.</param>
    /// <param name="constants">What its lane needs.</param>
    public EnsembleFlight(EnsembleCase flown, FlightInputs nominal, in RailGeometry rail, LaneConstants constants)
    {
        (this.flown, this.rail, Constants) = (flown, rail, constants);
        (burnout, noseFirst) = (nominal.Motor.Curve.EndTime, nominal.Options.NoseFirst);
        plan = TrueHeights(flown.Recovery, flown.Air);
        firing = new FiringPlan(plan.Actions);
    }

    /// <summary>What its lane needs.</summary>
    public LaneConstants Constants { get; }

    /// <summary>Equations it waits for.</summary>
    public FlightPhase Phase { get; private set; } = FlightPhase.Held;

    /// <summary>Whether nothing more happens.</summary>
    public bool IsOver { get; private set; }

    /// <summary>s after ignition.</summary>
    public double Time { get; private set; }

    /// <summary>Whether its motor burns.</summary>
    public bool IsBurning { get; private set; } = true;

    /// <summary>Whether apogee has passed.</summary>
    public bool ApogeePassed { get; private set; }

    /// <summary>Altimeter reading it waits for, as true height, m.</summary>
    public double? NextReading => firing.NextReading;

    /// <summary>Mass of the body under canopies, kg.</summary>
    public double BodyMass { get; private set; }

    /// <summary>Its drag area without canopies, m².</summary>
    public double BodyDragArea { get; private set; }

    /// <summary>On their way out or open.</summary>
    public IReadOnlyList<FreedCanopy> Canopies => canopies;

    /// <summary>How it ended.</summary>
    public EnsembleEnd End => new(failed, apogee, landings) { Apex = apex };

    /// <summary>Rail in the frame of flight.</summary>
    public RailGeometry Rail => rail;

    /// <summary>State and times for a lane.</summary>
    public LaneRun Enter(Span<double> state)
    {
        y.AsSpan(0, state.Length).CopyTo(state);
        return new(Time, until, step);
    }

    /// <summary>Lights the motor; the rocket moves when the thrust lifts it.</summary>
    /// <param name="equations">With this flight alone in them.</param>
    /// <param name="attitude">On the rail.</param>
    public void Ignite(in FlightEquations<LaneModel> equations, Quaternion<Scalar> attitude)
    {
        FlightState<Scalar> s = new(rail.Start, Vector3<Scalar>.Zero, attitude, Vector3<Scalar>.Zero, 0);
        s.Write(MemoryMarshal.Cast<double, Scalar>(y.AsSpan()));
        if (LiftOff(equations, s) is not { } time)
        {
            Fail();
            return;
        }

        Time = time;
        firing.Know(t => t is AfterLiftOff a ? time + a.Time : null);
        Phase = rail.ForwardTravel > 0 ? FlightPhase.OnRail : FlightPhase.Pivoting;
        until = burnout;
    }

    /// <summary>Goes on from apogee.</summary>
    /// <param name="from">Of the same case.</param>
    /// <param name="model">With this flight alone in it.</param>
    public void Resume(EnsembleApex from, in LaneModel model)
    {
        from.State.CopyTo(y, 0);
        (Time, IsBurning, Phase) = (from.Time, false, FlightPhase.Coast);
        Apogee();
        Decide(model);
    }

    /// <summary>Takes the flight out of its lane and decides what comes next.</summary>
    /// <param name="state">Where the lane carried it.</param>
    /// <param name="how">Why it left.</param>
    /// <param name="model">With this flight alone in it.</param>
    public void Leave(ReadOnlySpan<double> state, in LaneEnd how, in LaneModel model)
    {
        state.CopyTo(y);
        (Time, step) = (how.Time, Math.Max(how.Step, 1e-4));
        if (how.Failed)
        {
            Fail();
            return;
        }

        if (body is null && Phase != FlightPhase.Dive) State.Settled().Write(MemoryMarshal.Cast<double, Scalar>(y.AsSpan()));
        if (IsBurning && Time >= burnout) BurnedOut();
        if (Phase is FlightPhase.OnRail or FlightPhase.Pivoting) OnRail(how.Event);
        else if (how.Event == Watch.AtGround) Land();
        else if (how.Event == Watch.AtApogee) Apogee();
        else if (how.Event == Watch.AtReading) firing.KnowReading(Time, firing.NextReading!.Value);
        if (!IsOver && Phase is not (FlightPhase.OnRail or FlightPhase.Pivoting)) Decide(model);
    }

    private FlightState<Scalar> State => FlightState<Scalar>.Read(MemoryMarshal.Cast<double, Scalar>(y.AsSpan()));

    private void OnRail(int happened)
    {
        if (happened == 1)
        {
            Fail();
            return;
        }

        until = IsBurning ? burnout : double.PositiveInfinity;
        step = FirstStep;
        if (happened != 0) return;
        Phase = Phase == FlightPhase.OnRail && rail.AftTravel > rail.ForwardTravel ? FlightPhase.Pivoting
            : IsBurning ? FlightPhase.Boost : FlightPhase.Coast;
    }

    private void BurnedOut()
    {
        IsBurning = false;
        var now = Time;
        firing.Know(t => t is AfterBurnout a ? now + a.Delay : null);
        if (Phase == FlightPhase.Boost) Phase = FlightPhase.Coast;
    }

    private void Apogee()
    {
        if (double.IsNaN(apogee)) apogee = y[2];
        if (body is null)
        {
            step = StepAtApogee;
            if (!IsBurning) apex = new(Time, [.. y]);
        }

        ApogeePassed = true;
        firing.KnowApogee(Time, y[2]);
        if (noseFirst && !IsBurning && body is null) Phase = FlightPhase.Dive;
    }

    /// <summary>Fires what is due and sets the time of the next change.</summary>
    private void Decide(in LaneModel model)
    {
        while (true)
        {
            if (!ApogeePassed && y[5] <= 0) Apogee();
            if (ApogeePassed) firing.KnowReading(Time, y[2]);
            if (body is null ? FireWhole() : FireBody())
            {
                if (IsOver) return;
                continue;
            }

            if (body is null)
            {
                until = Math.Min(IsBurning ? burnout : double.PositiveInfinity, Math.Min(firing.NextTime, lineStretch));
                return;
            }

            Stretch(model);
            until = Math.Min(firing.NextTime, NextCanopyTime());
            if (until > Time) return;
        }
    }

    /// <summary>Fires what is due; true where it came apart, so that another body flies now.</summary>
    private bool FireWhole()
    {
        while (firing.Due(Time) is { } action)
        {
            FreedCanopy.Free(canopies, action.Canopies, Time);
            if (action.Joint is not null && (!action.Tethered || action.Canopies.Count == 0)) return ComeApart(action);
            if (action.Canopies.Count == 0) continue;
            stretching ??= action;
            lineStretch = canopies.Min(c => c.LineStretch);
        }

        return lineStretch <= Time && ComeApart(stretching!);
    }

    private bool ComeApart(RecoveryAction action)
    {
        var masses = plan.Pieces.Select(p => p.Mass).ToArray();
        var burned = Math.Min(y[13] / Constants.TotalImpulse, 1);
        masses[^1] += flown.Mass.At<Scalar>(burned).Mass - flown.Mass.At<Scalar>(1).Mass;
        var s = State;
        DescentStart parent = new(
            0, 0, 0, plan.Pieces.Count - 1, masses, Time, s.Position, s.Velocity, s.Attitude.Normalised(), ApogeePassed, firing, []);
        foreach (var part in Parting.Of(parent, action, canopies)) waiting.Enqueue(part);
        NextBody();
        return true;
    }

    private bool FireBody()
    {
        while (firing.Due(Time) is { } action)
        {
            FreedCanopy.Free(canopies, action.Canopies, Time);
            if (action.Joint is null || action.Tethered) continue;
            var now = body! with { Time = Time, Position = new(y[0], y[1], y[2]), Velocity = new(y[3], y[4], y[5]), ApogeePassed = ApogeePassed };
            foreach (var part in Parting.Of(now, action, canopies)) waiting.Enqueue(part);
            NextBody();
            return true;
        }

        return false;
    }

    /// <summary>Goes on with the next body; the whole flight is over where there is none.</summary>
    private void NextBody()
    {
        if (!waiting.TryDequeue(out var start))
        {
            IsOver = true;
            return;
        }

        (body, Phase, Time, ApogeePassed, firing, canopies) = (start, FlightPhase.Descent, start.Time, start.ApogeePassed, start.Plan, [.. start.Canopies]);
        (y[0], y[1], y[2], y[3], y[4], y[5]) = (start.Position.X, start.Position.Y, start.Position.Z, start.Velocity.X, start.Velocity.Y, start.Velocity.Z);
        (BodyMass, BodyDragArea, step) = (0, 0, FirstStep);
        for (var i = start.First; i <= start.Last; i++)
        {
            BodyMass += start.Masses[i];
            BodyDragArea += plan.Pieces[i].BodyDragArea;
        }
    }

    private void Stretch(in LaneModel model)
    {
        for (var i = 0; i < canopies.Count; i++)
        {
            if (canopies[i].FillTime is not null || canopies[i].LineStretch > Time) continue;
            model.Around<Scalar>(y[2], out _, out var wind);
            var flow = new Vector3<Scalar>(y[3], y[4], y[5]) - wind;
            var fill = Inflation.FillTime(canopies[i].Canopy, flow.Length, model.Gravity<Scalar>(y[2]));
            canopies[i] = canopies[i] with { FillTime = fill };
            step = Math.Min(step, Math.Max(fill / 10, 1e-3));
        }
    }

    private double NextCanopyTime()
    {
        var next = double.PositiveInfinity;
        foreach (var canopy in canopies)
        {
            var time = canopy.FillTime is { } fill ? canopy.LineStretch + fill : canopy.LineStretch;
            if (time > Time) next = Math.Min(next, time);
        }

        return next;
    }

    private void Land()
    {
        landings.Add(new(body?.First ?? 0, body?.Last ?? plan.Pieces.Count - 1, y[0], y[1], -y[5], Time));
        NextBody();
    }

    private void Fail() => (failed, IsOver) = (true, true);

    /// <summary>When the net force up the rail turns positive, s; null where it never does. The thrust is a line between its points.</summary>
    private double? LiftOff(in FlightEquations<LaneModel> equations, in FlightState<Scalar> s)
    {
        var curve = equations.Model.Curve;
        var (before, ahead) = (0.0, Net(equations, 0, s));
        if (ahead > 0) return 0;
        foreach (var point in curve.Points)
        {
            var here = Net(equations, point.Time, s);
            if (here > 0)
            {
                var (low, high) = (before, point.Time);
                for (var i = 0; i < 60 && high - low > 1e-9; i++)
                {
                    var middle = (low + high) / 2;
                    if (Net(equations, middle, s) > 0) high = middle;
                    else low = middle;
                }

                y[13] = flown.Impulse * curve.ImpulseAt<Scalar>(high);
                return high;
            }

            before = point.Time;
        }

        return null;
    }

    private double Net(in FlightEquations<LaneModel> equations, double time, FlightState<Scalar> s)
    {
        s = s with { Impulse = flown.Impulse * equations.Model.Curve.ImpulseAt<Scalar>(time) };
        return RailEquations.NetForce<Scalar>(s, equations.Loads<Scalar>(time, s, 1), rail.Friction);
    }

    private static RecoveryPlan TrueHeights(RecoveryPlan plan, DayAir air) => plan with
    {
        Actions = plan.Actions.Select(a => a.Trigger is DescendingThrough d
            ? a with { Trigger = d with { Height = Altimetry.TrueHeight<Scalar>(air, d.Height) } }
            : a).ToValueList(),
    };
}
