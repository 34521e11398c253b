namespace Scribeline.Engine.Motors;

/// <summary>One point of a thrust table; thrust is linear between points.</summary>
/// <param name="Time">s after first thrust.</param>
/// <param name="Thrust">N, 0 or more.</param>
public readonly record struct ThrustPoint(double Time, double Thrust);
