using Scribeline.Engine.Questions;
using SkiaSharp;

namespace Scribeline.Drawing.Sheets;

/// <summary>A verdict as shape and word: a full circle is clear, a triangle watch, a square stop, a ring open. Told in ink alone.</summary>
internal static class VerdictSign
{
    /// <summary>Room for the shape, mm.</summary>
    public const double Room = 4.2;

    /// <summary>Draws the shape; its foot on the base line.</summary>
    public static void Draw(Pen pen, Verdict verdict, double x, double y, double size = 2.5)
    {
        var half = size / 2;
        double middle = x + half, centre = y - half + 0.15;
        switch (verdict)
        {
            case Verdict.Clear:
                pen.Circle(middle, centre, half * 0.86, null, Ink.Light.Accent);
                break;
            case Verdict.Watch:
                pen.Path([(middle, centre - half), (middle + half, centre + half), (middle - half, centre + half)], true, null, Ink.Light.Line);
                break;
            case Verdict.Stop:
                pen.Box(x, centre - half, size, size, null, SKColor.Parse("#8c1d18"));
                break;
            default:
                pen.Circle(middle, centre, half * 0.8, Stroke.Line, SKColors.White);
                break;
        }
    }
}
