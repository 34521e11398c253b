namespace Scribeline.Engine.Design;

/// <summary>Something written in place, or the name of a file that holds it.</summary>
/// <typeparam name="T">What the file holds.</typeparam>
/// <param name="File">As typed, relative to the file it is typed in; null where written in place.</param>
/// <param name="Value">Written in place, or read from the file; null where the file has not been read.</param>
public sealed record FileOr<T>(string? File, T? Value)
    where T : class;
