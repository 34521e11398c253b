using System.CommandLine;
using System.Diagnostics;
using Scribeline.App.Documents;
using Scribeline.App.Terminal;
using Scribeline.App.Web;

namespace Scribeline.App.Commands;

/// <summary>open: the workbench, in a browser on this machine.</summary>
internal sealed class OpenCommand
{
    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline open examples/night-heron
        scribeline open examples/night-heron --port 4480 --show
        scribeline open                         the start page, for this folder
        """;

    private readonly Screen screen;

    private readonly Argument<string?> file = new("FILE")
    {
        Description = "A design file, or the folder that holds rocket.yaml; left out, the designs of this folder are listed.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<int> port = new("--port")
    {
        Description = "Answer on this port of this machine; any free one if left out.",
        HelpName = "N",
        DefaultValueFactory = _ => 0,
    };

    private readonly Option<bool> show = new("--show") { Description = "Also show it in the browser." };

    public OpenCommand(Screen screen)
    {
        this.screen = screen;
        port.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && int.TryParse(result.Tokens[0].Value, out var typed) && typed is < 0 or > 65535)
                result.AddError("--port must be a number from 0 to 65535.");
        });
        Command = new Command(
            "open",
            "Opens the workbench in a browser: plan, build and check on screen. Answers on this machine alone, until Ctrl-C.")
        {
            file, port, show,
        };
        Command.SetAction((parsed, cancel) => Run(parsed.GetValue(file), parsed.GetValue(port), parsed.GetValue(show), cancel));
    }

    public Command Command { get; }

    private async Task<int> Run(string? path, int port, bool show, CancellationToken cancel)
    {
        using var shelf = new DocumentShelf(new(FolderOf(path), RecentDesigns.UsualFile, ExamplesFolder()));
        var page = "";
        if (path is not null)
        {
            var (document, problems) = shelf.Open(path);
            if (document is null)
            {
                new ProblemPage(screen.Error, path).Write(problems);
                return ExitCode.Input;
            }

            page = $"{document.Id}/desk";
        }

        try
        {
            await using var server = await WorkbenchServer.Start(shelf, port, cancel).ConfigureAwait(false);
            var address = new Uri(server.Address, page).ToString();
            await screen.Output.WriteLineAsync($"The workbench is at {address}").ConfigureAwait(false);
            await screen.Output.WriteLineAsync("It answers on this machine alone. Ctrl-C ends it.").ConfigureAwait(false);
            await screen.Output.FlushAsync(cancel).ConfigureAwait(false);
            if (show) Process.Start(new ProcessStartInfo(address) { UseShellExecute = true })?.Dispose();
            await Task.Delay(Timeout.Infinite, cancel).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            return ExitCode.Good;
        }
        catch (IOException) when (port != 0)
        {
            await screen.Error.WriteLineAsync($"Port {port} is taken. Type another, or leave --port out.").ConfigureAwait(false);
            return ExitCode.Input;
        }
    }

    // New designs go beside the opened one, where files it shares with others are.
    private static string FolderOf(string? path)
    {
        if (path is null) return Directory.GetCurrentDirectory();
        var full = Path.GetFullPath(path);
        var own = Directory.Exists(full) ? full : Path.GetDirectoryName(full)!;
        return Path.GetDirectoryName(own) ?? own;
    }

    /// <summary>The examples beside the program, or those of the source folder it was built in.</summary>
    private static string? ExamplesFolder()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var examples = Path.Combine(folder.FullName, "examples");
            if (File.Exists(Path.Combine(examples, "night-heron", "rocket.yaml"))) return examples;
        }

        return null;
    }
}
