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
            page.Paragraph(WorkingText.Equation(step), Indent);
            page.Paragraph($"{step.Meaning}; {step.Source}", Indent + 4, Page.Quiet);
        }
    }
}
