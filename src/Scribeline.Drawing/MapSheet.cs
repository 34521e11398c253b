using System.Globalization;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Range;
using SkiaSharp;

namespace Scribeline.Drawing;

/// <summary>
/// The ground about the pad on one sheet, north up and true to scale: outline, areas to keep clear of (people hatched closer), pad, wind,
/// landings and ellipses. Clouds are told apart by the shape of their points and a number, never by colour alone.
/// </summary>
internal sealed class MapSheet
{
    private const float Side = 22, TitleBase = 34, RowHeight = 17, Foot = 34, ArrowsWide = 112, ArrowsHigh = 56;
    private const int MostNumbered = 40, LabelPlaces = 55;

    private readonly GroundMap map;
    private readonly PlotStyle style;
    private readonly Ink ink;
    private readonly SKFont text = PrintFont.Of(PrintFont.Regular, 13);
    private readonly SKFont small = PrintFont.Of(PrintFont.Regular, 11);
    private readonly SKFont heading = PrintFont.Of(PrintFont.SemiBold, 18);
    private readonly List<string> key;
    private readonly float scale, left, foot, keyTop;
    private readonly LandingPoint least;

    public MapSheet(GroundMap map, PlotStyle style, Ink? ink = null)
    {
        (this.map, this.style, this.ink) = (map, style, ink ?? (style.Dark ? Ink.Dark : Ink.Light));
        key = Key();

        // On a narrow sheet a long key stands below the arrows, not across them.
        keyTop = TitleBase + 20 + (key.Select(k => text.MeasureText(k)).DefaultIfEmpty().Max() > style.Width - (2 * Side) - 16 - ArrowsWide ? ArrowsHigh : 0);
        var (from, to) = map.Extent;
        var margin = 0.04 * Math.Max(Math.Max(to.East - from.East, to.North - from.North), 50);
        least = new(from.East - margin, from.North - margin);
        double wide = to.East - from.East + (2 * margin), high = to.North - from.North + (2 * margin);
        float top = keyTop - 8 + (key.Count * RowHeight), roomWide = style.Width - (2 * Side), roomHigh = Math.Max(style.Height - top - Foot, 40);
        scale = (float)Math.Min(roomWide / wide, roomHigh / high);
        left = Side + ((roomWide - (float)(wide * scale)) / 2);
        foot = top + ((roomHigh + (float)(high * scale)) / 2);
    }

    public void Draw(SKCanvas canvas)
    {
        canvas.Clear(ink.Paper);
        DrawOn(canvas);
    }

    /// <summary>The same without a ground of its own.</summary>
    public void DrawOn(SKCanvas canvas)
    {
        Say(canvas, map.Title, Side, TitleBase, heading, ink.Line);
        for (var i = 0; i < key.Count; i++)
        {
            var y = keyTop + (i * RowHeight);
            if (i < map.Clouds.Count) Marker(canvas, Side + 5, y - 4, i, 3.4f);
            Say(canvas, key[i], Side + 16, y, text, i < map.Clouds.Count ? ink.Line : ink.Quiet);
        }

        foreach (var kept in map.Kept) Hatched(canvas, kept);
        if (map.Field.Count > 0) Ring(canvas, map.Field, ink.Line, 1.6f, null);
        for (var i = map.Clouds.Count - 1; i >= 0; i--) Cloud(canvas, map.Clouds[i], i);
        for (var i = 0; i < map.Clouds.Count; i++) Ellipses(canvas, map.Clouds[i], i);
        Pad(canvas);
        North(canvas);
        Scale(canvas);
    }

    private SKPoint At(LandingPoint p) => new(left + (float)((p.East - least.East) * scale), foot - (float)((p.North - least.North) * scale));

    private List<string> Key()
    {
        List<string> rows = [];
        var several = map.Clouds.Count > 1;
        for (var i = 0; i < map.Clouds.Count; i++)
        {
            var cloud = map.Clouds[i];
            rows.Add((several ? string.Create(CultureInfo.InvariantCulture, $"{i + 1}  ") : "") + cloud.Name + (i == 0 && cloud.Ellipses.Count > 0 ? ": landings; ellipses hold 50 % and 95 %" : ""));
        }

        // On a small sheet the ground matters more than a long key; the numbers stand in the table too.
        var most = Math.Max(3, (int)((style.Height * 0.45f) / RowHeight));
        return rows.Count <= most ? rows : [.. rows.Take(most - 1), $"and {rows.Count - most + 1} more, numbered as in the table"];
    }

    private void Cloud(SKCanvas canvas, LandingCloud cloud, int number)
    {
        var size = cloud.Points.Count > 300 ? 1.3f : cloud.Points.Count > 1 ? 1.8f : 4f;
        foreach (var point in cloud.Points)
        {
            var at = At(point);
            if (at.X >= 0 && at.X <= style.Width && at.Y >= 0 && at.Y <= style.Height) Marker(canvas, at.X, at.Y, number, size);
        }
    }

    private void Ellipses(SKCanvas canvas, LandingCloud cloud, int number)
    {
        foreach (var ellipse in cloud.Ellipses)
        {
            // Of many only the wide one, so that they can be told apart.
            if (map.Clouds.Count > 3 && ellipse.Content < 0.9) continue;
            Ring(canvas, ellipse.Outline(), ink.Line, ellipse.Content < 0.9 ? 1.4f : 1f, ellipse.Content < 0.9 ? null : [6, 3]);
        }

        if (map.Clouds.Count < 2 || number >= MostNumbered || cloud.Ellipses.Count == 0) return;

        // Each number at another place of its ellipse, by the golden section, so that of like ellipses all can be read.
        var around = cloud.Ellipses[^1].Outline(LabelPlaces);
        var end = At(around[(int)(number * 0.618 * LabelPlaces) % LabelPlaces]);
        Say(canvas, string.Create(CultureInfo.InvariantCulture, $"{number + 1}"), end.X + 2, end.Y - 2, small, number == 0 ? ink.Accent : ink.Line);
    }

    /// <summary>Dot, cross, square or ring, by number.</summary>
    private void Marker(SKCanvas canvas, float x, float y, int number, float size)
    {
        using var paint = new SKPaint { Color = number == 0 ? ink.Accent : ink.Quiet, IsAntialias = true, StrokeWidth = 0.9f };
        switch (number % 4)
        {
            case 0:
                canvas.DrawCircle(x, y, size, paint);
                break;
            case 1:
                canvas.DrawLine(x - size, y - size, x + size, y + size, paint);
                canvas.DrawLine(x - size, y + size, x + size, y - size, paint);
                break;
            case 2:
                canvas.DrawRect(x - size, y - size, 2 * size, 2 * size, paint);
                break;
            default:
                paint.Style = SKPaintStyle.Stroke;
                canvas.DrawCircle(x, y, size, paint);
                break;
        }
    }

    private void Hatched(SKCanvas canvas, KeptArea kept)
    {
        using var path = Path(kept.Area.Corners);
        canvas.Save();
        canvas.ClipPath(path, antialias: true);
        using var thin = new SKPaint { Color = ink.Quiet, IsAntialias = true, StrokeWidth = 0.7f };
        var (bounds, gap) = (path.Bounds, kept.People ? 4f : 8f);
        for (var x = bounds.Left - bounds.Height; x < bounds.Right; x += gap)
        {
            canvas.DrawLine(x, bounds.Bottom, x + bounds.Height, bounds.Top, thin);
            if (kept.People) canvas.DrawLine(x, bounds.Top, x + bounds.Height, bounds.Bottom, thin);
        }

        canvas.Restore();
        Ring(canvas, kept.Area.Corners, ink.Quiet, 1, null);
        Say(canvas, kept.Name, Math.Clamp(bounds.MidX - (text.MeasureText(kept.Name) / 2), Side, Math.Max(Side, style.Width - Side - text.MeasureText(kept.Name))), bounds.Top - 4, small, ink.Quiet);
    }

    private void Pad(SKCanvas canvas)
    {
        var at = At(new(0, 0));
        using var paint = new SKPaint { Color = ink.Line, IsAntialias = true, StrokeWidth = 1.6f, Style = SKPaintStyle.Stroke };
        canvas.DrawLine(at.X - 6, at.Y, at.X + 6, at.Y, paint);
        canvas.DrawLine(at.X, at.Y - 6, at.X, at.Y + 6, paint);
        Say(canvas, "pad", at.X + 7, at.Y + 12, small, ink.Line);
    }

    /// <summary>North, and the wind blowing past it.</summary>
    private void North(SKCanvas canvas)
    {
        float x = style.Width - Side - 14, y = TitleBase + 26;
        Arrow(canvas, x, y, 0, 18, ink.Line);
        Say(canvas, "N", x - 4, y - 22, small, ink.Line);
        if (map.Wind.Speed <= 0) return;
        x -= 62;
        Arrow(canvas, x, y, (float)(map.Wind.From + Math.PI), 18, ink.Accent);
        var words = $"wind {Shown.Text(map.Wind.Speed, Unit.Speed, style.Inch)}";
        Say(canvas, words, x - (small.MeasureText(words) / 2), y + 32, small, ink.Quiet);
    }

    private static void Arrow(SKCanvas canvas, float x, float y, float azimuth, float half, SKColor colour)
    {
        using var paint = new SKPaint { Color = colour, IsAntialias = true, StrokeWidth = 1.4f, Style = SKPaintStyle.Stroke };
        var (s, c) = MathF.SinCos(azimuth);
        SKPoint Turned(float along, float across) => new(x + (along * s) + (across * c), y - (along * c) + (across * s));
        canvas.DrawLine(Turned(-half, 0), Turned(half, 0), paint);
        canvas.DrawLine(Turned(half, 0), Turned(half - 7, -4), paint);
        canvas.DrawLine(Turned(half, 0), Turned(half - 7, 4), paint);
    }

    private void Scale(SKCanvas canvas)
    {
        var unit = style.Inch ? 0.3048 : 1;
        var room = (style.Width - (2 * Side)) * 0.3 / scale / unit;
        var power = Math.Pow(10, Math.Floor(Math.Log10(room)));
        var length = room / power >= 5 ? 5 * power : room / power >= 2 ? 2 * power : power;
        float wide = (float)(length * unit * scale), y = style.Height - 14;
        using var paint = new SKPaint { Color = ink.Line, IsAntialias = true, StrokeWidth = 1.4f, Style = SKPaintStyle.Stroke };
        canvas.DrawLine(Side, y, Side + wide, y, paint);
        foreach (var x in (ReadOnlySpan<float>)[Side, Side + (wide / 2), Side + wide]) canvas.DrawLine(x, y - 4, x, y + 4, paint);
        Say(canvas, string.Create(CultureInfo.InvariantCulture, $"{length:0} {(style.Inch ? "ft" : "m")}"), Side + wide + 6, y + 4, small, ink.Line);
    }

    private void Ring(SKCanvas canvas, IEnumerable<LandingPoint> corners, SKColor colour, float width, float[]? dash)
    {
        using var path = Path(corners);
        using var paint = new SKPaint { Color = colour, IsAntialias = true, StrokeWidth = width, Style = SKPaintStyle.Stroke };
        using var effect = dash is null ? null : SKPathEffect.CreateDash(dash, 0);
        paint.PathEffect = effect;
        canvas.DrawPath(path, paint);
    }

    private SKPath Path(IEnumerable<LandingPoint> corners)
    {
        using var path = new SKPathBuilder();
        var first = true;
        foreach (var corner in corners)
        {
            var at = At(corner);
            if (first) path.MoveTo(at);
            else path.LineTo(at);
            first = false;
        }

        path.Close();
        return path.Detach();
    }

    private static void Say(SKCanvas canvas, string words, float x, float y, SKFont font, SKColor colour)
    {
        using var paint = new SKPaint { Color = colour, IsAntialias = true };
        canvas.DrawText(words, x, y, SKTextAlign.Left, font, paint);
    }
}
