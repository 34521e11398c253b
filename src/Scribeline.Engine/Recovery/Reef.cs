namespace Scribeline.Engine.Recovery;

/// <summary>A line round the mouth that holds a canopy small until it is cut.</summary>
/// <param name="Share">Of the full drag area while it holds, above 0 and below 1.</param>
/// <param name="Until">s after line stretch at which it lets go.</param>
public readonly record struct Reef(double Share, double Until);
