using System.CommandLine;
using Scribeline.App.Json;
using Scribeline.App.Terminal;

namespace Scribeline.App.Commands;

/// <summary>check: only what is wrong in a design.</summary>
internal sealed class CheckCommand
{
    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline check examples/night-heron
        """;

    private readonly Screen screen;
    private readonly Argument<string> file = CommonOptions.File();
    private readonly Option<bool> json = CommonOptions.Json();

    public CheckCommand(Screen screen)
    {
        this.screen = screen;
        Command = new Command(
            "check",
            "Tells everything that is wrong in a design and the files it names: place, what is wrong, what to type instead.")
        {
            file, json,
        };
        Command.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetValue(json)));
    }

    public Command Command { get; }

    private int Run(string path, bool asJson)
    {
        var opened = OpenedDesign.Open(path);
        if (asJson) screen.Output.Write(JsonText.Of(ProblemsJson.Of(opened.File, opened.Problems)));
        else if (opened.Problems.Count > 0) new ProblemPage(screen.Output, opened.File).Write(opened.Problems);
        else screen.Output.WriteLine($"{opened.File}: no problems.");
        return opened.Problems.Count > 0 ? ExitCode.Input : ExitCode.Good;
    }
}
