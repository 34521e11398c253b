namespace Scribeline.Engine.Numerics;

/// <summary>What counts as an event and what it does.</summary>
/// <param name="Crossing">The way its value must pass zero.</param>
/// <param name="Terminal">True if the run ends there, so that the caller may change the state and go on.</param>
/// <param name="Guard">
/// After the event ended a run, the next run ignores it until the size of its value exceeds this (the value's unit).
/// </param>
public readonly record struct EventRule(Crossing Crossing, bool Terminal, double Guard = 0);
