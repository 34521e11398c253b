namespace Scribeline.Store.Logbooks;

/// <summary>A file as it was once: on the day of a flight, or when a revision was saved.</summary>
/// <param name="Name">Relative to the design's folder.</param>
/// <param name="Text">Its text.</param>
public sealed record KeptFile(string Name, string Text);
