using System.Text.RegularExpressions;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>How much powder: a mass, <c>auto</c>, or a share of another charge such as <c>130 % of Drogue A</c>.</summary>
/// <param name="Mass">The mass; null otherwise.</param>
/// <param name="Share">Share of the other charge; null otherwise.</param>
/// <param name="Of">Name of the other charge; null otherwise.</param>
public sealed partial record ChargeMass(Measure<Mass>? Mass, Measure<Ratio>? Share, string? Of) : IReadable<ChargeMass>
{
    /// <inheritdoc/>
    public static ValueList<string> Examples => ["auto", "1.2 g", "130 % of Drogue A"];

    /// <summary>Whether the program chooses.</summary>
    public bool Auto => Mass is null && Share is null;

    /// <inheritdoc/>
    public static Reading<ChargeMass> Read(string text, string at = "")
    {
        var plain = text.Trim();
        if (plain == "auto") return new ChargeMass(null, null, null);
        if (Sharing().Match(plain) is { Success: true } sharing)
        {
            var share = Measure.Read<Ratio>(sharing.Groups[1].Value, at: at);
            return share is { Good: true, Value.Si: <= 0 }
                ? new TextProblem(0, "A share of a charge is more than nothing.", "Write it as 130 % of the other charge.")
                : share.Select(s => new ChargeMass(null, s, sharing.Groups[2].Value.Trim()));
        }

        var mass = Measure.Read<Mass>(plain, at: at);
        return mass.Good
            ? mass.Value.Si > 0 ? new ChargeMass(mass.Value, null, null) : new TextProblem(0, "A charge weighs more than nothing.", "Write auto if it is not chosen yet.")
            : new TextProblem(mass.Problem.Position, mass.Problem.Message, $"{mass.Problem.Suggestion} Or write auto, or 130 % of another charge.".Trim());
    }

    [GeneratedRegex(@"^(\S+(?:\s*%)?)\s+of\s+(.+)$")]
    private static partial Regex Sharing();
}
