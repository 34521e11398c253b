using Scribeline.Engine.Questions;

namespace Scribeline.Drawing;

/// <summary>Draws the maps of answers. The same map and style give the same bytes.</summary>
public static class MapDrawing
{
    /// <summary>A map as SVG that needs nothing outside itself.</summary>
    public static string Svg(GroundMap map, PlotStyle style) => Picture.Svg(style, map.Title, Description(map), new MapSheet(map, style).Draw);

    /// <summary>A map as PNG.</summary>
    /// <param name="map">What to draw.</param>
    /// <param name="style">How.</param>
    /// <param name="scale">Pixels of the picture per pixel of the style.</param>
    public static byte[] Png(GroundMap map, PlotStyle style, float scale = 2) => Picture.Png(style, scale, new MapSheet(map, style).Draw);

    /// <summary>What a map shows, in words.</summary>
    public static string Description(GroundMap map) =>
        $"Map, north up: {(map.Field.Count > 0 ? "the field, " : "")}{string.Concat(map.Kept.Select(k => k.Name + ", "))}the pad, landings {string.Join(", ", map.Clouds.Select(c => c.Name))}.";
}
