using System.Text.RegularExpressions;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>
/// Clock angles typed as one rule: <c>thirds from 60 deg</c>, <c>halves</c>, <c>4 from 45 deg</c>, or a single angle. Angles run
/// clockwise looking forward from the tail, from the scribe line.
/// </summary>
/// <param name="Share">How many even steps go round; 0 for a single angle.</param>
/// <param name="From">First angle; null for the scribe line itself.</param>
public sealed partial record ClockPattern(int Share, Measure<Angle>? From) : IReadable<ClockPattern>
{
    private static readonly string[] Shares = ["halves", "thirds", "quarters", "fifths", "sixths", "sevenths", "eighths"];

    /// <inheritdoc/>
    public static ValueList<string> Examples => ["60 deg", "thirds from 60 deg", "quarters", "12 from 15 deg"];

    /// <inheritdoc/>
    public static Reading<ClockPattern> Read(string text, string at = "")
    {
        if (Even().Match(text.Trim()) is not { Success: true } even) return Measure.Read<Angle>(text, at: at).Select(angle => new ClockPattern(0, angle));
        var word = even.Groups[1].Value;
        var share = char.IsAsciiDigit(word[0]) ? int.Parse(word, System.Globalization.CultureInfo.InvariantCulture) : Array.IndexOf(Shares, word) + 2;
        if (share is < 2 or > 36)
            return new TextProblem(0, $"'{word}' is not a share of the circle.", $"Write {string.Join(", ", Shares)} or a number from 2 to 36, such as thirds from 60 deg.");
        if (!even.Groups[2].Success) return new ClockPattern(share, null);
        var from = Measure.Read<Angle>(even.Groups[2].Value, at: at);
        return from.Good
            ? new ClockPattern(share, from.Value)
            : new TextProblem(from.Problem.Position + text.IndexOf(even.Groups[2].Value, StringComparison.Ordinal), from.Problem.Message, from.Problem.Suggestion);
    }

    [GeneratedRegex(@"^([a-z]{4,}|\d{1,2}(?=\s+from))(?:\s+from\s+(.+))?$")]
    private static partial Regex Even();
}
