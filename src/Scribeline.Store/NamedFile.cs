namespace Scribeline.Store;

/// <summary>A file that a design names, or that its motor file names.</summary>
/// <param name="Key">What it holds: <c>motor</c>, <c>motor.thrust</c>, <c>site</c>, <c>site.boundary</c> or <c>weather</c>.</param>
/// <param name="Name">As typed, relative to the file that names it.</param>
/// <param name="Path">The file; it need not be there.</param>
/// <param name="Text">What was read, from the file or as it is typed at the moment; null where it cannot be read.</param>
public sealed record NamedFile(string Key, string Name, string Path, string? Text);
