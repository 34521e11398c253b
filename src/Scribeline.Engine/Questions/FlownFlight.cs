using Scribeline.Engine.Air;
using Scribeline.Engine.Design;
using Scribeline.Engine.Evidence;

namespace Scribeline.Engine.Questions;

/// <summary>
/// A flight that was flown and recorded, with the design, motor and weather of its day. What it says is worked out once, when first asked for, and
/// does not depend on the design as it is now.
/// </summary>
public sealed class FlownFlight
{
    private readonly Lazy<RocketDesign?> design;
    private readonly Lazy<Studies?> asFlown;
    private readonly Lazy<Studies?> untaught;
    private readonly Lazy<(FlightReading? Reading, string Why)> reading;
    private readonly Lazy<PredictedBand?> band;
    private readonly Lazy<FlightLesson?> lesson;

    /// <param name="number">Its number in the logbook.</param>
    /// <param name="when">When it was flown, in the builder's words.</param>
    /// <param name="file">Name of the altimeter's file.</param>
    /// <param name="design">The design as it flew, its files read; null where it can no longer be read.</param>
    /// <param name="record">What the altimeter wrote down; null where it can no longer be read.</param>
    public FlownFlight(long number, string when, string file, Func<RocketDesign?> design, Func<FlightRecord?> record)
    {
        (Number, When, File, this.design) = (number, when, file, new(design));
        asFlown = new(() => this.design.Value is { } flown ? Studies.Of(flown) : null);
        untaught = new(() => this.design.Value is { } flown && FlownValues.AreIn(flown) ? Studies.Of(FlownValues.Without(flown)) : asFlown.Value);
        reading = new(() => record() is { } kept ? FlightReader.Read(kept, Air, AsFlown?.Rocket.PortLag ?? 0) : (null, "Its file can no longer be read."));
        band = new(() => Predicted is { } study ? PredictedBand.Of(asFlown.Value!, study) : null);
        lesson = new(() => Reading is { Apogee: not null } read && Untaught is { } study ? FlightLesson.Of(this, read, study) : null);
    }

    /// <summary>Its number in the logbook.</summary>
    public long Number { get; }

    /// <summary>When it was flown, in the builder's words.</summary>
    public string When { get; }

    /// <summary>Name of the altimeter's file.</summary>
    public string File { get; }

    /// <summary>In words: number and when.</summary>
    public string Name => When.Length > 0 ? $"flight {Number}, {When}" : $"flight {Number}";

    /// <summary>What the record says; null with <see cref="Why"/>.</summary>
    public FlightReading? Reading => reading.Value.Reading;

    /// <summary>Why the record says nothing; empty where it does.</summary>
    public string Why => reading.Value.Why;

    /// <summary>The rocket as it flew, in the weather of its day; null where its design can no longer be read.</summary>
    public Study? AsFlown => asFlown.Value is { Problems.Count: 0, Nominal: { } study } ? study : null;

    /// <summary>The same, where it can be flown.</summary>
    public Study? Predicted => AsFlown is { Missing.Count: 0, Flight.Apogee: not null } study ? study : null;

    /// <summary>The same as it was before any flight taught anything; null where it cannot be flown.</summary>
    public Study? Untaught => untaught.Value is { Problems.Count: 0, Nominal: { Missing.Count: 0, Flight.Apogee: not null } study } ? study : null;

    /// <summary>What was predicted with its spread; null where it cannot be flown.</summary>
    public PredictedBand? Band => band.Value;

    /// <summary>What it says of drag, thrust, canopies and ports; null where nothing.</summary>
    public FlightLesson? Lesson => lesson.Value;

    /// <summary>Standard uncertainty of the motor's impulse as a share: half of what is typed, or what NFPA 1125 allows from motor to motor, from memory.</summary>
    public double ImpulseSigma => design.Value?.Motor?.Value?.ImpulseTolerance is { } typed ? typed.Si / 2 : 0.067;

    /// <summary>Standard uncertainty of the lean of the rail, rad: half of what is typed, or half a degree.</summary>
    public double LeanSigma => design.Value?.Rail is { } rail && (rail.Tilt?.Sigma ?? rail.Elevation?.Sigma) is { } sigma and > 0 ? sigma : 0.0087;

    /// <summary>Standard uncertainty of a canopy's drag area as a share: half of what is typed on its coefficient, or a tenth.</summary>
    public double CanopySigma(string name) =>
        design.Value?.Stowed.FirstOrDefault(s => s.Canopy?.Name == name)?.Canopy?.DragCoefficient is { Sigma: > 0 } typed ? typed.Sigma / typed.Si : 0.1;

    // Without a day the standard atmosphere has to do, at the height the pad's pressure names.
    private DayAir Air => AsFlown is { Missing.Count: 0 } study ? study.Air : DayAir.Standard();
}
