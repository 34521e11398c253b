namespace Scribeline.Engine.Quantities;

/// <summary>A value that a builder types as one short text, such as a thread or a clock pattern.</summary>
/// <typeparam name="TSelf">The value itself.</typeparam>
public interface IReadable<TSelf>
    where TSelf : class
{
    /// <summary>Texts that can be read, to show and to check against.</summary>
    static abstract ValueList<string> Examples { get; }

    /// <summary>Reads the text.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="at">Path in the file, kept by the measures within.</param>
    static abstract Reading<TSelf> Read(string text, string at = "");
}
