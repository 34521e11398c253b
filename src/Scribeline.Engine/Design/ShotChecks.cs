using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Contradictions of a shot.</summary>
public static class ShotChecks
{
    /// <summary>Largest charge that is recorded, kg: more is no recovery charge.</summary>
    public const double Most = 0.05;

    /// <summary>Fastest that pieces come apart, m/s: more is a slip of the unit.</summary>
    public const double Fastest = 150;

    /// <summary>Adds what is wrong with a shot.</summary>
    /// <param name="shot">As typed.</param>
    /// <param name="charges">Names of the design's charges.</param>
    /// <param name="whole">Whether these are all of them.</param>
    /// <param name="problems">Where to add.</param>
    public static void In(ShotDesign shot, ValueList<string> charges, bool whole, ICollection<Problem> problems)
    {
        if (whole && !charges.Contains(shot.Charge, StringComparer.OrdinalIgnoreCase))
            problems.Add(new($"{shot.At}.charge", $"There is no charge '{shot.Charge}'.", charges.Count == 0 ? "Type the charges of the design first." : Spelling.Suggest(shot.Charge, [.. charges])));
        if (shot.Powder.Si > Most) problems.Add(new($"{shot.At}.powder", $"{shot.Powder.Text} is more than any recovery charge.", "Check the unit: powder is weighed in grams."));
        if (shot.Speed is not null && shot.Filmed is not null) problems.Add(new($"{shot.At}.filmed", "'speed' and 'filmed' are both typed.", "Keep one of them."));
        var speed = shot.Speed?.Si ?? (shot.Filmed is { } film ? film.Distance.Si * film.Rate.Si / film.Frames : 0);
        if (speed > Fastest) problems.Add(new($"{shot.At}.{(shot.Speed is null ? "filmed" : "speed")}", $"{speed:F0} m/s is faster than pieces come apart.", "Check the units, and the frames per second."));
        if (shot.Happened == ShotWord.Stayed && speed > 0) problems.Add(new($"{shot.At}.happened", "A joint that did not part has no speed.", "Take out the speed, or write what happened."));
    }
}
