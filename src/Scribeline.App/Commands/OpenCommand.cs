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
        scribeline open examples/night-heron --field
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

    private readonly Option<string?> field = new("--field")
    {
        Description = "Also let phones of the local network read along and tick, each with a code of its own, at this address of this machine; its first local one if left out.",
        HelpName = "ADDRESS",
        Arity = ArgumentArity.ZeroOrOne,
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
            file, port, field, show,
        };
        Command.SetAction((parsed, cancel) => Run(
            new(parsed.GetValue(file), parsed.GetValue(port), parsed.GetValue(show), parsed.GetResult(field) is { Implicit: false }, parsed.GetValue(field)), cancel));
    }

    public Command Command { get; }

    private sealed record Typed(string? Path, int Port, bool Show, bool Field, string? Address);

    private async Task<int> Run(Typed typed, CancellationToken cancel)
    {
        using var shelf = new DocumentShelf(new(FolderOf(typed.Path), RecentDesigns.UsualFile, ExamplesFolder()));
        DesignDocument? opened = null;
        if (typed.Path is not null)
        {
            (opened, var problems) = shelf.Open(typed.Path);
            if (opened is null)
            {
                new ProblemPage(screen.Error, typed.Path).Write(problems);
                return ExitCode.Input;
            }
        }

        var page = opened is null ? "" : $"{opened.Id}/{(typed.Field ? "field" : "desk")}";
        var (near, refused) = typed.Field ? PhoneAddress.Of(typed.Address, opened is not null) : (null, null);
        if (refused is not null)
        {
            await screen.Error.WriteLineAsync(refused).ConfigureAwait(false);
            return ExitCode.Input;
        }

        var gate = new PhoneGate(TimeProvider.System);
        try
        {
            await using var server = await WorkbenchServer.Start(shelf, typed.Port, gate, cancel).ConfigureAwait(false);
            await using var phones = near is null ? null : await PhoneServer.Start(opened!, gate, near, cancel: cancel).ConfigureAwait(false);
            var address = new Uri(server.Address, page).ToString();
            await screen.Output.WriteLineAsync($"The workbench is at {address}").ConfigureAwait(false);
            await screen.Output.WriteLineAsync(near is null ? "It answers on this machine alone. Ctrl-C ends it." : "It answers on this machine alone; phones get a page of their own. Ctrl-C ends both.").ConfigureAwait(false);
            if (gate.Invitation is { } invitation) await Invite(invitation).ConfigureAwait(false);
            await screen.Output.FlushAsync(cancel).ConfigureAwait(false);
            if (typed.Show) Process.Start(new ProcessStartInfo(address) { UseShellExecute = true })?.Dispose();
            await Task.Delay(Timeout.Infinite, cancel).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            return ExitCode.Good;
        }
        catch (IOException) when (typed.Port != 0)
        {
            await screen.Error.WriteLineAsync($"Port {typed.Port} is taken. Type another, or leave --port out.").ConfigureAwait(false);
            return ExitCode.Input;
        }
    }

    // The picture needs dark on light, which only a terminal with colour can be told.
    private async Task Invite(Uri invitation)
    {
        await screen.Output.WriteLineAsync($"One phone may join, once, within {PhoneGate.Good.TotalMinutes:0} minutes, at {invitation}").ConfigureAwait(false);
        if (!screen.Colour) return;
        foreach (var line in QrPicture.Of(invitation.ToString()).Lines) await screen.Output.WriteLineAsync($"\u001b[97;40m{line}\u001b[0m").ConfigureAwait(false);
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
