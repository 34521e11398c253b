namespace Scribeline.Engine.Flight;

/// <summary>The computed motion of one body, to be evaluated anywhere between its start and its end.</summary>
internal abstract class FlightTrack
{
    /// <summary>s after ignition.</summary>
    public abstract double Start { get; }

    /// <summary>s after ignition.</summary>
    public abstract double End { get; }

    /// <summary>Everything at a time, held to the track's start and end.</summary>
    public abstract FlightSample At(double time);

    /// <summary>Spans of the steps it was computed in, in order.</summary>
    public abstract IEnumerable<(double Start, double End)> Steps { get; }
}
