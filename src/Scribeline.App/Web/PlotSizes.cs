using Scribeline.Drawing;

namespace Scribeline.App.Web;

/// <summary>Sizes plots are drawn in, so that their letters are read as easily beside the rocket as on a phone.</summary>
internal static class PlotSizes
{
    /// <summary>How to draw for a page with this much room; whole size where none is named, for taking away.</summary>
    public static PlotStyle Style(string? room, bool dark, bool inch) => room switch
    {
        "wide" => new(dark, inch, 640, 400),
        "narrow" => new(dark, inch, 360, 340),
        _ => new(dark, inch),
    };

    /// <summary>The same for a map, which wants to be as high as wide.</summary>
    public static PlotStyle Map(string? room, bool dark, bool inch) => room switch
    {
        "wide" => new(dark, inch, 640, 640),
        "narrow" => new(dark, inch, 360, 440),
        _ => new(dark, inch, 900, 900),
    };
}
