using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;

namespace Scribeline.Engine.Questions;

/// <summary>How a flight ends in which something fails.</summary>
/// <param name="Failure">What fails.</param>
/// <param name="Pieces">What reaches the ground, nose to tail.</param>
/// <param name="Events">What happens on the way that a person would ask about, in order of time.</param>
/// <param name="Judged">Everything held against a limit.</param>
/// <param name="Unburnt">Charges that have not burnt when the last piece lies on the ground.</param>
/// <param name="Missing">What to type so that all that may follow can be told.</param>
/// <param name="Computed">Whether the flight could be computed to its end.</param>
public sealed record FailureOutcome(
    Failure Failure, ValueList<FailedPiece> Pieces, ValueList<FailureEvent> Events, ValueList<Finding> Judged, ValueList<string> Unburnt, ValueList<string> Missing, bool Computed)
{
    /// <summary>What followed from the failure and was put into the rocket, in order of time; among the events too.</summary>
    public ValueList<FailureEvent> Followed { get; init; } = [];

    /// <summary>Everything that happened in the flight, in order of time.</summary>
    public ValueList<FlightEvent> Flown { get; init; } = [];

    /// <summary>The rocket with all that failed and followed: an ordinary one, whose flight this is.</summary>
    public required Rocket Rocket { get; init; }

    /// <summary>Whether it was flown nose first where nothing opened at apogee, see <see cref="FlightOptions.NoseFirst"/>.</summary>
    public bool NoseFirst { get; init; }

    /// <summary>The limits that are not met.</summary>
    public IEnumerable<Finding> Broken => Judged.Where(f => f.Verdict == Verdict.Stop);

    /// <summary>Whether it comes to the ground with every limit met.</summary>
    public bool WithinLimits => Computed && !Broken.Any();

    /// <summary>Whether it breaks a limit that another flight keeps, or breaks one worse by a twentieth of the limit.</summary>
    /// <param name="planned">The other flight.</param>
    public bool IsWorseThan(FailureOutcome planned) => !Computed || Broken.Any(f =>
        f.Limit!.Room(f.Value) < planned.Broken.Where(p => p.Limit!.Id == f.Limit.Id).Select(p => p.Limit!.Room(p.Value)).DefaultIfEmpty(0).Min() - (0.05 * Math.Abs(f.Limit.Value))
        || planned.Broken.All(p => p.Limit!.Id != f.Limit.Id));

    /// <summary>Gravest among the limits.</summary>
    public Verdict Verdict => !Computed ? Verdict.Open : Judged.Select(f => f.Verdict).DefaultIfEmpty(Verdict.Clear).Max();

    /// <summary>The piece that comes down with the most energy; null where none does.</summary>
    public FailedPiece? Hardest => Pieces.Count == 0 ? null : Pieces.MaxBy(p => p.Energy);
}

/// <summary>A piece on the ground.</summary>
/// <param name="Name">Of the piece.</param>
/// <param name="Mass">kg.</param>
/// <param name="Landing">Of the body it belongs to: pieces on one cord come down together.</param>
public sealed record FailedPiece(string Name, double Mass, Landing Landing)
{
    /// <summary>At its descent rate, J.</summary>
    public double Energy => 0.5 * Mass * Landing.DescentRate * Landing.DescentRate;

    /// <summary>At its speed over the ground, drift included, J.</summary>
    public double EnergyWithDrift => 0.5 * Mass * Landing.Speed * Landing.Speed;

    /// <summary>From the foot of the rail, m.</summary>
    public double Away => Math.Sqrt((Landing.East * Landing.East) + (Landing.North * Landing.North));

    /// <summary>From the foot of the rail, rad clockwise from north, 0 to 2π.</summary>
    public double Bearing => (Math.Atan2(Landing.East, Landing.North) + (2 * Math.PI)) % (2 * Math.PI);
}

/// <summary>Something on the way down.</summary>
/// <param name="Time">s after ignition.</param>
/// <param name="Height">Above the pad, m.</param>
/// <param name="Airspeed">m/s.</param>
/// <param name="What">In words.</param>
/// <param name="Force">That goes with it, N; null for none.</param>
public sealed record FailureEvent(double Time, double Height, double Airspeed, string What, double? Force = null);
