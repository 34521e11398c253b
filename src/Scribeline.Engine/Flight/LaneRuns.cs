using Scribeline.Engine.Numerics;
using P = Scribeline.Engine.Flight.LaneParameters;

namespace Scribeline.Engine.Flight;

/// <summary>Flights that wait for one set of equations, and those that fly in the lanes.</summary>
/// <param name="lanes">Number of lanes.</param>
internal sealed class LaneQueue(int lanes)
{
    /// <summary>Flights that wait.</summary>
    public Queue<EnsembleFlight> Waiting { get; } = new();

    /// <summary>The flight in each lane.</summary>
    public EnsembleFlight[] Flying { get; } = new EnsembleFlight[lanes];
}

/// <summary>Whole rockets in one phase: on both guides, on one, or free.</summary>
/// <param name="batch">Whose flights they are.</param>
/// <param name="queue">Those of this phase.</param>
/// <param name="equations">With the lanes' rockets in them.</param>
/// <param name="phase">The phase.</param>
internal readonly struct WholeLanes<T>(EnsembleBatch<T> batch, LaneQueue queue, FlightEquations<LaneModel> equations, FlightPhase phase) : ILaneRuns<T>
    where T : struct, IReal<T>
{
    public int Dimension => FlightState<Scalar>.Size;

    public int EventCount => phase is FlightPhase.OnRail or FlightPhase.Pivoting ? 2 : Watch.Count;

    public void Derivative(T time, ReadOnlySpan<T> state, Span<T> rate)
    {
        FlightState<T> s = FlightState<T>.Read(state);
        LaneModel model = equations.Model;
        T burning = model.Of<T>(P.Burning);
        FlightState<T> change = phase switch
        {
            FlightPhase.OnRail => RailEquations.Guided<T, LaneModel>(equations, time, s, burning, model.Of<T>(P.Friction)),
            FlightPhase.Pivoting => RailEquations.Pivoting<T, LaneModel>(
                equations, time, s, burning, model.Of<T>(P.Friction), new(model.Of<T>(P.RailEast), model.Of<T>(P.RailNorth), model.Of<T>(P.RailUp)),
                model.Of<T>(P.AftGuide)),
            _ => equations.Free(time, s, burning),
        };
        change.Write(rate);
    }

    public bool Load(int lane, Span<double> state, out LaneRun run) => batch.Load(queue, lane, state, out run);

    public double NextStop(int lane, double time)
    {
        if (!queue.Flying[lane].IsBurning) return double.PositiveInfinity;
        foreach (var point in equations.Model.Curve.Points)
        {
            if (point.Time > time) return point.Time;
        }

        return double.PositiveInfinity;
    }

    public double Event(int lane, int index, ReadOnlySpan<double> state)
    {
        EnsembleFlight flight = queue.Flying[lane];
        if (phase is FlightPhase.OnRail or FlightPhase.Pivoting)
        {
            RailGeometry rail = flight.Rail;
            Vector3<Scalar> position = new(state[0], state[1], state[2]), velocity = new(state[3], state[4], state[5]);
            return index == 1
                ? -Vector3<Scalar>.Dot(velocity, rail.Direction)
                : Vector3<Scalar>.Dot(position - rail.Start, rail.Direction) - (phase == FlightPhase.OnRail ? rail.ForwardTravel : rail.AftTravel);
        }

        return new Watch(!flight.ApogeePassed, flight.ApogeePassed ? flight.NextReading : null).Value(equations.Model, index, state[2], state[5]);
    }

    public void Unload(int lane, ReadOnlySpan<double> state, in LaneEnd end) => batch.Unload(queue, lane, state, end);
}

/// <summary>Points: what hangs on cords and canopies, and rockets in a dive.</summary>
/// <param name="batch">Whose flights they are.</param>
/// <param name="queue">Those of this phase.</param>
/// <param name="equations">With the lanes' bodies in them.</param>
/// <param name="dive">Whether they dive.</param>
internal readonly struct FallingLanes<T>(EnsembleBatch<T> batch, LaneQueue queue, FlightEquations<LaneModel> equations, bool dive) : ILaneRuns<T>
    where T : struct, IReal<T>
{
    public int Dimension => DescentEquations.Size;

    public int EventCount => Watch.Count;

    public void Derivative(T time, ReadOnlySpan<T> state, Span<T> rate)
    {
        Vector3<T> position = new(state[0], state[1], state[2]), velocity = new(state[3], state[4], state[5]);
        LaneModel model = equations.Model;
        Vector3<T> a = dive
            ? equations.Dive(position, velocity)
            : DescentEquations.Acceleration(model, position, velocity, model.Of<T>(P.BodyMass), model.DragArea(time));
        (rate[0], rate[1], rate[2]) = (state[3], state[4], state[5]);
        (rate[3], rate[4], rate[5]) = (a.X, a.Y, a.Z);
    }

    public bool Load(int lane, Span<double> state, out LaneRun run) => batch.Load(queue, lane, state, out run);

    public double NextStop(int lane, double time) => double.PositiveInfinity;

    public double Event(int lane, int index, ReadOnlySpan<double> state)
    {
        EnsembleFlight flight = queue.Flying[lane];
        return new Watch(!flight.ApogeePassed, flight.ApogeePassed ? flight.NextReading : null).Value(equations.Model, index, state[2], state[5]);
    }

    public void Unload(int lane, ReadOnlySpan<double> state, in LaneEnd end) => batch.Unload(queue, lane, state, end);
}
