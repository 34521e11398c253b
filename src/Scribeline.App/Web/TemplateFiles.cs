using System.Text;
using Scribeline.App.Commands;
using Scribeline.App.Documents;
using Scribeline.Drawing.Sheets;
using Scribeline.Drawing.Templates;
using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.App.Web;

/// <summary>Templates as files, the same that the templates command writes.</summary>
internal static class TemplateFiles
{
    /// <summary>Serves one PDF for each paper, and every template by its name.</summary>
    public static void MapTemplates(this IEndpointRouteBuilder app)
    {
        app.MapGet("/{design}/templates-{paper}.pdf", (DocumentShelf shelf, string design, string paper) =>
            shelf.Find(design) is { Answers.Study: { } study } document && Paper.Named(paper) is { } sheet
                ? Results.Bytes(TemplateOutput.Pdf(RocketTemplates.Of(study, sheet), sheet, Facts(document, study)), "application/pdf")
                : Results.NotFound()).AddEndpointFilter(Exports.Fresh);
        Each(app, "svg", "image/svg+xml", (template, facts) => Encoding.UTF8.GetBytes(TemplateOutput.Svg(template, facts)));
        Each(app, "png", "image/png", (template, facts) => TemplateOutput.Png(template, facts));
        Each(app, "dxf", "image/vnd.dxf", (template, _) => Encoding.ASCII.GetBytes(DxfText.Of(template)));
    }

    private static void Each(IEndpointRouteBuilder app, string ending, string type, Func<Template, SheetFacts, byte[]> content) =>
        app.MapGet("/{design}/template/{id}." + ending, (DocumentShelf shelf, string design, string id) =>
            shelf.Find(design) is { Answers.Study: { } study } document && RocketTemplates.Of(study, Paper.A4).FirstOrDefault(t => t.Id == id) is { } template
                ? Results.Bytes(content(template, Facts(document, study)), type)
                : Results.NotFound()).AddEndpointFilter(Exports.Fresh);

    // A sheet of work that is not saved cannot be told by its files.
    private static SheetFacts Facts(DesignDocument document, Study study)
    {
        var version = typeof(OpenedDesign).Assembly.GetName().Version!.ToString(3);
        try
        {
            return new(study.Rocket.Name, version, document.IsChanged ? "not saved" : DesignFingerprint.Of(document.Reading.Files, document.Counted, document.Shots));
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return new(study.Rocket.Name, version, "not saved");
        }
    }
}
