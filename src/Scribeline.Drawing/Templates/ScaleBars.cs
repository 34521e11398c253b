using System.Globalization;
using Scribeline.Drawing.Sheets;
using SkiaSharp;

namespace Scribeline.Drawing.Templates;

/// <summary>Bars of known length on every sheet that is used at true size, across and up, in millimetres and inches.</summary>
internal static class ScaleBars
{
    /// <summary>Room for the bar across, above the strip at the foot, mm.</summary>
    public const double Room = 14;

    /// <summary>Length to check, mm.</summary>
    public const double Check = 100;

    /// <summary>Left end of the bar across, mm.</summary>
    public const double Left = 12;

    /// <summary>Draws both bars.</summary>
    public static void Draw(Pen pen, Paper paper)
    {
        var y = paper.Height - TitleStrip.Height - 7;
        pen.Line(Left, y, Left + 101.6, y, Stroke.Line);
        for (var mm = 0; mm <= Check; mm += 5) pen.Line(Left + mm, y, Left + mm, y - (mm % 50 == 0 ? 3.2 : mm % 10 == 0 ? 2.2 : 1.2), mm % 100 == 0 ? Stroke.Line : Stroke.Thin);
        for (var eighth = 0; eighth <= 32; eighth++)
            pen.Line(Left + (eighth * 3.175), y, Left + (eighth * 3.175), y + (eighth % 8 == 0 ? 2.6 : eighth % 4 == 0 ? 1.8 : 1), eighth % 32 == 0 ? Stroke.Line : Stroke.Thin);
        foreach (var mm in new[] { 0, 50, 100 }) pen.Words(Whole(mm), Left + mm, y - 4, Lettering.Small, null, SKTextAlign.Center);
        foreach (var inch in new[] { 0, 1, 2, 3, 4 }) pen.Words(Whole(inch), Left + (inch * 25.4), y + 5.2, Lettering.Small, null, SKTextAlign.Center);
        pen.Words("mm", Left + 104, y - 1.2, Lettering.Small);
        pen.Words("in", Left + 104, y + 3.4, Lettering.Small);
        double words = Left + 112, room = paper.Width - 10 - words;
        var lines = Lettering.Small.Wrap("Check with a rule: 100.0 mm between the long ticks of both bars. If not, print again at actual size, not fitted to the page.", room);
        for (var i = 0; i < lines.Count; i++) pen.Words(lines[i], words, y - 2.6 + (i * 3.3), Lettering.Small);
        Upright(pen, y - 12);
    }

    private static void Upright(Pen pen, double foot)
    {
        const double X = 6.5;
        pen.Line(X, foot, X, foot - Check, Stroke.Line);
        for (var mm = 0; mm <= Check; mm += 10) pen.Line(X, foot - mm, X + (mm % 50 == 0 ? 2.4 : 1.4), foot - mm, mm % 100 == 0 ? Stroke.Line : Stroke.Thin);
        pen.Turned(X - 0.8, foot - 45, -90, () => pen.Words("100 mm", X - 0.8, foot - 45, Lettering.Small));
    }

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);
}
