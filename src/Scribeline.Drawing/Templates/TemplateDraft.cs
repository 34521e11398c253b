using System.Globalization;
using System.Text;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Quantities;

namespace Scribeline.Drawing.Templates;

/// <summary>Collects the lines of a template, and finds places for its words where they cover nothing.</summary>
internal sealed class TemplateDraft
{
    private readonly List<TemplateLine> lines = [];
    private readonly List<TemplateWords> words = [];
    private readonly List<string> facts = [];
    private readonly List<(double Left, double Top, double Right, double Bottom)> taken = [];

    /// <summary>Straight from corner to corner.</summary>
    public void Line(LineRole role, bool closed, params (double X, double Y)[] corners) => lines.Add(new CornerLine(role, ValueList.Of<(double, double)>(corners), closed));

    /// <summary>A circle.</summary>
    public void Circle(LineRole role, double x, double y, double radius) => lines.Add(new RoundLine(role, x, y, radius));

    /// <summary>A hole to drill: circle, cross, and a countersink where there is one.</summary>
    public void Drilled(double x, double y, double diameter, double countersink = 0)
    {
        var arm = (Math.Max(diameter, countersink) / 2) + 2.2;
        Line(LineRole.Cross, false, (x - arm, y), (x + arm, y));
        Line(LineRole.Cross, false, (x, y - arm), (x, y + arm));
        Circle(LineRole.Hole, x, y, diameter / 2);
        if (countersink > diameter) Circle(LineRole.Edge, x, y, countersink / 2);
        Take(x - arm, y - arm, x + arm, y + arm);
    }

    /// <summary>Keeps a place free of words.</summary>
    public void Take(double left, double top, double right, double bottom) => taken.Add((left, top, right, bottom));

    /// <summary>Words at a place.</summary>
    public void Words(string text, double x, double y, bool strong = false, double turn = 0) => words.Add(new(text, x, y, strong, turn));

    /// <summary>A sentence to go with it.</summary>
    public void Fact(string sentence) => facts.Add(sentence);

    /// <summary>Lines of words beside a point, at the first of a ring of places where they cover nothing and stay inside.</summary>
    /// <param name="text">Line by line.</param>
    /// <param name="x">mm.</param>
    /// <param name="y">mm.</param>
    /// <param name="away">Distance to keep from the point, mm.</param>
    /// <param name="width">Of the template, mm.</param>
    /// <param name="height">Of the template, mm.</param>
    public void Beside(IReadOnlyList<string> text, double x, double y, double away, double width, double height)
    {
        var letters = Lettering.Small;
        double wide = text.Max(letters.Width), tall = letters.Leading * text.Count;
        (double X, double Y)[] places =
        [
            (x + away, y - away - tall + 1), (x + away, y + away - 1), (x - away - wide, y - away - tall + 1), (x - away - wide, y + away - 1),
            (x + away + 2, y - (tall / 2)), (x - away - wide - 2, y - (tall / 2)), (x - (wide / 2), y + away + 0.5), (x - (wide / 2), y - away - tall - 0.5),
            (x + away + 5, y + away + 4), (x - away - wide - 5, y + away + 4), (x + away + 5, y - away - tall - 4), (x - away - wide - 5, y - away - tall - 4),
        ];
        var free = places.Cast<(double X, double Y)?>().FirstOrDefault(p => IsFree(p!.Value.X, p.Value.Y, wide, tall, width, height));
        if (free is not { } place) return;
        for (var i = 0; i < text.Count; i++) Words(text[i], place.X, place.Y + (letters.Leading * i) + letters.Size, i == 0);
        Take(place.X, place.Y, place.X + wide, place.Y + tall);
    }

    /// <summary>Words in the first free place on a row of places; nothing where all are taken.</summary>
    public bool InRow(string text, double y, double from, double to, double width, double height, bool strong = false)
    {
        var letters = strong ? Lettering.SmallStrong : Lettering.Small;
        double wide = letters.Width(text), tall = letters.Size * 1.1;
        for (var x = from; x + wide <= to; x += 4)
        {
            if (!IsFree(x, y - letters.Size, wide, tall, width, height)) continue;
            Words(text, x, y, strong);
            Take(x - 1.5, y - letters.Size, x + wide + 1.5, y + 0.5);
            return true;
        }

        return false;
    }

    /// <summary>Words turned to read upwards beside a line along the template, as near its foot as is free; nothing where all is taken.</summary>
    /// <param name="text">Words.</param>
    /// <param name="x">Base line, mm.</param>
    /// <param name="height">Of the template, mm.</param>
    /// <param name="strong">Whether they stand out.</param>
    public void Upward(string text, double x, double height, bool strong = false)
    {
        var letters = strong ? Lettering.SmallStrong : Lettering.Small;
        double wide = letters.Width(text);
        for (var foot = height - 3; foot - wide >= 2; foot -= 3)
        {
            double left = x - letters.Size, right = x + 0.4;
            if (taken.Exists(t => left < t.Right && right > t.Left && foot - wide < t.Bottom && foot > t.Top)) continue;
            Words(text, x, foot, strong, turn: -90);
            Take(left - 0.5, foot - wide - 1, right + 0.5, foot + 1);
            return;
        }
    }

    /// <summary>The template as collected.</summary>
    public Template Done(string title, double width, double height) =>
        new(FileName(title), title, width, height, lines.ToValueList(), words.ToValueList(), facts.ToValueList());

    /// <summary>A name that every file system takes.</summary>
    public static string FileName(string title)
    {
        var name = new StringBuilder();
        foreach (var letter in title.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(letter)) name.Append(letter);
            else if (name.Length > 0 && name[^1] != '-') name.Append('-');
        }

        var text = name.ToString().Trim('-');
        return text.Length == 0 ? "template" : text[..Math.Min(text.Length, 60)].Trim('-');
    }

    /// <summary>A length in both systems, the builder's first.</summary>
    public static string Length(double metres, bool inch)
    {
        var mm = (metres * 1000).ToString("0.0", CultureInfo.InvariantCulture) + " mm";
        var fraction = Inches.Nearest(Math.Max(metres, 0)).Text + " in";
        return inch ? $"{fraction} ({mm})" : $"{mm} ({fraction})";
    }

    private bool IsFree(double x, double y, double wide, double tall, double width, double height) =>
        x >= 0.5 && y >= 0.5 && x + wide <= width - 0.5 && y + tall <= height - 0.5
        && !taken.Exists(t => x < t.Right && x + wide > t.Left && y < t.Bottom && y + tall > t.Top);
}
