using Scribeline.Engine.Design;

namespace Scribeline.Engine.Questions;

/// <summary>Where the many flights of a study come from, and how many are wanted.</summary>
/// <param name="Design">As typed, as built.</param>
/// <param name="Seed">Of its cases.</param>
internal sealed record ManyFlights(RocketDesign Design, ulong Seed)
{
    /// <summary>How many; 0 for none.</summary>
    public int Count { get; init; }

    /// <summary>Told the share done; may be null.</summary>
    public Action<double>? Told { get; init; }

    /// <summary>Ends the work.</summary>
    public CancellationToken Cancel { get; init; }
}
