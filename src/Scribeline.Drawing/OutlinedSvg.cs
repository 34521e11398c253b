using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using SkiaSharp;

namespace Scribeline.Drawing;

/// <summary>Turns what the SVG canvas writes into a file that looks the same everywhere: letters become outlines.</summary>
internal static partial class OutlinedSvg
{
    private static readonly XNamespace Space = "http://www.w3.org/2000/svg";

    /// <summary>The picture with outlines for letters, a size that scales, and a title and description to be read aloud.</summary>
    public static string From(string svg, string title, string description, int width, int height) =>
        Outlined(svg, title, description, string.Create(CultureInfo.InvariantCulture, $"0 0 {width} {height}"), HundredthsOnly());

    /// <summary>The same for a sheet drawn in millimetres, at its true size and to a thousandth of a millimetre.</summary>
    public static string InMillimetres(string svg, string title, string description, double width, double height)
    {
        var box = string.Create(CultureInfo.InvariantCulture, $"0 0 {width:0.###} {height:0.###}");
        var root = XDocument.Parse(Outlined(svg, title, description, box, ThousandthsOnly())).Root!;
        root.SetAttributeValue("width", string.Create(CultureInfo.InvariantCulture, $"{width:0.###}mm"));
        root.SetAttributeValue("height", string.Create(CultureInfo.InvariantCulture, $"{height:0.###}mm"));
        return root.ToString(SaveOptions.DisableFormatting) + "\n";
    }

    private static string Outlined(string svg, string title, string description, string box, Regex finer)
    {
        var root = XDocument.Parse(svg).Root!;
        foreach (var text in root.Descendants(Space + "text").ToList()) text.ReplaceWith(Outline(text));
        Renumber(root);
        foreach (var drawn in root.Descendants().Attributes().Where(a => a.Name == "d" || a.Name == "points"))
        {
            drawn.Value = finer.Replace(drawn.Value, "$1");
        }

        root.SetAttributeValue("viewBox", box);
        root.SetAttributeValue("role", "img");
        root.AddFirst(new XElement(Space + "title", title), new XElement(Space + "desc", description));
        return root.ToString(SaveOptions.DisableFormatting).Replace("><", ">\n<", StringComparison.Ordinal) + "\n";
    }

    // The canvas counts its names on from drawing to drawing.
    private static void Renumber(XElement root)
    {
        var names = root.Descendants().Attributes("id").Select((id, i) => (id.Value, New: string.Create(CultureInfo.InvariantCulture, $"n{i}")))
            .ToDictionary(n => n.Value, n => n.New);
        foreach (var attribute in root.Descendants().Attributes())
        {
            if (attribute.Name == "id") attribute.Value = names[attribute.Value];
            else if (attribute.Value.StartsWith("url(#", StringComparison.Ordinal)) attribute.Value = $"url(#{names[attribute.Value[5..^1]]})";
        }
    }

    private static XElement Outline(XElement text)
    {
        var bold = text.Attribute("font-weight")?.Value is { } weight && weight is not ("normal" or "400");
        using var font = PrintFont.Of(bold ? PrintFont.SemiBold : PrintFont.Regular, Numbers(text.Attribute("font-size"))[0]);
        var x = Numbers(text.Attribute("x"));
        var y = Numbers(text.Attribute("y"));
        var words = text.Value.Trim();
        using var path = font.GetTextPath(words, new SKPoint(x[0], y[0]));
        var outline = new XElement(Space + "path", new XAttribute("d", HundredthsOnly().Replace(path.ToSvgPathData(), "$1")));
        foreach (var name in new[] { "fill", "fill-opacity", "transform", "opacity" })
        {
            if (text.Attribute(name) is { } kept) outline.Add(new XAttribute(kept));
        }

        return outline;
    }

    // A two-hundredth of a pixel is finer than anybody sees; more would make the file several times as long.
    [GeneratedRegex(@"(\.\d\d)\d+")]
    private static partial Regex HundredthsOnly();

    [GeneratedRegex(@"(\.\d\d\d)\d+")]
    private static partial Regex ThousandthsOnly();

    private static float[] Numbers(XAttribute? attribute) =>
    [
        .. (attribute?.Value ?? "0").Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)
            .Select(n => float.Parse(n.Replace("px", "", StringComparison.Ordinal), CultureInfo.InvariantCulture)),
    ];
}
