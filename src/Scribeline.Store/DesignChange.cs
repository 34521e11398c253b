namespace Scribeline.Store;

/// <summary>One thing that differs between two texts of a design.</summary>
/// <param name="What">Name and keys, such as <c>Main diameter</c>; of a whole thing its name alone.</param>
/// <param name="Before">As typed; null where it was not there, empty for a whole thing.</param>
/// <param name="After">As typed; null where it is not there any more, empty for a whole thing.</param>
public sealed record DesignChange(string What, string? Before, string? After)
{
    /// <summary>In a line, such as <c>Main diameter 66 in → 60 in</c>.</summary>
    public string Words => (Before, After) switch
    {
        (null, "") => $"{What} is new",
        ("", null) => $"{What} is gone",
        (null, _) => $"{What} {After}, was left out",
        (_, null) => $"{What} left out, was {Before}",
        _ => $"{What} {Before} → {After}",
    };
}
