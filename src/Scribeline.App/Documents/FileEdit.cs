namespace Scribeline.App.Documents;

/// <summary>A change of one of the texts a design is made of.</summary>
/// <param name="File">The file; empty for the design's own.</param>
/// <param name="Edit">What changes in it.</param>
internal sealed record FileEdit(string File, TextEdit Edit);
