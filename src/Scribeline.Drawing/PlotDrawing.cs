using Scribeline.Engine.Questions;
using SkiaSharp;

namespace Scribeline.Drawing;

/// <summary>Draws the plots of answers. The same plot and style give the same bytes.</summary>
public static class PlotDrawing
{
    /// <summary>A plot as SVG that needs nothing outside itself: letters are outlines, the title and a description are text for readers.</summary>
    public static string Svg(Plot plot, PlotStyle style)
    {
        using var stream = new MemoryStream();
        using (var canvas = SKSvgCanvas.Create(new SKRect(0, 0, style.Width, style.Height), stream))
        {
            new PlotSheet(plot, style).Draw(canvas);
        }

        return OutlinedSvg.From(System.Text.Encoding.UTF8.GetString(stream.ToArray()), plot.Title, Description(plot), style.Width, style.Height);
    }

    /// <summary>A plot as PNG.</summary>
    /// <param name="plot">What to draw.</param>
    /// <param name="style">How.</param>
    /// <param name="scale">Pixels of the picture per pixel of the style.</param>
    public static byte[] Png(Plot plot, PlotStyle style, float scale = 2)
    {
        using var surface = SKSurface.Create(new SKImageInfo((int)(style.Width * scale), (int)(style.Height * scale)));
        surface.Canvas.Scale(scale);
        new PlotSheet(plot, style).Draw(surface.Canvas);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    /// <summary>Where the values of a plot stand in its drawing; null where it has no value to draw.</summary>
    public static PlotFrame? Frame(Plot plot, PlotStyle style) => new PlotSheet(plot, style).Frame();

    private static string Description(Plot plot)
    {
        var lines = string.Join(", ", plot.Series.Select(s => s.Name));
        return $"{plot.Up.Name} over {plot.Across.Name}: {lines}.";
    }
}
