namespace Scribeline.Engine.Numerics;

/// <summary>Where and why a run ended; the state there is in the span the caller gave.</summary>
/// <param name="Outcome">Why.</param>
/// <param name="Time">Time reached.</param>
/// <param name="Event">The terminal event, the earliest and then the lowest numbered; -1 if none.</param>
/// <param name="Events">
/// All terminal events that happened up to that time, one bit each (bit 0 is event 0). Give it to the next run, which
/// ignores them until they leave their guard.
/// </param>
/// <param name="Accepted">Steps accepted.</param>
/// <param name="Rejected">Steps rejected.</param>
/// <param name="Evaluations">Evaluations of the derivative.</param>
public readonly record struct IntegrationEnd(
    IntegrationOutcome Outcome, double Time, int Event, ulong Events, int Accepted, int Rejected, int Evaluations)
{
    /// <summary>True if the end time or an event was reached.</summary>
    public bool Succeeded => Outcome is IntegrationOutcome.Reached or IntegrationOutcome.Event;
}
