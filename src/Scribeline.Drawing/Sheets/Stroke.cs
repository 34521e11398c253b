using SkiaSharp;

namespace Scribeline.Drawing.Sheets;

/// <summary>How a line is drawn.</summary>
/// <param name="Colour">Of the ink.</param>
/// <param name="Width">mm.</param>
/// <param name="Dashes">On and off, mm; null for an unbroken line.</param>
internal sealed record Stroke(SKColor Colour, double Width, float[]? Dashes = null)
{
    /// <summary>A pencil line.</summary>
    public static Stroke Line { get; } = new(Ink.Light.Line, 0.2);

    /// <summary>Where material ends.</summary>
    public static Stroke Bold { get; } = new(Ink.Light.Line, 0.35);

    /// <summary>Dimension lines and crosses.</summary>
    public static Stroke Thin { get; } = new(Ink.Light.Line, 0.12);

    /// <summary>Rules of tables and boxes.</summary>
    public static Stroke Faint { get; } = new(SKColor.Parse("#b9b5aa"), 0.12);

    /// <summary>What lies behind or inside.</summary>
    public static Stroke Hidden { get; } = new(Ink.Light.Quiet, 0.14, [1.6f, 0.9f]);

    /// <summary>Axes.</summary>
    public static Stroke Axis { get; } = new(Ink.Light.Quiet, 0.12, [4, 0.8f, 0.6f, 0.8f]);

    /// <summary>The scribe line and what matters most.</summary>
    public static Stroke Dye { get; } = new(Ink.Light.Accent, 0.35);

    /// <summary>The same, thin.</summary>
    public static Stroke DyeThin { get; } = new(Ink.Light.Accent, 0.2);

    /// <summary>The same, broken.</summary>
    public static Stroke DyeBroken { get; } = new(Ink.Light.Accent, 0.2, [2, 1]);

    /// <summary>For the canvas.</summary>
    public SKPaint Paint() => new()
    {
        Color = Colour,
        StrokeWidth = (float)Width,
        IsStroke = true,
        IsAntialias = true,
        StrokeJoin = SKStrokeJoin.Round,
        PathEffect = Dashes is null ? null : SKPathEffect.CreateDash(Dashes, 0),
    };
}
