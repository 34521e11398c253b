using System.Text.RegularExpressions;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Resolving;

namespace Scribeline.App.Web;

/// <summary>A flight to be watched: as planned, or with a failure and all that follows from it.</summary>
/// <param name="Planned">The study as planned.</param>
/// <param name="Study">The study whose flight it is.</param>
/// <param name="Outcome">How it ends; null for the flight as planned of which nothing was asked.</param>
internal sealed partial record WatchedFlight(Study Planned, Study Study, FailureOutcome? Outcome)
{
    /// <summary>Name of the flight as planned, among the failures.</summary>
    public static string AsPlanned => Failure.None.Name;

    /// <summary>Questions whose first plot goes along with a replay: height over the whole flight, speed on the way up.</summary>
    public static IReadOnlyList<string> AlongIt { get; } = ["sequence", "how-fast"];

    /// <summary>Plots that go along with the replay, by question.</summary>
    public IReadOnlyList<(string Question, Plot Plot)> Along => [.. AlongIt.Select(q => (q, PlotOf(q)!))];

    /// <summary>The plot of a question that goes along; null for another question.</summary>
    public Plot? PlotOf(string question) => question switch
    {
        "sequence" => FlightPlots.Heights(Study),
        "how-fast" => FlightPlots.Speeds(Study),
        _ => null,
    };

    /// <summary>In what it differs from the plan, in order of time.</summary>
    public IReadOnlyList<FlightDifference> Differences => Outcome is null ? [] : FlightDifference.Between(Planned.Flight.Events, Outcome);

    /// <summary>The flight; null where the rocket has no such failure.</summary>
    /// <param name="study">As planned; nothing missing.</param>
    /// <param name="failure">Name of the failure; null for the plan itself, whatever follows from it.</param>
    public static WatchedFlight? Of(Study study, string? failure)
    {
        if (failure is null) return new(study, study, null);
        if (study.Rocket.Failures.Prepend(Failure.None).FirstOrDefault(f => f.Name == failure) is not { } chosen) return null;
        var outcome = study.Fail(chosen);
        return new(study, study.Flown(outcome), outcome);
    }

    /// <summary>A name as part of a file's.</summary>
    public static string FileWord(string name) => NoWord().Replace(name.ToLowerInvariant(), "-").Trim('-');

    /// <summary>As a film.</summary>
    public FlightFilm Film(bool inch) => FlightFilm.Of(Study, inch, Differences);

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NoWord();
}
