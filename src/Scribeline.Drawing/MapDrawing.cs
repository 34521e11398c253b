using Scribeline.Engine.Questions;
using SkiaSharp;

namespace Scribeline.Drawing;

/// <summary>Draws the maps of answers. The same map and style give the same bytes.</summary>
public static class MapDrawing
{
    /// <summary>A map as SVG that needs nothing outside itself.</summary>
    public static string Svg(GroundMap map, PlotStyle style)
    {
        using var stream = new MemoryStream();
        using (var canvas = SKSvgCanvas.Create(new SKRect(0, 0, style.Width, style.Height), stream))
        {
            new MapSheet(map, style).Draw(canvas);
        }

        return OutlinedSvg.From(System.Text.Encoding.UTF8.GetString(stream.ToArray()), map.Title, Description(map), style.Width, style.Height);
    }

    /// <summary>A map as PNG.</summary>
    /// <param name="map">What to draw.</param>
    /// <param name="style">How.</param>
    /// <param name="scale">Pixels of the picture per pixel of the style.</param>
    public static byte[] Png(GroundMap map, PlotStyle style, float scale = 2)
    {
        using var surface = SKSurface.Create(new SKImageInfo((int)(style.Width * scale), (int)(style.Height * scale)));
        surface.Canvas.Scale(scale);
        new MapSheet(map, style).Draw(surface.Canvas);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    /// <summary>What a map shows, in words.</summary>
    public static string Description(GroundMap map) =>
        $"Map, north up: {(map.Field.Count > 0 ? "the field, " : "")}{string.Concat(map.Kept.Select(k => k.Name + ", "))}the pad, landings {string.Join(", ", map.Clouds.Select(c => c.Name))}.";
}
