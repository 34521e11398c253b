using System.Globalization;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Terminal;

/// <summary>The steps to a value, in SI, so that anyone can redo them with a pocket calculator.</summary>
/// <param name="page">Where they are written.</param>
internal sealed class WorkingPage(Page page)
{
    private const int Indent = 3;

    /// <summary>Writes every step: symbol, formula, value, unit, meaning, source.</summary>
    public void Write(Working working)
    {
        if (working.Steps.Count == 0) return;
        page.Gap();
        page.Paragraph("working, in SI units:", Indent, Page.Quiet);
        foreach (var step in working.Steps)
        {
            page.Paragraph(Equation(step), Indent);
            page.Paragraph($"{step.Meaning}; {step.Source}", Indent + 4, Page.Quiet);
        }
    }

    /// <summary>A step on one line.</summary>
    public static string Equation(WorkingStep step)
    {
        var formula = step.Kind == StepKind.Formula ? $"{step.Formula} = " : "";
        return $"{step.Symbol} = {formula}{Number(step.Value)} {step.Unit}".TrimEnd();
    }

    /// <summary>A value as a pocket calculator shows it: seven significant digits, powers of ten where it is very small or large.</summary>
    public static string Number(double value)
    {
        if (double.IsNaN(value)) return "not known";
        var size = Math.Abs(value);
        return size is 0 or (>= 1e-4 and < 1e9)
            ? value.ToString(size == 0 ? "0" : Fixed(size), CultureInfo.InvariantCulture)
            : value.ToString("0.######E0", CultureInfo.InvariantCulture);
    }

    private static string Fixed(double size)
    {
        var places = Math.Max(0, 6 - (int)Math.Floor(Math.Log10(size)));
        return places == 0 ? "0" : "0." + new string('#', places);
    }
}
