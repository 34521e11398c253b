namespace Scribeline.App.Documents;

/// <summary>A change of a text in one place.</summary>
/// <param name="At">Letters before it.</param>
/// <param name="Removed">What stood there.</param>
/// <param name="Added">What stands there now.</param>
internal sealed record TextEdit(int At, string Removed, string Added)
{
    /// <summary>Whether nothing changes.</summary>
    public bool IsNothing => Removed == Added;

    /// <summary>The change that takes this one back.</summary>
    public TextEdit Inverse() => new(At, Added, Removed);

    private int End => At + Removed.Length;

    private int Growth => Added.Length - Removed.Length;

    /// <summary>The smallest single change from one text to another.</summary>
    public static TextEdit Between(string before, string after)
    {
        var most = Math.Min(before.Length, after.Length);
        var start = before.AsSpan().CommonPrefixLength(after);
        var end = 0;
        while (end < most - start && before[^(end + 1)] == after[^(end + 1)]) end++;
        return new(start, before[start..^end], after[start..^end]);
    }

    /// <summary>The text after the change.</summary>
    public string In(string text) => string.Concat(text.AsSpan(0, At), Added, text.AsSpan(End));

    /// <summary>This change, meant for a text to which another change has happened since; null where both touch the same letters.</summary>
    public TextEdit? After(TextEdit other)
    {
        if (End < other.At || (End == other.At && !IsInsertionAt(other))) return this;
        return At >= other.End ? this with { At = At + other.Growth } : null;
    }

    // Two insertions at one place: the later one goes behind.
    private bool IsInsertionAt(TextEdit other) => Removed.Length == 0 && other.Removed.Length == 0 && At == other.At;
}
