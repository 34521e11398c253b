using Scribeline.Engine.Questions;

namespace Scribeline.App.Components;

/// <summary>A shown value as figure and unit, to set one large and the other small.</summary>
internal static class FigureText
{
    /// <summary>The same words as <see cref="Shown.Text"/>, in two.</summary>
    public static (string Number, string Symbol) Split(double value, Unit unit, bool inch)
    {
        var text = Shown.Text(value, unit, inch);
        var gap = text.LastIndexOf(' ');
        return gap > 0 && (char.IsAsciiDigit(text[gap - 1])) ? (text[..gap], text[(gap + 1)..]) : (text, "");
    }
}
