using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>A thing that flies as one: the whole rocket, or what hangs together after a separation.</summary>
/// <param name="Index">Its index in <see cref="FlightResult.Bodies"/>; 0 is the whole rocket until something lets go.</param>
/// <param name="Parent">Body it came from; null for the whole rocket.</param>
/// <param name="Pieces">Names of its pieces, nose to tail.</param>
/// <param name="Start">s after ignition.</param>
/// <param name="End">s after ignition: landing, or the separation that ends it.</param>
/// <param name="Mass">At its end, kg.</param>
public sealed record FlightBody(int Index, int? Parent, ValueList<string> Pieces, double Start, double End, double Mass);
