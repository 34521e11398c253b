using System.Text;
using SkiaSharp;

namespace Scribeline.Drawing;

/// <summary>A drawing of an answer as a file, whatever is drawn.</summary>
internal static class Picture
{
    /// <summary>As SVG that needs nothing outside itself: letters are outlines, the title and a description are text for readers.</summary>
    public static string Svg(PlotStyle style, string title, string description, Action<SKCanvas> draw)
    {
        using var stream = new MemoryStream();
        using (var canvas = SKSvgCanvas.Create(new SKRect(0, 0, style.Width, style.Height), stream)) draw(canvas);
        return OutlinedSvg.From(Encoding.UTF8.GetString(stream.ToArray()), title, description, style.Width, style.Height);
    }

    /// <summary>As PNG.</summary>
    public static byte[] Png(PlotStyle style, float scale, Action<SKCanvas> draw)
    {
        using var surface = SKSurface.Create(new SKImageInfo((int)(style.Width * scale), (int)(style.Height * scale)));
        surface.Canvas.Scale(scale);
        draw(surface.Canvas);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
