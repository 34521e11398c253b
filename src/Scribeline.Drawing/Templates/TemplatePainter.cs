using Scribeline.Drawing.Sheets;

namespace Scribeline.Drawing.Templates;

/// <summary>Draws a template with its upper left corner at the pen's origin.</summary>
internal static class TemplatePainter
{
    /// <summary>Draws it.</summary>
    public static void Draw(Pen pen, Template template)
    {
        foreach (var line in template.Lines.OrderByDescending(l => l.Role)) Draw(pen, line);
        foreach (var words in template.Words)
        {
            var letters = words.Strong ? Lettering.SmallStrong : Lettering.Small;
            if (words.Turn == 0) pen.Words(words.Words, words.X, words.Y, letters);
            else pen.Turned(words.X, words.Y, words.Turn, () => pen.Words(words.Words, words.X, words.Y, letters));
        }
    }

    private static void Draw(Pen pen, TemplateLine line)
    {
        var stroke = Of(line.Role);
        switch (line)
        {
            case RoundLine r:
                pen.Circle(r.X, r.Y, r.Radius, stroke);
                break;
            case CornerLine c:
                pen.Path(c.Corners, c.Closed, stroke);
                break;
            default:
                break;
        }
    }

    private static Stroke Of(LineRole role) => role switch
    {
        LineRole.Cut => Stroke.Bold,
        LineRole.Hole => Stroke.Line,
        LineRole.Cross => Stroke.Thin,
        LineRole.Scribe => Stroke.Dye,
        LineRole.Rail => Stroke.DyeBroken,
        LineRole.Fin => Stroke.DyeThin,
        LineRole.Edge => Stroke.Hidden,
        LineRole.Aft => Stroke.Hidden,
        LineRole.Division => Stroke.Axis,
        LineRole.Tab => Stroke.Faint,
        _ => Stroke.Thin,
    };
}
