using ScottPlot;
using SkiaSharp;

namespace Scribeline.Drawing;

/// <summary>IBM Plex Sans from the program itself, so that no sheet depends on the fonts of a machine. Its figures are tabular.</summary>
internal static class PrintFont
{
    /// <summary>Family name inside drawings.</summary>
    public const string Family = "IBM Plex Sans";

    /// <summary>For everything but headings.</summary>
    public static SKTypeface Regular { get; } = Load("IBMPlexSans-Regular.ttf");

    /// <summary>For headings.</summary>
    public static SKTypeface SemiBold { get; } = Load("IBMPlexSans-SemiBold.ttf");

    /// <summary>A font that sets letters where the design of the typeface wants them, whatever the size.</summary>
    public static SKFont Of(SKTypeface typeface, float size) =>
        new(typeface, size) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None, Edging = SKFontEdging.Antialias };

    /// <summary>Gives the plotting library our typeface in place of any the machine has.</summary>
    public static void Register()
    {
        lock (Resolver)
        {
            if (!Fonts.FontResolvers.Contains(Resolver)) Fonts.FontResolvers.Insert(0, Resolver);
        }
    }

    private static readonly EmbeddedFonts Resolver = new();

    private static SKTypeface Load(string file)
    {
        using var stream = typeof(PrintFont).Assembly.GetManifestResourceStream("Scribeline.Drawing.Fonts." + file)!;
        return SKTypeface.FromStream(stream);
    }

    private sealed class EmbeddedFonts : IFontResolver
    {
        public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) =>
            weight >= FontWeight.SemiBold ? SemiBold : Regular;

        public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) => bold ? SemiBold : Regular;
    }
}
