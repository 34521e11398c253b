namespace Scribeline.Engine.Evidence;

/// <summary>Something that happened in a recorded flight.</summary>
/// <param name="Kind">What.</param>
/// <param name="Name">In plain words.</param>
/// <param name="Time">s, in the record's own time.</param>
/// <param name="Sigma">Standard uncertainty of the time, s.</param>
/// <param name="Height">m above the pad.</param>
/// <param name="Speed">Upwards, m/s.</param>
/// <param name="How">What it was told by.</param>
public sealed record FlightMoment(MomentKind Kind, string Name, double Time, double Sigma, double Height, double Speed, string How);

/// <summary>Kinds of moments, in their usual order.</summary>
public enum MomentKind
{
    LiftOff,
    Burnout,
    Apogee,

    /// <summary>A channel of the altimeter fired.</summary>
    Firing,

    /// <summary>The descent became slower without a recorded firing.</summary>
    Opening,
    Landing,
}
