using Scribeline.Engine.Questions;

namespace Scribeline.Drawing;

/// <summary>Draws the plots of answers. The same plot and style give the same bytes.</summary>
public static class PlotDrawing
{
    /// <summary>A plot as SVG that needs nothing outside itself: letters are outlines, the title and a description are text for readers.</summary>
    public static string Svg(Plot plot, PlotStyle style) => Picture.Svg(style, plot.Title, Description(plot), new PlotSheet(plot, style).Draw);

    /// <summary>A plot as PNG.</summary>
    /// <param name="plot">What to draw.</param>
    /// <param name="style">How.</param>
    /// <param name="scale">Pixels of the picture per pixel of the style.</param>
    public static byte[] Png(Plot plot, PlotStyle style, float scale = 2) => Picture.Png(style, scale, new PlotSheet(plot, style).Draw);

    /// <summary>Where the values of a plot stand in its drawing; null where it has no value to draw.</summary>
    public static PlotFrame? Frame(Plot plot, PlotStyle style) => new PlotSheet(plot, style).Frame();

    private static string Description(Plot plot)
    {
        var lines = string.Join(", ", plot.Series.Select(s => s.Name));
        return $"{plot.Up.Name} over {plot.Across.Name}: {lines}.";
    }
}
