using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>
/// One flight from ignition to the ground: events, greatest values, landings, and the whole motion to be looked at anywhere.
/// A flight that could not be computed to its end says so in <see cref="Failure"/> and holds what was computed until then.
/// </summary>
public sealed class FlightResult
{
    private readonly FlightTrack[] tracks;

    private readonly Lazy<FlightMaxima> maxima;

    private readonly Lazy<ValueList<CanopyOpening>> openings;

    internal FlightResult(FlightTrack[] tracks, Func<ValueList<CanopyOpening>> openings)
    {
        this.tracks = tracks;
        this.openings = new(openings);
        maxima = new(() => MaximumSearch.Whole(tracks[0], RailExit));
    }

    /// <summary>What was flown; null where it was not made from inputs.</summary>
    public FlightInputs? Inputs { get; internal init; }

    /// <summary>Why it ends early, or none.</summary>
    public FlightFailure Failure { get; internal init; }

    /// <summary>In order of time.</summary>
    public required ValueList<FlightEvent> Events { get; init; }

    /// <summary>Bodies that flew; the first is the whole rocket.</summary>
    public required ValueList<FlightBody> Bodies { get; init; }

    /// <summary>Null where it never left the rail.</summary>
    public RailExit? RailExit { get; init; }

    /// <summary>Null where the flight ended before burnout.</summary>
    public FlightSample? Burnout { get; init; }

    /// <summary>Null where the flight ended before apogee.</summary>
    public FlightSample? Apogee { get; init; }

    /// <summary>Greatest values of the whole rocket's flight; found when first asked for.</summary>
    public FlightMaxima Maxima => maxima.Value;

    /// <summary>One per body that came to the ground, in order of body.</summary>
    public required ValueList<Landing> Landings { get; init; }

    /// <summary>One per canopy whose lines were stretched, in order of time; found when first asked for.</summary>
    public ValueList<CanopyOpening> Openings => openings.Value;

    /// <summary>Work done, for those who watch the speed of computing.</summary>
    public required FlightEffort Effort { get; init; }

    /// <summary>s after ignition at which the last body came to rest or the computation stopped.</summary>
    public double End => tracks.Max(t => t.End);

    /// <summary>Everything about a body at a time, held to the body's start and end.</summary>
    /// <param name="time">s after ignition.</param>
    /// <param name="body">Index into <see cref="Bodies"/>.</param>
    public FlightSample At(double time, int body = 0) => tracks[body].At(time);

    /// <summary>Samples of one body at equal steps from its start, its end added.</summary>
    /// <param name="step">s, more than 0.</param>
    /// <param name="body">Index into <see cref="Bodies"/>.</param>
    public ValueList<FlightSample> Series(double step, int body = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step);
        FlightTrack track = tracks[body];
        int count = (int)Math.Ceiling((track.End - track.Start) / step);
        var samples = new FlightSample[count + 1];
        for (int i = 0; i < count; i++) samples[i] = track.At(track.Start + i * step);
        samples[count] = track.At(track.End);
        return ValueList.Of<FlightSample>(samples);
    }
}

/// <summary>Work done for a flight.</summary>
/// <param name="Steps">Accepted steps.</param>
/// <param name="Rejected">Steps tried again smaller.</param>
/// <param name="Evaluations">Of the equations of motion.</param>
public readonly record struct FlightEffort(int Steps, int Rejected, int Evaluations);
