namespace Scribeline.Engine.Range;

/// <summary>A point on the ground.</summary>
/// <param name="East">m from the foot of the rail.</param>
/// <param name="North">m from the foot of the rail.</param>
public readonly record struct LandingPoint(double East, double North);
