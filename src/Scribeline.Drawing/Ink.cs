using SkiaSharp;

namespace Scribeline.Drawing;

/// <summary>The colours of a sheet: pale paper, ink, and one accent, the deep blue of layout dye. A dark sheet for the night before.</summary>
internal sealed record Ink(SKColor Paper, SKColor Line, SKColor Faint, SKColor Quiet, SKColor Accent)
{
    /// <summary>Ink on pale paper.</summary>
    public static Ink Light { get; } = new(
        SKColor.Parse("#fbf9f3"), SKColor.Parse("#23262b"), SKColor.Parse("#e4e0d6"), SKColor.Parse("#5d6168"), SKColor.Parse("#1b3a8a"));

    /// <summary>Ink on paper that is white already.</summary>
    public static Ink Print { get; } = Light with { Paper = SKColors.White };

    /// <summary>Pale lines on dark paper.</summary>
    public static Ink Dark { get; } = new(
        SKColor.Parse("#15171c"), SKColor.Parse("#e6e3da"), SKColor.Parse("#2d3038"), SKColor.Parse("#a4a7ad"), SKColor.Parse("#8fabf5"));
}
