namespace Scribeline.Engine.Flight;

/// <summary>Something that happened at a moment.</summary>
/// <param name="Kind">What.</param>
/// <param name="Name">In words, with the name of the action, canopy or piece.</param>
/// <param name="Body">Index of the body it happened to, see <see cref="FlightResult.Bodies"/>; 0 is the whole rocket.</param>
/// <param name="At">The state, just before whatever the event changes.</param>
public sealed record FlightEvent(FlightEventKind Kind, string Name, int Body, FlightSample At)
{
    /// <summary>s after ignition.</summary>
    public double Time => At.Time;
}

/// <summary>Kinds of events, in their usual order.</summary>
public enum FlightEventKind
{
    Ignition,
    LiftOff,
    ForwardGuideExit,
    AftGuideExit,
    Burnout,
    Apogee,

    /// <summary>A charge of the plan fires.</summary>
    Charge,

    /// <summary>A canopy's lines are stretched; it begins to fill.</summary>
    LineStretch,

    /// <summary>A canopy has reached its steady drag area.</summary>
    FullyOpen,
    Landing,
}
