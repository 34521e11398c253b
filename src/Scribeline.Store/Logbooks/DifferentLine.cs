namespace Scribeline.Store.Logbooks;

/// <summary>A line of two texts laid beside each other.</summary>
/// <param name="Text">The line, without its end.</param>
/// <param name="Old">Its number in the old text, from 1; null if it was added.</param>
/// <param name="New">Its number in the new text, from 1; null if it was taken out.</param>
public sealed record DifferentLine(string Text, int? Old, int? New)
{
    /// <summary>Whether it stands in both.</summary>
    public bool Same => Old is not null && New is not null;
}
