using ScottPlot;
using SkiaSharp;

namespace Scribeline.Drawing;

/// <summary>How one of several lines is drawn: told apart by its dashes, not by colour alone.</summary>
internal readonly record struct LineStroke(SKColor Colour, float Width, float[] Dashes)
{
    /// <summary>The stroke of the line with this index.</summary>
    public static LineStroke Of(int index, Ink ink) => new(
        index % 2 == 0 ? ink.Accent : ink.Line,
        index == 0 ? 2f : 1.5f,
        (index / 2 % 4) switch { 0 => [], 1 => [8, 4], 2 => [2, 3], _ => [12, 3, 2, 3] });

    /// <summary>The dashes as the plotting library wants them.</summary>
    public LinePattern Pattern => Dashes.Length == 0 ? LinePattern.Solid : new LinePattern(Dashes, 0, "dashes");

    /// <summary>The same stroke for the canvas itself.</summary>
    public SKPaint Paint() => new()
    {
        Color = Colour,
        StrokeWidth = Width,
        IsStroke = true,
        IsAntialias = true,
        PathEffect = Dashes.Length == 0 ? null : SKPathEffect.CreateDash(Dashes, 0),
    };
}
