namespace Scribeline.Store.Logbooks;

/// <summary>A design as it was saved once.</summary>
/// <param name="Number">Of the entry in the logbook; later ones are greater.</param>
/// <param name="Saved">When.</param>
/// <param name="Hash">SHA-256 of its text in UTF-8, hexadecimal.</param>
/// <param name="Words">Why, in the builder's words; may be empty.</param>
public sealed record Revision(long Number, DateTimeOffset Saved, string Hash, string Words)
{
    /// <summary>Words of a revision that a saving was about to replace, whoever wrote it.</summary>
    public const string Replaced = "as it was before";
}
