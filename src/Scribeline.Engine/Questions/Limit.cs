namespace Scribeline.Engine.Questions;

/// <summary>A bound on a finding, with where it comes from.</summary>
/// <param name="Id">Name in the limits table and in the design file, for example "rail-exit.speed".</param>
/// <param name="Value">The bound, SI.</param>
/// <param name="Sense">Which side is good.</param>
/// <param name="Guard">Width of the band on the good side that still asks for care, SI, 0 or more.</param>
/// <param name="Must">True when missing it can hurt someone, false when it costs a rocket or a day.</param>
/// <param name="Source">Publication, "common practice", or the design file.</param>
public sealed record Limit(string Id, double Value, Sense Sense, double Guard, bool Must, string Source)
{
    /// <summary>Least share of the sampled cases that must meet a bound that can hurt someone, 0 to 1.</summary>
    public double LeastShare { get; init; } = 0.95;

    /// <summary>Whether a value meets the bound; a NaN does not.</summary>
    public bool IsMetBy(double value) => Sense == Sense.AtLeast ? value >= Value : value <= Value;

    /// <summary>How far inside the bound a value lies, SI; negative outside.</summary>
    public double Room(double value) => Sense == Sense.AtLeast ? value - Value : Value - value;

    /// <summary>
    /// Stop when the value fails, or when it can hurt someone and holds in too small a share of the sampled cases; watch when it holds in
    /// less than 99 % or lies within the guard band; clear otherwise.
    /// </summary>
    /// <param name="value">Nominal value, SI.</param>
    /// <param name="probability">Share of sampled cases that meet the bound; null when nothing was sampled.</param>
    public Verdict Judge(double value, double? probability)
    {
        if (!IsMetBy(value) || (Must && probability < LeastShare)) return Verdict.Stop;
        return Room(value) < Guard || probability < 0.99 ? Verdict.Watch : Verdict.Clear;
    }
}

/// <summary>Which side of a limit is good.</summary>
public enum Sense
{
    /// <summary>The value must not be less.</summary>
    AtLeast,

    /// <summary>The value must not be more.</summary>
    AtMost,
}
