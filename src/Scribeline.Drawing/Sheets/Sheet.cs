namespace Scribeline.Drawing.Sheets;

/// <summary>One side of paper, drawn in millimetres from its upper left corner; every output draws the same.</summary>
/// <param name="Paper">Size as held when read.</param>
/// <param name="Title">What it shows, for the strip at its foot.</param>
/// <param name="Draw">Draws it.</param>
internal sealed record Sheet(Paper Paper, string Title, Action<Pen> Draw)
{
    /// <summary>Places to jump to: name, height on the sheet in mm, depth from 0.</summary>
    public IReadOnlyList<Bookmark> Bookmarks { get; init; } = [];
}

/// <summary>A place to jump to.</summary>
/// <param name="Name">As listed.</param>
/// <param name="Y">mm from the upper edge.</param>
/// <param name="Depth">0 for a chapter, 1 beneath it.</param>
internal sealed record Bookmark(string Name, double Y = 0, int Depth = 0);
