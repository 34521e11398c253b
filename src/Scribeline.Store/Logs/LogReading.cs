using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Logs;

/// <summary>An altimeter's file as read.</summary>
/// <param name="Record">What it holds; null with problems.</param>
/// <param name="Columns">What each column was taken for.</param>
/// <param name="Problems">What must be mended or told first, with lines.</param>
/// <param name="Notes">What was left out, mended or guessed, in plain sentences.</param>
public sealed record LogReading(FlightRecord? Record, ValueList<LogColumn> Columns, ValueList<Problem> Problems, ValueList<string> Notes);
