using System.CommandLine;
using System.Globalization;
using System.Text;
using Scribeline.App.Terminal;
using Scribeline.Drawing;
using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.App.Commands;

/// <summary>landings: many flights over the field, as numbers and as a map to take away.</summary>
internal sealed class LandingsCommand
{
    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline landings examples/night-heron
        scribeline landings examples/night-heron --samples 10000 --to landings.kml
        scribeline landings examples/night-heron --failures --to failures.svg
        """;

    private readonly Screen screen;
    private readonly Argument<string> file = CommonOptions.File();
    private readonly Option<int> samples = CommonOptions.Samples(1000);
    private readonly Option<ulong> seed = CommonOptions.Seed();
    private readonly Option<string> to = new("--to") { Description = "Write the map to this file: SVG, PNG, GeoJSON or KML by its name.", HelpName = "OUT.svg" };
    private readonly Option<bool> failures = new("--failures") { Description = "The map of every failure instead of the flight as planned." };

    public LandingsCommand(Screen screen)
    {
        this.screen = screen;
        Command = new Command("landings", "Flies the design many times over the field: where it comes down, as planned and with each failure.") { file, samples, seed, to, failures };
        Command.SetAction((parsed, cancel) => Task.Run(() => Run(parsed, cancel), cancel));
    }

    public Command Command { get; }

    private int Run(ParseResult parsed, CancellationToken cancel)
    {
        var opened = OpenedDesign.Open(parsed.GetRequiredValue(file), parsed.GetValue(seed));
        if (opened.Studies is not { Nominal: { } study }) return opened.Refuse(screen, asJson: false);
        Answer answer;
        using (var progress = screen.Progress())
        {
            answer = Questionnaire.Named("lands-inside")!.Ask(study.Flying(parsed.GetValue(samples), share => progress.Show(share), cancel));
        }

        var page = screen.OpenPage();
        page.Paragraph(study.Rocket.Name, style: Page.Bold);
        page.Paragraph(string.Create(CultureInfo.InvariantCulture, $"{opened.File}, seed {parsed.GetValue(seed)}"), style: Page.Quiet);
        page.Gap();
        new AnswerPage(page, study.Rocket.Inch, showWorking: false, showTables: true).Write([answer]);
        page.Paragraph(Cautions.Everything, style: Page.Quiet);
        if (parsed.GetValue(to) is { } path && !Take(path, answer, parsed.GetValue(failures) ? 1 : 0, study.Rocket.Inch)) return ExitCode.Input;
        return answer.Verdict >= Verdict.Open ? ExitCode.NotReady : ExitCode.Good;
    }

    private bool Take(string path, Answer answer, int number, bool inch)
    {
        if (number >= answer.Maps.Count)
        {
            screen.Error.WriteLine("There is no such map to write: see what is missing above.");
            return false;
        }

        var map = answer.Maps[number];
        var style = new PlotStyle(Inch: inch, Width: 900, Height: 900);
        var content = Path.GetExtension(path).ToLowerInvariant() switch
        {
            ".svg" => MapDrawing.Svg(map, style),
            ".geojson" or ".json" => LandingExport.GeoJson(map),
            ".kml" => LandingExport.KmlText(map),
            _ => "",
        };
        if (path.EndsWith(".png", StringComparison.OrdinalIgnoreCase)) return OutputFile.Write(screen, path, MapDrawing.Png(map, style));
        if (content is { Length: > 0 }) return OutputFile.Write(screen, path, Encoding.UTF8.GetBytes(content));
        screen.Error.WriteLine(content is null
            ? "The site does not say where its pad is. Write its latitude and longitude in the site file."
            : $"{path} is no kind of map. Type instead a name that ends in .svg, .png, .geojson or .kml");
        return false;
    }
}
