namespace Scribeline.App.Documents;

/// <summary>
/// One window's view of a design's text. A person types faster than answers come back: what a window sends builds on what it sent before,
/// and only an answer to its newest word may change what it shows.
/// </summary>
/// <param name="file">The file whose text it shows; empty for the design's own.</param>
public sealed class TextWindow(string file = "")
{
    private (string Text, int Version, int Number, int After)? last;
    private (int Version, int Number) pushed = (-1, -1);

    private string Key => $"text {file}";

    /// <summary>Takes over what a window sent.</summary>
    /// <param name="document">The design.</param>
    /// <param name="text">All of the window's text.</param>
    /// <param name="version">The version it was shown last.</param>
    /// <param name="number">Number of what it sent, from 1.</param>
    /// <returns>False where another window changed the same letters meanwhile: the text stays as it was.</returns>
    public bool Type(DesignDocument document, string text, int version, int number)
    {
        var mine = last is { } sent && sent.Version == version && number > 1 ? last : null;
        var taken = mine is null ? document.Type(text, version, Key, file) : mine.Value.After == document.Version && document.Type(text, document.Version, Key, file);
        last = taken ? (text, version, number, document.Version) : null;
        pushed = (-1, number);
        return taken;
    }

    /// <summary>What to show the window where something other than its keys has just changed the text: what it sends next builds on that.</summary>
    /// <param name="document">The design.</param>
    /// <returns>The text, its version, and the number of the newest word it answers.</returns>
    public (string Text, int Version, int Number) Put(DesignDocument document)
    {
        pushed = (document.Version, Math.Max(pushed.Number, 0));
        return (document.TextOf(file) ?? "", pushed.Version, pushed.Number);
    }

    /// <summary>What to show the window now; null where it shows it already.</summary>
    /// <param name="document">The design.</param>
    /// <returns>The text, null where the window has it; its version; the number of the newest word it answers.</returns>
    public (string? Text, int Version, int Number)? Push(DesignDocument document)
    {
        var (text, version, number) = (document.TextOf(file) ?? "", document.Version, Math.Max(pushed.Number, 0));
        if (pushed == (version, number)) return null;
        pushed = (version, number);
        return (last is { } sent && sent.Text == text ? null : text, version, number);
    }
}
