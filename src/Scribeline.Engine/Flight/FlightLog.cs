using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>What happened so far in a flight being computed.</summary>
internal sealed class FlightLog
{
    private readonly List<(FlightEvent Event, int Order)> events = [];
    private readonly List<Landing> landings = [];

    /// <summary>First failure, or none.</summary>
    public FlightFailure Failure { get; private set; }

    public RailExit? RailExit { get; set; }

    public FlightSample? Burnout { get; set; }

    public FlightSample? Apogee { get; set; }

    /// <summary>By time; what happened at one time stays in the order it was added.</summary>
    public ValueList<FlightEvent> Events => events.OrderBy(e => e.Event.Time).ThenBy(e => e.Order).Select(e => e.Event).ToValueList();

    /// <summary>By body.</summary>
    public ValueList<Landing> Landings => landings.OrderBy(l => l.Body).ToValueList();

    /// <summary>The same log, to be gone on with apart from this one.</summary>
    public FlightLog Copy()
    {
        FlightLog copy = new() { Failure = Failure, RailExit = RailExit, Burnout = Burnout, Apogee = Apogee };
        copy.events.AddRange(events);
        copy.landings.AddRange(landings);
        return copy;
    }

    public void Add(FlightEventKind kind, string name, int body, FlightSample at) => events.Add((new(kind, name, body, at), events.Count));

    public void Add(Landing landing) => landings.Add(landing);

    public void Fail(FlightFailure failure)
    {
        if (Failure == FlightFailure.None) Failure = failure;
    }
}
