using Scribeline.Drawing.Sheets;

namespace Scribeline.Drawing.Templates;

/// <summary>Templates as files. The same template gives the same bytes.</summary>
public static class TemplateOutput
{
    /// <summary>All of them at true size on sheets of paper, tiled where they are larger.</summary>
    public static byte[] Pdf(IEnumerable<Template> templates, Paper paper, SheetFacts facts) =>
        SheetOutput.Pdf(TemplateSheets.Of(templates, paper), facts, $"{facts.Design}: templates");

    /// <summary>One, on a sheet of its own size.</summary>
    public static string Svg(Template template, SheetFacts facts) => SheetOutput.Svg(TemplateSheets.Alone(template), facts);

    /// <summary>One, on a sheet of its own size.</summary>
    /// <param name="template">The template.</param>
    /// <param name="facts">At its foot.</param>
    /// <param name="dotsPerInch">Pixels per inch of paper.</param>
    public static byte[] Png(Template template, SheetFacts facts, double dotsPerInch = 300) => SheetOutput.Png(TemplateSheets.Alone(template), facts, dotsPerInch);
}
