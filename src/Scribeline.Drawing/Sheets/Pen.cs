using SkiaSharp;

namespace Scribeline.Drawing.Sheets;

/// <summary>Draws in millimetres on any canvas.</summary>
/// <param name="canvas">Scaled so that one unit is a millimetre.</param>
internal sealed class Pen(SKCanvas canvas)
{
    /// <summary>The canvas, for what draws itself.</summary>
    public SKCanvas Canvas => canvas;

    /// <summary>A straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, Stroke stroke)
    {
        using var paint = stroke.Paint();
        canvas.DrawLine((float)x1, (float)y1, (float)x2, (float)y2, paint);
    }

    /// <summary>Straight lines from corner to corner.</summary>
    public void Path(IEnumerable<(double X, double Y)> corners, bool closed, Stroke? stroke, SKColor? fill = null)
    {
        using var path = new SKPathBuilder();
        var first = true;
        foreach (var (x, y) in corners)
        {
            if (first) path.MoveTo((float)x, (float)y);
            else path.LineTo((float)x, (float)y);
            first = false;
        }

        if (closed) path.Close();
        using var shape = path.Detach();
        if (fill is { } colour)
        {
            using var ground = new SKPaint { Color = colour, IsAntialias = true };
            canvas.DrawPath(shape, ground);
        }

        if (stroke is null) return;
        using var paint = stroke.Paint();
        canvas.DrawPath(shape, paint);
    }

    /// <summary>A circle.</summary>
    public void Circle(double x, double y, double radius, Stroke? stroke, SKColor? fill = null)
    {
        if (fill is { } colour)
        {
            using var ground = new SKPaint { Color = colour, IsAntialias = true };
            canvas.DrawCircle((float)x, (float)y, (float)radius, ground);
        }

        if (stroke is null) return;
        using var paint = stroke.Paint();
        canvas.DrawCircle((float)x, (float)y, (float)radius, paint);
    }

    /// <summary>A rectangle.</summary>
    public void Box(double x, double y, double width, double height, Stroke? stroke, SKColor? fill = null) =>
        Path([(x, y), (x + width, y), (x + width, y + height), (x, y + height)], true, stroke, fill);

    /// <summary>Words on one line.</summary>
    /// <param name="words">Words.</param>
    /// <param name="x">Left, middle or right, mm.</param>
    /// <param name="y">Of the base line, mm.</param>
    /// <param name="lettering">Size and weight.</param>
    /// <param name="colour">null for ink.</param>
    /// <param name="align">Which of left, middle and right.</param>
    public void Words(string words, double x, double y, Lettering lettering, SKColor? colour = null, SKTextAlign align = SKTextAlign.Left)
    {
        var known = Lettering.Known(words);
        if (known.Length == 0) return;

        // Set from the left always, so that what is measured is what is drawn.
        var left = x - (align switch { SKTextAlign.Center => lettering.Width(known) / 2, SKTextAlign.Right => lettering.Width(known), _ => 0 });
        using var paint = new SKPaint { Color = colour ?? Ink.Light.Line, IsAntialias = true };
        canvas.DrawText(known, (float)left, (float)y, SKTextAlign.Left, lettering.Font, paint);
    }

    /// <summary>Draws something turned about a point, degrees clockwise.</summary>
    public void Turned(double x, double y, double degrees, Action draw)
    {
        canvas.Save();
        canvas.RotateDegrees((float)degrees, (float)x, (float)y);
        draw();
        canvas.Restore();
    }

    /// <summary>Draws something moved, and cut off at a window.</summary>
    public void Within(double left, double top, double width, double height, double dx, double dy, Action draw)
    {
        canvas.Save();
        canvas.ClipRect(new SKRect((float)left, (float)top, (float)(left + width), (float)(top + height)));
        canvas.Translate((float)dx, (float)dy);
        draw();
        canvas.Restore();
    }
}
