using Scribeline.Drawing.Sheets;
using SkiaSharp;

namespace Scribeline.Drawing.Packets;

/// <summary>Something that stands on a page as a whole, beneath what came before it.</summary>
internal abstract class Block
{
    /// <summary>Room above it unless it stands first on a page, mm.</summary>
    public double Above { get; init; }

    /// <summary>Whether it may not stand last on a page.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Names it among the bookmarks; null for none.</summary>
    public Bookmark? Bookmark { get; init; }

    /// <summary>Repeated above it where it begins a page; null for nothing.</summary>
    public Block? Heads { get; init; }

    /// <summary>mm.</summary>
    public abstract double Height(double width);

    /// <summary>Draws it from its upper left corner.</summary>
    public abstract void Draw(Pen pen, double x, double y, double width);
}

/// <summary>Words over as many lines as they need.</summary>
/// <param name="words">Words.</param>
/// <param name="lettering">Size and weight.</param>
/// <param name="colour">null for ink.</param>
/// <param name="indent">mm.</param>
/// <param name="hanging">Stands before the first line; the others begin beneath what follows it.</param>
internal sealed class Words(string words, Lettering lettering, SKColor? colour = null, double indent = 0, string hanging = "") : Block
{
    private double Hang => hanging.Length == 0 ? 0 : lettering.Width(hanging) + 1;

    /// <inheritdoc/>
    public override double Height(double width) => lettering.Wrap(words, width - indent - Hang).Count * lettering.Leading;

    /// <inheritdoc/>
    public override void Draw(Pen pen, double x, double y, double width)
    {
        var lines = lettering.Wrap(words, width - indent - Hang);
        if (hanging.Length > 0) pen.Words(hanging, x + indent, y + lettering.Size, lettering, colour);
        for (var i = 0; i < lines.Count; i++) pen.Words(lines[i], x + indent + Hang, y + lettering.Size + (i * lettering.Leading), lettering, colour);
    }
}

/// <summary>A picture of a given height.</summary>
/// <param name="height">mm.</param>
/// <param name="draw">Draws it: pen, left, top, width.</param>
internal sealed class Picture(double height, Action<Pen, double, double, double> draw) : Block
{
    /// <inheritdoc/>
    public override double Height(double width) => height;

    /// <inheritdoc/>
    public override void Draw(Pen pen, double x, double y, double width) => draw(pen, x, y, width);
}

/// <summary>A thin line across.</summary>
internal sealed class Ruled : Block
{
    /// <inheritdoc/>
    public override double Height(double width) => 1.5;

    /// <inheritdoc/>
    public override void Draw(Pen pen, double x, double y, double width) => pen.Line(x, y + 0.7, x + width, y + 0.7, Stroke.Faint);
}
