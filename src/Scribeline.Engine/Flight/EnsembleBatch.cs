using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// Flies some of many flights on one thread. All that wait for the same equations fly side by side; a lane that is done takes the next,
/// phase after phase, until all are down.
/// </summary>
internal sealed class EnsembleBatch<T>
    where T : struct, IReal<T>
{
    private static readonly FlightPhase[] Order = [FlightPhase.OnRail, FlightPhase.Pivoting, FlightPhase.Boost, FlightPhase.Dive, FlightPhase.Descent];

    private readonly EnsembleInputs inputs;
    private readonly HeightTable heights;
    private readonly LaneParameters parameters, alone;
    private readonly LaneQueue[] queues;
    private readonly LaneIntegrator<T, Tsitouras54> whole, falling;
    private double[] tables = [], gusts = [];
    private GustTable turbulence;
    private FlightEquations<LaneModel> packed, single;

    public EnsembleBatch(EnsembleInputs inputs)
    {
        (this.inputs, heights) = (inputs, new(inputs.Top));
        var canopies = Math.Max(1, inputs.Nominal.Recovery.Actions.SelectMany(a => a.Canopies).Select(c => c.Name).Distinct().Count());
        (parameters, alone) = (new(T.Width, canopies), new(1, canopies));
        queues = [.. Order.Select(_ => new LaneQueue(T.Width))];
        var options = inputs.Nominal.Options;
        whole = new(options.RelativeTolerance, Scaled(FlightTolerance.Whole(inputs.Nominal.Motor.Curve.TotalImpulse)), options.MaximumSteps);
        falling = new(options.RelativeTolerance, Scaled(FlightTolerance.Point()), options.MaximumSteps);

        double[] Scaled(double[] scale) => [.. scale.Select(s => options.RelativeTolerance * s)];
    }

    /// <summary>Flies the cases from a number on, one for each end.</summary>
    public void Fly(int from, Func<int, EnsembleCase?> draw, Span<EnsembleEnd> ends, CancellationToken cancel)
    {
        var cases = new EnsembleCase?[ends.Length];
        for (var i = 0; i < cases.Length; i++)
        {
            cancel.ThrowIfCancellationRequested();
            cases[i] = draw(from + i);
        }

        Lay(cases);
        var flights = new EnsembleFlight?[cases.Length];
        for (var i = 0; i < cases.Length; i++) flights[i] = cases[i] is { } flown ? Begin(flown, i, inputs.From?.Invoke(from + i)) : null;
        while (Array.Exists(queues, q => q.Waiting.Count > 0))
        {
            for (var i = 0; i < Order.Length; i++) Run(Order[i], queues[i], cancel);
        }

        for (var i = 0; i < ends.Length; i++) ends[i] = flights[i]?.End ?? new(true, double.NaN, []);
    }

    /// <summary>Puts the next flight that waits into a lane.</summary>
    public bool Load(LaneQueue queue, int lane, Span<double> state, out LaneRun run)
    {
        run = default;
        if (!queue.Waiting.TryDequeue(out var flight)) return false;
        queue.Flying[lane] = flight;
        parameters.Set(lane, flight);
        run = flight.Enter(state);
        return true;
    }

    /// <summary>Takes a flight out of its lane.</summary>
    public void Unload(LaneQueue queue, int lane, ReadOnlySpan<double> state, in LaneEnd end)
    {
        var flight = queue.Flying[lane];
        flight.Constants.CopyTo(alone, 0);
        flight.Leave(state, end, single.Model);
        Wait(flight);
    }

    private void Wait(EnsembleFlight flight)
    {
        if (!flight.IsOver) queues[Array.IndexOf(Order, flight.Phase == FlightPhase.Coast ? FlightPhase.Boost : flight.Phase)].Waiting.Enqueue(flight);
    }

    private void Run(FlightPhase phase, LaneQueue queue, CancellationToken cancel)
    {
        if (queue.Waiting.Count == 0) return;
        if (phase is FlightPhase.Dive or FlightPhase.Descent)
        {
            FallingLanes<T> lanes = new(this, queue, packed, phase == FlightPhase.Dive);
            falling.Run(ref lanes, cancel);
        }
        else
        {
            WholeLanes<T> lanes = new(this, queue, packed, phase);
            whole.Run(ref lanes, cancel);
        }
    }

    /// <summary>Lays out the air of all flights for the lanes to read.</summary>
    private void Lay(EnsembleCase?[] cases)
    {
        var field = Array.Find(cases, c => c?.Wind.Turbulence is not null)?.Wind.Turbulence;
        turbulence = new((field?.Values.Count ?? 0) / GustTable.Quantities, field?.Spacing ?? 1);
        var (size, room) = (turbulence.Size, cases.Length + 1);
        if (tables.Length < room * HeightTable.Size) tables = new double[room * HeightTable.Size];
        if (gusts.Length < room * size) gusts = new double[room * size];
        for (var i = 0; i < cases.Length; i++)
        {
            if (cases[i] is not { } flown) continue;
            heights.Fill(tables.AsSpan(i * HeightTable.Size, HeightTable.Size), flown.Air, flown.Wind.Mean);
            var own = gusts.AsSpan(i * size, size);
            if (flown.Wind.Turbulence is { } gusting) turbulence.Fill(own, gusting);
            else own.Clear();
        }

        packed = new(new(inputs, parameters, heights, tables, turbulence, gusts));
        single = new(new(inputs, alone, heights, tables, turbulence, gusts));
    }

    private EnsembleFlight Begin(EnsembleCase flown, int number, EnsembleApex? apex)
    {
        var nominal = inputs.Nominal;
        var one = nominal with { Mass = flown.Mass, Rail = flown.Rail };
        var rail = new RocketModel(one, inputs.Aerodynamics).RailGeometry(flown.Rail, nominal.Shape.Length);
        LaneConstants constants = new(flown, nominal.Motor.Curve.TotalImpulse, rail, number * HeightTable.Size, number * turbulence.Size);
        EnsembleFlight flight = new(flown, nominal, rail, constants);
        constants.CopyTo(alone, 0);
        if (apex is null) flight.Ignite(single, RailAttitude.Of(flown.Rail.Elevation, flown.Rail.Azimuth, flown.Rail.ScribeHeading));
        else flight.Resume(apex, single.Model);
        Wait(flight);
        return flight;
    }
}
