using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>What a site says of its rules and of what lies round its pad. Distances are in m from the pad; what is not known is null.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Rules">Names of the rules in force.</param>
/// <param name="OwnConditions">Conditions in words, for a person to confirm.</param>
/// <param name="People">Nearest people who take part or look on.</param>
/// <param name="Outsiders">Nearest people and property that do not take part.</param>
/// <param name="Building">Nearest occupied building.</param>
/// <param name="Highway">Nearest public highway.</param>
/// <param name="Edge">Nearest edge of the site.</param>
/// <param name="Airport">Nearest airport boundary.</param>
/// <param name="Cleared">Diameter cleared round the pad.</param>
/// <param name="AtOnce">Most rockets that leave at once.</param>
public sealed record SiteOfDay(
    string Name, ValueList<string> Rules, ValueList<string> OwnConditions, double? People, double? Outsiders, double? Building, double? Highway, double? Edge,
    double? Airport, double? Cleared, int? AtOnce)
{
    /// <summary>A site that says nothing.</summary>
    public static SiteOfDay Unknown { get; } = new("", [], [], null, null, null, null, null, null, null, null);
}

/// <summary>The sky as seen; what is not typed is null.</summary>
/// <param name="Cover">Share covered by cloud or haze, 0 to 1.</param>
/// <param name="Base">Of the lowest cloud, m above the pad.</param>
/// <param name="Visibility">Level, m.</param>
public readonly record struct SkyOfDay(double? Cover, double? Base, double? Visibility);
