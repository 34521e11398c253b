using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions.Desk;
using Scribeline.Engine.Resolving;

namespace Scribeline.Engine.Questions;

/// <summary>What a flight in which something fails is held against: the limits of the questions that a failure touches.</summary>
internal static class FailureLimits
{
    // The climb is another one only with another motor; the questions of it are asked again.
    private static readonly Question[] OfClimb = [new ThrustToWeight(), new RailExit(), new Stable(), new HowHigh(), new Flutter()];

    /// <summary>Every finding with a limit, each under a name of its own.</summary>
    /// <param name="study">Of the failed rocket.</param>
    /// <param name="pieces">On the ground.</param>
    /// <param name="failure">What fails.</param>
    /// <param name="least">Least ratios of strength to load on the way, with the limit each is held against.</param>
    public static IEnumerable<Finding> Of(Study study, ValueList<FailedPiece> pieces, Failure failure, IReadOnlyDictionary<(string Name, string Limit), double> least)
    {
        foreach (var landing in pieces.GroupBy(p => p.Landing.Body))
            yield return Finding.Of($"landing speed of {string.Join(" and ", landing.Select(p => p.Name))}", landing.First().Landing.DescentRate, Unit.Speed, study.Limits["descends.landing"]);
        if (study.Day.Field is { } field && pieces.Count > 0)
        {
            yield return Finding.Of("least room inside the field", pieces.Min(p => field.Boundary.Inside(new(p.Landing.East, p.Landing.North))), Unit.Height, new Limit(
                "if-it-fails.outline", 0, Sense.AtLeast, 0, Must: true, "outline of the site"));
        }
        else if (study.Day.ShortestSide is { } side && pieces.Count > 0)
        {
            yield return Finding.Of("farthest piece from the rail", pieces.Max(p => p.Away), Unit.Height, new Limit(
                "if-it-fails.field", side / 2, Sense.AtMost, 0, Must: true, "half the shortest side of the site, the rail taken in its middle"));
        }

        foreach (var piece in pieces) yield return Finding.Of($"landing energy of {piece.Name}", piece.Energy, Unit.Energy, study.Limits["lands-soft.energy"]);
        foreach (var ((name, limit), ratio) in least) yield return Finding.Of(name, ratio, Unit.Ratio, study.Limits[limit]);
        var asked = failure.ChangesMotor ? OfClimb : failure.Together.Count > 0 ? [new BurstsNothing()] : [];
        foreach (var finding in asked.SelectMany(q => q.Ask(study).Findings).Where(f => f.Limit is not null)) yield return finding;
    }
}
