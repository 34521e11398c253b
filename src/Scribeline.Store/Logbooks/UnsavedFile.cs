namespace Scribeline.Store.Logbooks;

/// <summary>A file that a design names, being edited with it, kept against a sudden end.</summary>
/// <param name="File">Its name relative to the design's folder.</param>
/// <param name="Work">What was typed.</param>
public sealed record UnsavedFile(string File, UnsavedWork Work);
