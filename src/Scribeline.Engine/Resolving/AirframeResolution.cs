using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>What became of a design's parts.</summary>
/// <param name="Vehicle">The airframe; null where problems stand in the way.</param>
/// <param name="Problems">What is wrong, all of it.</param>
/// <param name="Open">What was left out and no default may stand in for: masses counted as 0 until they are typed.</param>
/// <param name="Assumed">Defaults that stand in for what was left out.</param>
public sealed record AirframeResolution(Vehicle? Vehicle, ValueList<Problem> Problems, ValueList<Problem> Open, ValueList<Problem> Assumed);
