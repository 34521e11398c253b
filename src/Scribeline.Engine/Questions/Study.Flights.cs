using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <content>Flights that were flown.</content>
public sealed partial class Study
{
    private ValueList<Teaching>? teachings;

    /// <summary>Every recorded flight of the design, oldest first.</summary>
    public ValueList<FlownFlight> RecordedFlights { get; init; } = [];

    /// <summary>The one that is asked about; null where none is recorded.</summary>
    public FlownFlight? Recorded { get; init; }

    /// <summary>The same rocket without what flights taught; null where nothing was accepted.</summary>
    public Study? Untaught => UntaughtOrNull?.Value;

    /// <summary>What the flights teach of it.</summary>
    public ValueList<Teaching> Teachings => LazyInitializer.EnsureInitialized(ref teachings, () => Teaching.Of(this));

    internal Lazy<Study?>? UntaughtOrNull { private get; init; }
}
