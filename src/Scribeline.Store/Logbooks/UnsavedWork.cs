namespace Scribeline.Store.Logbooks;

/// <summary>A design being edited, kept against a sudden end.</summary>
/// <param name="Text">The text as it stands on the screen.</param>
/// <param name="Basis">Hash of the file it began from: another hash on the disk means that the file was changed meanwhile.</param>
/// <param name="Changed">When it was last changed.</param>
public sealed record UnsavedWork(string Text, string Basis, DateTimeOffset Changed);
