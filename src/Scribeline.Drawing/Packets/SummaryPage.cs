using System.Globalization;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Questions;
using SkiaSharp;

namespace Scribeline.Drawing.Packets;

/// <summary>One page that shows a range safety officer in one minute what flies and how near it is to its limits.</summary>
/// <param name="packet">What it is made from.</param>
internal sealed class SummaryPage(PacketContents packet)
{
    private const double Side = 15;

    private readonly double width = packet.Paper.Width - (2 * Side);
    private readonly double bottom = packet.Paper.Height - TitleStrip.Height - 3;

    /// <summary>The page.</summary>
    public Sheet Sheet => new(packet.Paper, "Summary for the range safety officer", Draw) { Bookmarks = [new("Summary for the range safety officer")] };

    private void Draw(Pen pen)
    {
        var y = Head(pen, 12);
        y = Rocket(pen, y + 2);
        var signature = bottom - 13;
        var cautions = Lettering.Small.Wrap(Cautions.Everything, width);
        var foot = signature - (cautions.Count * Lettering.Small.Leading) - 2;
        var verdicts = Verdicts();
        var verdictTop = foot - (verdicts.Sum(b => b.Height(width) + b.Above)) - 2;
        y = Figures(pen, y + 3, verdictTop - 2);
        y = Math.Max(y + 2, Math.Min(verdictTop, y + 9));
        foreach (var block in verdicts)
        {
            block.Draw(pen, Side, y, width);
            y += block.Height(width) + block.Above;
        }

        for (var i = 0; i < cautions.Count; i++) pen.Words(cautions[i], Side, foot + Lettering.Small.Size + (i * Lettering.Small.Leading), Lettering.Small, Ink.Light.Quiet);
        Signature(pen, signature);
    }

    private double Head(Pen pen, double y)
    {
        var study = packet.Study;
        var count = AnswerText.Count(packet.Answers);
        var right = Lettering.Heading.Width(count);
        y += Lettering.Name.Size;

        // A long name gets smaller letters before it is cut.
        var letters = Enumerable.Range(0, 5).Select(i => Lettering.Name with { Size = 9 - i }).FirstOrDefault(l => l.Width(packet.Facts.Design) <= width - right - 6) ?? Lettering.Name with { Size = 5 };
        pen.Words(letters.Cut(packet.Facts.Design, width - right - 6), Side, y, letters);
        pen.Words(count, Side + width, y, Lettering.Heading, null, SKTextAlign.Right);
        y += 6.2;
        var motor = study.HasMotor ? $"motor {study.Motor.Name}{(study.Motor.Class is { } c ? $", class {c.Letter}" : "")}, {Shown.Text(study.Motor.Curve.TotalImpulse, Unit.Impulse, packet.Inch)}" : "no motor named";
        var first = $"{Shown.Text(study.Length, Unit.Length, packet.Inch)} long, {Shown.Text(study.Shape.ReferenceDiameter, Unit.Length, packet.Inch)} across; {motor}";
        pen.Words(Lettering.Body.Cut(first, width), Side, y, Lettering.Body);
        y += Lettering.Body.Leading;
        var cases = packet.Cases == 0 ? "as typed" : string.Create(CultureInfo.InvariantCulture, $"as typed and in {packet.Cases} cases of its tolerances (seed {packet.Seed})");
        pen.Words(Lettering.Small.Cut($"{packet.File}, answered {cases}", width), Side, y, Lettering.Small, Ink.Light.Quiet);
        return y + 1;
    }

    private double Rocket(Pen pen, double y)
    {
        var view = packet.Study.SideView;
        var drawing = new SideDrawing(view, packet.Inch);
        var scale = drawing.Fit(width - 8, 34);
        double high = 2 * view.Reach * scale, axis = y + 8 + Math.Max((high / 2) + 1, (view.BodyRadius * scale) + 6), left = Side + 4 + ((width - 8 - ((view.Rear - view.Front) * scale)) / 2);
        drawing.DrawNames(pen, left, y + 4, scale);
        drawing.Draw(pen, left, axis, scale, insides: true);
        drawing.DrawBalance(pen, left, axis, scale);
        var below = axis + Math.Max((high / 2) + 2, (view.BodyRadius * scale) + 9.5);
        return below + drawing.DrawStations(pen, left, below, scale);
    }

    private double Figures(Pen pen, double y, double limit)
    {
        GridColumn[] columns = [new("question"), new("figure nearest its limit", Share: 1), new("", true), new("limit"), new("9 cases in 10"), new("rests on")];
        List<GridRow> rows = [.. KeyFigures.Of(packet.Answers).Select(Row)];
        var blocks = Grid.Rows(columns, rows, width).ToList();
        foreach (var block in blocks)
        {
            if (y + block.Height(width) > limit) break;
            block.Draw(pen, Side, y, width);
            y += block.Height(width);
        }

        return y;
    }

    private GridRow Row((Answer Answer, Finding? Finding) key)
    {
        if (key.Finding is not { } f) return new([key.Answer.Question.Id, key.Answer.Question.Text, "open", "", "", ""], Verdict.Open, 2);
        return new(
            [key.Answer.Question.Id, f.Name, Shown.Text(f.Value, f.Unit, packet.Inch), f.Limit is { } l ? AnswerText.Limit(l, f.Unit, packet.Inch) : "", f.Spread is { } s ? AnswerText.Spread(s, f, packet.Inch) : "", key.Answer.Basis.ToString().ToLowerInvariant()],
            f.Limit is null && f.Verdict == Verdict.Clear ? null : f.Verdict,
            2);
    }

    // The gravest first, two abreast, down the left column and then the right.
    private List<Block> Verdicts()
    {
        List<Answer> ordered = [.. packet.Answers.OrderByDescending(a => a.Verdict)];
        var half = (ordered.Count + 1) / 2;
        return
        [
            new Picture((half * 3.75) + 1, (pen, x, y, wide) =>
            {
                for (var i = 0; i < ordered.Count; i++)
                {
                    double left = x + (i < half ? 0 : (wide / 2) + 2), at = y + Lettering.Small.Size + (i % half * 3.75);
                    VerdictSign.Draw(pen, ordered[i].Verdict, left + 0.3, at, 2.1);
                    pen.Words(AnswerText.Word(ordered[i].Verdict), left + 4, at, Lettering.SmallStrong);
                    pen.Words(Lettering.Small.Cut(ordered[i].Question.Text, (wide / 2) - 16), left + 13.5, at, Lettering.Small);
                }
            }),
        ];
    }

    private void Signature(Pen pen, double y)
    {
        string[] fields = ["motor flown", "flyer", "range safety officer", "date"];
        var each = width / fields.Length;
        for (var i = 0; i < fields.Length; i++)
        {
            pen.Line(Side + (i * each), y + 8, Side + ((i + 1) * each) - 4, y + 8, Stroke.Thin);
            pen.Words(fields[i], Side + (i * each), y + 11.4, Lettering.Small, Ink.Light.Quiet);
        }
    }
}
