using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>Flies the whole rocket, then every body that comes of it.</summary>
internal sealed class FlightComputation<TModel>
    where TModel : struct, IFlightModel
{
    private readonly TModel model;
    private readonly RecoveryPlan plan;
    private readonly FlightOptions options;
    private readonly FlightLog log;
    private readonly List<FlightTrack> tracks = [];
    private readonly List<FlightBody> bodies = [];
    private readonly List<FreedCanopyOnTrack> opened = [];
    private readonly Queue<DescentStart> waiting = new();
    private FlightEffort effort;
    private int bodyCount = 1;

    private readonly FlightInputs? inputs;

    private FlightComputation(TModel model, RecoveryPlan plan, FlightOptions options, FlightLog log, FlightInputs? inputs) =>
        (this.model, this.plan, this.options, this.log, this.inputs) = (model, plan, options, log, inputs);

    private readonly record struct FreedCanopyOnTrack(int Body, FreedCanopy Canopy);

    /// <summary>From ignition on the rail.</summary>
    /// <param name="model">Rocket and day.</param>
    /// <param name="knots">Times at which the slope of the thrust changes, s, ascending; the last is burnout.</param>
    /// <param name="rail">The rail.</param>
    /// <param name="attitude">On the rail.</param>
    /// <param name="plan">What comes apart and opens.</param>
    /// <param name="options">Tolerance and extent.</param>
    /// <param name="log">Where to note what happens; a new one unless given.</param>
    /// <param name="inputs">What all this was made from, for the result to carry.</param>
    public static FlightResult FromRail(
        TModel model, double[] knots, RailGeometry rail, Quaternion<Scalar> attitude, RecoveryPlan plan, FlightOptions options,
        FlightLog? log = null, FlightInputs? inputs = null)
    {
        FlightComputation<TModel> computation = new(model, plan, options, log ?? new(), inputs);
        WholeFlight<TModel> whole = computation.Whole(knots, rail);
        whole.Ignite(attitude);
        return computation.Fly(whole);
    }

    /// <summary>From a state in free flight.</summary>
    public static FlightResult FromAir(
        TModel model, double[] knots, double time, in FlightState<Scalar> state, RecoveryPlan plan, FlightOptions options)
    {
        FlightComputation<TModel> computation = new(model, plan, options, new(), null);
        WholeFlight<TModel> whole = computation.Whole(knots, default);
        whole.Release(time, state);
        return computation.Fly(whole);
    }

    /// <summary>From apogee, on a climb computed before.</summary>
    public static FlightResult FromApogee(WholeFlight<TModel> climb, FlightLog climbed, TModel model, RecoveryPlan plan, FlightOptions options, FlightInputs inputs)
    {
        FlightComputation<TModel> computation = new(model, plan, options, climbed.Copy(), inputs);
        return computation.Fly(new(climb, new FiringPlan(plan.Actions), options, computation.log));
    }

    private WholeFlight<TModel> Whole(double[] knots, RailGeometry rail) =>
        new(new(model), rail, knots, new FiringPlan(plan.Actions), options, log);

    private FlightResult Fly(WholeFlight<TModel> whole)
    {
        RecoveryAction? action = whole.Fly();
        Add(whole.Effort);
        tracks.Add(whole.Track());
        FlightSample end = whole.Sample;
        bodies.Add(new(0, null, Names(0, plan.Pieces.Count - 1), tracks[0].Start, whole.Time, end.Mass));
        if (whole.Landed) Land(0, end, end.Mass);
        if (action is not null)
        {
            FlightState<Scalar> s = whole.State;
            DescentStart parent = new(
                0, 0, 0, plan.Pieces.Count - 1, Masses(s), whole.Time, s.Position, s.Velocity, s.Attitude.Normalised(),
                whole.ApogeePassed, whole.Plan, []);
            Part(parent, action, whole.Canopies);
        }

        while (waiting.TryDequeue(out DescentStart? start)) Descend(start);
        return Result();
    }

    private void Descend(DescentStart start)
    {
        DescentFlight<TModel> flight = new(model, plan.Pieces, start, options, log);
        RecoveryAction? action = flight.Fly();
        Add(flight.Effort);
        tracks.Add(flight.Track());
        bodies.Add(new(start.Index, start.Parent, Names(start.First, start.Last), start.Time, flight.Time, flight.Mass));
        foreach (FreedCanopy canopy in flight.Canopies.Where(c => c.FillTime is not null && c.LineStretch >= start.Time))
        {
            opened.Add(new(start.Index, canopy));
        }

        if (flight.Landed) Land(start.Index, flight.Sample, flight.Mass);
        if (action is null) return;
        Part(
            start with { Time = flight.Time, Position = flight.Position, Velocity = flight.Velocity, ApogeePassed = flight.ApogeePassed },
            action, flight.Canopies);
    }

    /// <summary>Queues the one or two bodies that an action leaves.</summary>
    private void Part(DescentStart parent, RecoveryAction action, IReadOnlyList<FreedCanopy> canopies)
    {
        foreach (DescentStart part in Parting.Of(parent, action, canopies)) waiting.Enqueue(part with { Index = bodyCount++ });
    }

    /// <summary>Masses of the pieces; propellant that has not burnt is in the last.</summary>
    private double[] Masses(in FlightState<Scalar> s)
    {
        double[] masses = [.. plan.Pieces.Select(p => p.Mass)];
        double burned = Math.Min(s.Impulse / model.TotalImpulse, 1);
        model.Mass<Scalar>(burned, out FlightMass<Scalar> now);
        model.Mass<Scalar>(1, out FlightMass<Scalar> burnt);
        masses[^1] += now.Mass - burnt.Mass;
        return masses;
    }

    private void Land(int body, FlightSample at, double mass)
    {
        ValueList<string> pieces = bodies[^1].Pieces;
        string name = pieces.Count == 0 ? "rocket" : string.Join(", ", pieces);
        log.Add(FlightEventKind.Landing, $"{name}: landing", body, at);
        log.Add(new Landing(body, pieces, at, mass));
    }

    private ValueList<string> Names(int first, int last) =>
        plan.Pieces.Skip(first).Take(last - first + 1).Select(p => p.Name).ToValueList();

    private void Add(FlightEffort e) =>
        effort = new(effort.Steps + e.Steps, effort.Rejected + e.Rejected, effort.Evaluations + e.Evaluations);

    private FlightResult Result()
    {
        FlightTrack[] flown = [.. tracks];
        return new FlightResult(flown, () => Openings(flown, opened))
        {
            Inputs = inputs,
            Failure = log.Failure,
            Events = log.Events,
            Bodies = bodies.ToValueList(),
            RailExit = log.RailExit,
            Burnout = log.Burnout,
            Apogee = log.Apogee,
            Landings = log.Landings,
            Effort = effort,
        };
    }

    private static ValueList<CanopyOpening> Openings(FlightTrack[] tracks, List<FreedCanopyOnTrack> opened) => opened
        .OrderBy(o => o.Canopy.LineStretch)
        .Select(o =>
        {
            OpenCanopy open = new(o.Canopy.Canopy, o.Canopy.LineStretch, o.Canopy.FillTime!.Value);
            FlightTrack track = tracks[o.Body];
            FlightMaximum peak = MaximumSearch.Of(track, s => s.DynamicPressure * open.DragArea(s.Time), open.LineStretch, open.Full + 1);
            return new CanopyOpening(o.Canopy.Canopy.Name, o.Body, track.At(open.LineStretch), open.FillTime, peak);
        })
        .ToValueList();
}
