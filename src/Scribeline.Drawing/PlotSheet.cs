using System.Globalization;
using ScottPlot;
using ScottPlot.TickGenerators;
using Scribeline.Engine.Questions;
using SkiaSharp;
using Axis = Scribeline.Engine.Questions.Axis;
using Plot = Scribeline.Engine.Questions.Plot;

namespace Scribeline.Drawing;

/// <summary>
/// One plot on one sheet. Axes, grid and lines are the plotting library's; the title, the key, the names of the moments and the limit
/// are placed here, so that nothing covers anything else.
/// </summary>
internal sealed class PlotSheet
{
    private const float Side = 22;
    private const float TitleBase = 34;
    private const float TitleHeight = 22;
    private const float TextSize = 13;
    private const float RowHeight = 17;
    private const float NameIndent = 36;

    private readonly Plot plot;
    private readonly PlotStyle style;
    private readonly Ink ink;
    private readonly PlotAxis across;
    private readonly PlotAxis up;
    private readonly SKFont text = PrintFont.Of(PrintFont.Regular, TextSize);
    private readonly SKFont heading = PrintFont.Of(PrintFont.SemiBold, 18);

    public PlotSheet(Plot plot, PlotStyle style, Ink? ink = null)
    {
        this.plot = plot;
        this.style = style;
        this.ink = ink ?? (style.Dark ? Ink.Dark : Ink.Light);
        across = PlotAxis.Across(plot, style.Inch);
        up = PlotAxis.Up(plot, style.Inch);
    }

    public void Draw(SKCanvas canvas)
    {
        if (across.IsEmpty || up.IsEmpty)
        {
            canvas.Clear(ink.Paper);
            DrawText(canvas, plot.Title, Side, 34, heading, ink.Line);
            DrawText(canvas, "nothing to draw: no value is known", Side, 64, text, ink.Quiet);
            return;
        }

        var (data, title, key, marks) = Lay();

        // The plotting library clears what it draws on, so it goes first.
        DrawLines(canvas, data);
        for (var i = 0; i < title.Count; i++) DrawText(canvas, title[i], Side, TitleBase + (i * TitleHeight), heading, ink.Line);
        DrawAxisNames(canvas, data);
        DrawKey(canvas, key);
        DrawMarks(canvas, data, marks);
        DrawBound(canvas, data);
    }

    /// <summary>Where values stand on the sheet; null where there is nothing to draw.</summary>
    public PlotFrame? Frame() => across.IsEmpty || up.IsEmpty ? null : Lay().Data is var data
        ? new(style.Width, style.Height, data.Left, data.Top, data.Right, data.Bottom, across, up)
        : null;

    private (SKRect Data, List<string> Title, List<SKPoint> Key, IReadOnlyList<MarkLabel> Marks) Lay()
    {
        var title = TitleLines();
        var below = TitleBase + ((title.Count - 1) * TitleHeight);
        var key = Key(below + 26);
        var data = new SKRect(86, 0, style.Width - Side, style.Height - 62);
        var marks = MarkLabels.Place(plot.Marks, across, data.Left, data.Right, text);
        var rows = marks.Count == 0 ? 0 : marks.Max(m => m.Row) + 1;
        data.Top = (key.Count == 0 ? below + 6 : key[^1].Y) + 14 + (rows * RowHeight);
        return (data, title, key, marks);
    }

    private List<string> TitleLines()
    {
        List<string> lines = [];
        foreach (var word in plot.Title.Split(' '))
        {
            if (lines.Count > 0 && Side + heading.MeasureText($"{lines[^1]} {word}") <= style.Width - Side) lines[^1] += $" {word}";
            else lines.Add(word);
        }

        return lines;
    }

    // The plotting library sets turned words letter by letter, unevenly; and its name of an axis may cover the numbers.
    private void DrawAxisNames(SKCanvas canvas, SKRect data)
    {
        string below = Named(plot.Across, across), beside = Named(plot.Up, up);
        DrawText(canvas, below, data.MidX - (text.MeasureText(below) / 2), data.Bottom + 42, text, ink.Line);
        canvas.Save();
        canvas.RotateDegrees(-90, 24, data.MidY);
        DrawText(canvas, beside, 24 - (text.MeasureText(beside) / 2), data.MidY + 4, text, ink.Line);
        canvas.Restore();

        static string Named(Axis axis, PlotAxis scale) => scale.Symbol.Length == 0 ? axis.Name : $"{axis.Name}, {scale.Symbol}";
    }

    // Where each line's sample and name stand. A key only where there is something to tell apart.
    private List<SKPoint> Key(float top)
    {
        List<SKPoint> places = [];
        if (plot.Series.Count < 2) return places;
        var (x, y) = (Side, top);
        foreach (var series in plot.Series)
        {
            var width = NameIndent + text.MeasureText(series.Name);
            if (x > Side && x + width > style.Width - Side)
            {
                x = Side;
                y += RowHeight + 2;
            }

            places.Add(new SKPoint(x, y));
            x += width + 24;
        }

        return places;
    }

    private void DrawKey(SKCanvas canvas, List<SKPoint> key)
    {
        for (var i = 0; i < key.Count; i++)
        {
            using var paint = LineStroke.Of(i, ink).Paint();
            canvas.DrawLine(key[i].X, key[i].Y - 4, key[i].X + 28, key[i].Y - 4, paint);
            DrawText(canvas, plot.Series[i].Name, key[i].X + NameIndent, key[i].Y, text, ink.Line);
        }
    }

    private void DrawLines(SKCanvas canvas, SKRect data)
    {
        PrintFont.Register();
        using var sheet = new ScottPlot.Plot();
        sheet.Font.Set(PrintFont.Family);
        sheet.FigureBackground.Color = Shade(ink.Paper);
        sheet.DataBackground.Color = Colors.Transparent;
        sheet.Axes.Color(Shade(ink.Quiet));
        sheet.Axes.FrameColor(Shade(ink.Quiet));
        sheet.Axes.Right.FrameLineStyle.IsVisible = false;
        sheet.Axes.Top.FrameLineStyle.IsVisible = false;
        sheet.Grid.MajorLineColor = Shade(ink.Faint);
        sheet.Grid.MajorLineWidth = 1;
        Dress(sheet.Axes.Bottom, 60);
        Dress(sheet.Axes.Left, 30);
        for (var i = 0; i < plot.Series.Count; i++)
        {
            var stroke = LineStroke.Of(i, ink);
            foreach (var (x, y) in Runs(plot.Series[i]))
            {
                var line = sheet.Add.ScatterLine(x, y, Shade(stroke.Colour));
                line.LineWidth = stroke.Width;
                line.LinePattern = stroke.Pattern;
            }
        }

        sheet.Axes.SetLimits(across.Low, across.High, up.Low, up.High);
        sheet.Layout.Fixed(new PixelRect(data.Left, data.Right, data.Bottom, data.Top));

        // The first rendering of a plot is done twice over, which would put every line into a vector file twice.
        sheet.RenderInMemory(style.Width, style.Height);
        sheet.Render(canvas, new PixelRect(0, style.Width, style.Height, 0));
    }

    private void Dress(ScottPlot.IAxis side, float spacing)
    {
        side.TickLabelStyle.FontSize = TextSize;
        side.TickLabelStyle.FontName = PrintFont.Family;
        side.TickLabelStyle.ForeColor = Shade(ink.Line);
        side.MajorTickStyle.Length = 4;
        side.MinorTickStyle.Length = 0;
        side.TickGenerator = new NumericAutomatic { MinimumTickSpacing = spacing, LabelFormatter = TickName };
    }

    private static string TickName(double value) =>
        Math.Round(value, 9).ToString("0.#########", CultureInfo.InvariantCulture).Replace('-', '\u2212');

    private void DrawMarks(SKCanvas canvas, SKRect data, IReadOnlyList<MarkLabel> marks)
    {
        using var paint = new SKPaint { Color = ink.Quiet, StrokeWidth = 0.75f, IsStroke = true, IsAntialias = true };
        foreach (var mark in marks) canvas.DrawLine(mark.At, Baseline(mark) - 10, mark.At, data.Bottom, paint);

        // A leader may pass behind a name that the edge pushed aside.
        foreach (var mark in marks) DrawOnGround(canvas, mark.Name, mark.Left, Baseline(mark), ink.Quiet);

        float Baseline(MarkLabel mark) => data.Top - 10 - (mark.Row * RowHeight);
    }

    private void DrawBound(SKCanvas canvas, SKRect data)
    {
        if (plot.Bound is not { } bound) return;
        var y = data.Bottom - (float)((up.Of(bound) - up.Low) / (up.High - up.Low) * (data.Bottom - data.Top));
        using var dashes = SKPathEffect.CreateDash([9, 4, 2, 4], 0);
        using var paint = new SKPaint { Color = ink.Line, StrokeWidth = 1.25f, IsStroke = true, IsAntialias = true, PathEffect = dashes };
        canvas.DrawLine(data.Left, y, data.Right, y, paint);
        var label = "limit " + Shown.Text(bound, plot.Up.Unit, style.Inch);
        var x = data.Right - text.MeasureText(label) - 4;
        var baseline = y - 6 < data.Top + TextSize ? y + TextSize + 3 : y - 6;
        DrawOnGround(canvas, label, x, baseline, ink.Line);
    }

    private void DrawOnGround(SKCanvas canvas, string words, float x, float y, SKColor colour)
    {
        using var ground = new SKPaint { Color = ink.Paper };
        canvas.DrawRect(x - 2, y - TextSize + 2, text.MeasureText(words) + 4, TextSize + 2, ground);
        DrawText(canvas, words, x, y, text, colour);
    }

    // Unbroken stretches of a line: a value that is not known leaves a gap.
    private IEnumerable<(double[] X, double[] Y)> Runs(Series series)
    {
        List<double> x = [], y = [];
        for (var i = 0; i <= Math.Min(series.X.Count, series.Y.Count); i++)
        {
            if (i < Math.Min(series.X.Count, series.Y.Count) && double.IsFinite(series.X[i]) && double.IsFinite(series.Y[i]))
            {
                x.Add(across.Of(series.X[i]));
                y.Add(up.Of(series.Y[i]));
            }
            else if (x.Count > 0)
            {
                yield return ([.. x], [.. y]);
                x.Clear();
                y.Clear();
            }
        }
    }

    private static void DrawText(SKCanvas canvas, string words, float x, float y, SKFont font, SKColor colour)
    {
        using var paint = new SKPaint { Color = colour, IsAntialias = true };
        canvas.DrawText(words, x, y, SKTextAlign.Left, font, paint);
    }

    private static Color Shade(SKColor colour) => new(colour.Red, colour.Green, colour.Blue);
}
