namespace Scribeline.Store.Logbooks;

/// <summary>A value measured while building.</summary>
/// <param name="What">What was measured: the place in the design file, such as <c>parts[0].mass</c>, or other words that the build order asks by.</param>
/// <param name="Value">As typed, such as <c>412 g ± 1 g</c>; empty where it was taken back.</param>
/// <param name="Step">Step of the build at which it was measured; may be empty.</param>
/// <param name="At">When.</param>
public sealed record MeasuredValue(string What, string Value, string Step, DateTimeOffset At);
