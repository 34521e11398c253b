using System.CommandLine;
using System.Globalization;
using System.Text;
using Scribeline.App.Terminal;
using Scribeline.Drawing.Sheets;
using Scribeline.Drawing.Templates;

namespace Scribeline.App.Commands;

/// <summary>templates: what is drilled and cut by, at true size.</summary>
internal sealed class TemplatesCommand
{
    private static readonly string[] Kinds = ["pdf", "svg", "png", "dxf"];

    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline templates examples/night-heron --to night-heron-templates
        scribeline templates examples/night-heron --to cut --as dxf --as svg
        """;

    private readonly Screen screen;
    private readonly Argument<string> file = CommonOptions.File();
    private readonly Option<string> paper = CommonOptions.PaperSize();
    private readonly Option<string> to = new("--to")
    {
        Description = "Write into this folder, which is made where it is not there.",
        HelpName = "FOLDER",
        DefaultValueFactory = _ => "templates",
    };

    private readonly Option<string[]> kind = new("--as")
    {
        Description = "Only this kind of file: pdf, svg, png or dxf; may be given several times.",
        HelpName = "KIND",
        Arity = ArgumentArity.OneOrMore,
    };

    public TemplatesCommand(Screen screen)
    {
        this.screen = screen;
        kind.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Where(t => !Kinds.Contains(t.Value)))
                result.AddError($"There is no kind \"{token.Value}\". Type instead: --as {string.Join(", --as ", Kinds)}");
        });
        kind.CompletionSources.Add(Kinds);
        Command = new Command(
            "templates",
            "Draws every template at true size: strips to wrap round the tubes, plates, rings, fins. One PDF to print, and a file each for cutting.")
        {
            file, to, paper, kind,
        };
        Command.SetAction(Run);
    }

    public Command Command { get; }

    private int Run(ParseResult parsed)
    {
        var opened = OpenedDesign.Open(parsed.GetRequiredValue(file));
        if (opened.Studies?.Nominal is not { } study) return opened.Refuse(screen, asJson: false);
        var sheet = Paper.Named(parsed.GetRequiredValue(paper))!;
        var templates = RocketTemplates.Of(study, sheet);
        foreach (var missing in study.HoleSchedule.Missing) screen.Error.WriteLine($"left out, for want of {missing}");
        if (templates.Count == 0)
        {
            screen.Error.WriteLine($"{opened.File}: there is nothing to draw: no hole has a clock angle, and there are no plates, rings or fins.");
            return ExitCode.NotReady;
        }

        var folder = parsed.GetRequiredValue(to);
        if (!OutputFile.Folder(screen, folder)) return ExitCode.Input;
        string[] kinds = parsed.GetValue(kind) is { Length: > 0 } typed ? typed : Kinds;
        var facts = opened.Facts;
        if (kinds.Contains("pdf") && !Write("templates.pdf", TemplateOutput.Pdf(templates, sheet, facts))) return ExitCode.Input;
        foreach (var template in templates)
        {
            if (kinds.Contains("svg") && !Write($"{template.Id}.svg", Encoding.UTF8.GetBytes(TemplateOutput.Svg(template, facts)))) return ExitCode.Input;
            if (kinds.Contains("dxf") && !Write($"{template.Id}.dxf", Encoding.ASCII.GetBytes(DxfText.Of(template)))) return ExitCode.Input;
            if (kinds.Contains("png") && !Write($"{template.Id}.png", TemplateOutput.Png(template, facts))) return ExitCode.Input;
            var size = string.Create(CultureInfo.InvariantCulture, $"{template.Width:0.0} x {template.Height:0.0} mm");
            screen.Output.WriteLine($"{template.Id}: {size}");
        }

        screen.Output.WriteLine($"{templates.Count.ToString(CultureInfo.InvariantCulture)} templates in {folder}, as {string.Join(", ", kinds)}. Check the scale bar with a rule before drilling.");
        return ExitCode.Good;

        bool Write(string name, byte[] content) => OutputFile.Write(screen, Path.Combine(folder, name), content);
    }
}
