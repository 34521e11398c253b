namespace Scribeline.App.Documents;

/// <summary>What the workbench works on.</summary>
/// <param name="Folder">The folder worked in.</param>
/// <param name="RecentFile">Where designs opened before are noted; null for nowhere.</param>
/// <param name="Examples">Folder of the examples; null where there are none.</param>
internal sealed record ShelfOptions(string Folder, string? RecentFile, string? Examples)
{
    /// <summary>Cases drawn from the tolerances, as many as the terminal draws.</summary>
    public int Cases { get; init; } = 100;

    /// <summary>How long typing rests before they are drawn.</summary>
    public TimeSpan Rest { get; init; } = TimeSpan.FromMilliseconds(700);

    /// <summary>How often files are looked at for changes by other programs.</summary>
    public TimeSpan LookEvery { get; init; } = TimeSpan.FromSeconds(1);
}
