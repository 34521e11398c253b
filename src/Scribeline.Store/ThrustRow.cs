namespace Scribeline.Store;

/// <summary>One point of a thrust table as it stands in the text.</summary>
/// <param name="Time">As typed; seconds where no unit stands there.</param>
/// <param name="Thrust">As typed; newtons where no unit stands there.</param>
/// <param name="Line">Line in its file, from 1.</param>
public sealed record ThrustRow(string Time, string Thrust, int Line);
