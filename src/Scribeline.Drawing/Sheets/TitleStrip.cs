using System.Globalization;
using SkiaSharp;

namespace Scribeline.Drawing.Sheets;

/// <summary>The strip at the foot of every sheet: design, what the sheet shows, fingerprint, version, page.</summary>
internal static class TitleStrip
{
    /// <summary>From the lower edge of the paper to the rule above the strip, mm.</summary>
    public const double Height = 15;

    private const double Side = 10;

    /// <summary>Draws it.</summary>
    /// <param name="pen">On the sheet.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="facts">Of the set.</param>
    /// <param name="page">From 1; null where the sheet stands alone.</param>
    /// <param name="pages">How many there are.</param>
    public static void Draw(Pen pen, Sheet sheet, SheetFacts facts, int? page, int pages)
    {
        double left = Side, right = sheet.Paper.Width - Side, rule = sheet.Paper.Height - Height, y = rule + 4.3;
        pen.Line(left, rule, right, rule, Stroke.Thin);
        var number = page is { } n ? string.Create(CultureInfo.InvariantCulture, $"page {n} of {pages}") : "";
        var origin = $"design {facts.Fingerprint} · scribeline {facts.Version}";
        var room = right - left - Math.Max(Lettering.Small.Width(number), Lettering.Small.Width(origin)) - 8;
        pen.Words(Lettering.SmallStrong.Cut(facts.Design, room), left, y, Lettering.SmallStrong);
        pen.Words(Lettering.Small.Cut(sheet.Title, room), left, y + 3.6, Lettering.Small, Ink.Light.Quiet);
        pen.Words(number, right, y, Lettering.Small, null, SKTextAlign.Right);
        pen.Words(origin, right, y + 3.6, Lettering.Small, Ink.Light.Quiet, SKTextAlign.Right);
    }
}
