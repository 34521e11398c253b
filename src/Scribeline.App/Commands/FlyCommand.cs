using System.CommandLine;
using System.Text;
using Scribeline.App.Json;
using Scribeline.App.Terminal;
using Scribeline.Drawing;
using Scribeline.Engine.Flight;

namespace Scribeline.App.Commands;

/// <summary>fly: the flight as typed, from ignition to the last landing.</summary>
internal sealed class FlyCommand
{
    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline fly examples/night-heron
        scribeline fly examples/night-heron --csv flight.csv --plot flight.svg
        """;

    private readonly Screen screen;
    private readonly Argument<string> file = CommonOptions.File();
    private readonly Option<bool> json = CommonOptions.Json();
    private readonly Option<string> csv = new("--csv") { Description = "Write the motion of every body to this CSV file, SI.", HelpName = "OUT" };
    private readonly Option<string> plot = new("--plot") { Description = "Draw height over time to this SVG file, or PNG by its name.", HelpName = "OUT.svg" };

    public FlyCommand(Screen screen)
    {
        this.screen = screen;
        Command = new Command(
            "fly",
            "Flies the design as typed, without tolerances: events, greatest values, landings.")
        {
            file, csv, plot, json,
        };
        Command.SetAction(parsed => Run(parsed));
    }

    public Command Command { get; }

    private int Run(ParseResult parsed)
    {
        var asJson = parsed.GetValue(json);
        var opened = OpenedDesign.Open(parsed.GetRequiredValue(file));
        if (opened.Studies?.Nominal is not { } study) return opened.Refuse(screen, asJson);
        if (study.Missing is { Count: > 0 } missing)
        {
            screen.Error.WriteLine($"{opened.File}: there is no flight without");
            foreach (var input in missing) screen.Error.WriteLine($"    {input}");
            return ExitCode.NotReady;
        }

        var flight = study.Flight;
        if (parsed.GetValue(csv) is { } csvFile && !OutputFile.Write(screen, csvFile, Encoding.UTF8.GetBytes(FlightCsv.Of(flight)))) return ExitCode.Input;
        if (parsed.GetValue(plot) is { } plotFile && !OutputFile.Write(screen, plotFile, Drawn(plotFile, flight, new PlotStyle(Inch: study.Rocket.Inch)))) return ExitCode.Input;

        if (asJson) screen.Output.Write(JsonText.Of(FlightJson.Of(study.Rocket.Name, opened.File, flight)));
        else new FlightPage(screen.OpenPage(), study.Rocket.Inch).Write(study.Rocket.Name, opened.File, flight);
        return flight.Failure == FlightFailure.None ? ExitCode.Good : ExitCode.NotReady;
    }

    private static byte[] Drawn(string path, FlightResult flight, PlotStyle style)
    {
        var height = FlightPlot.Height(flight);
        return path.EndsWith(".png", StringComparison.OrdinalIgnoreCase) ? PlotDrawing.Png(height, style) : Encoding.UTF8.GetBytes(PlotDrawing.Svg(height, style));
    }
}
