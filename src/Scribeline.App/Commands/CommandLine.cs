using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Scribeline.App.Terminal;

namespace Scribeline.App.Commands;

/// <summary>Everything that can be typed after the program's name.</summary>
internal static class CommandLine
{
    private const string About = "Answers what a builder of a high-power rocket must know before it flies.";

    private const string Examples =
        """
        scribeline new "Night Heron"            a design to start from
        scribeline check night-heron            only what is wrong in it
        scribeline open night-heron             the workbench, in a browser
        scribeline answer night-heron           every answer, with its limit
        scribeline answer night-heron --question stable --working
        scribeline packet night-heron           all of it on paper
        scribeline fly night-heron --csv flight.csv --plot flight.svg
        scribeline landings night-heron         where it comes down, many times over
        scribeline build night-heron            what to build next
        scribeline field night-heron            what the day at the field asks
        scribeline shot night-heron             what to fire on the ground
        scribeline log night-heron              what its flights did and teach
        """;

    /// <summary>Runs what was typed.</summary>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static async Task<int> Run(IReadOnlyList<string> typed, Screen screen)
    {
        try
        {
            var parsed = Root(screen).Parse(typed);
            if (parsed.Errors.Count > 0) return Wrong(parsed, screen);
            var settings = new InvocationConfiguration { Output = screen.Output, Error = screen.Error, EnableDefaultExceptionHandler = false };
            return await parsed.InvokeAsync(settings).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            await screen.Error.WriteLineAsync("Stopped.").ConfigureAwait(false);
            return ExitCode.Stopped;
        }
#pragma warning disable CA1031 // The last stand: whatever failed, a person gets one line and the shell its code.
        catch (Exception failure)
#pragma warning restore CA1031
        {
            await screen.Error.WriteLineAsync($"scribeline failed: {failure.GetType().Name}: {FirstLine(failure.Message)}").ConfigureAwait(false);
            await screen.Error.WriteLineAsync("This is a fault of the program, not of your file. Please report it with the design file.").ConfigureAwait(false);
            return ExitCode.Internal;
        }
    }

    private static RootCommand Root(Screen screen)
    {
        var open = new OpenCommand(screen).Command;
        var answer = new AnswerCommand(screen).Command;
        var fly = new FlyCommand(screen).Command;
        var landings = new LandingsCommand(screen).Command;
        var build = new BuildCommand(screen).Command;
        var field = new FieldCommand(screen).Command;
        var shot = new ShotCommand(screen).Command;
        var log = new LogCommand(screen).Command;
        var check = new CheckCommand(screen).Command;
        var packet = new PacketCommand(screen).Command;
        var templates = new TemplatesCommand(screen).Command;
        var create = new NewCommand(screen).Command;
        var root = new RootCommand(About) { open, answer, fly, landings, build, shot, field, packet, templates, log, check, create };
        var examples = new Dictionary<Command, string>
        {
            [root] = Examples,
            [open] = OpenCommand.Examples,
            [answer] = AnswerCommand.Examples,
            [fly] = FlyCommand.Examples,
            [landings] = LandingsCommand.Examples,
            [packet] = PacketCommand.Examples,
            [templates] = TemplatesCommand.Examples,
            [build] = BuildCommand.Examples,
            [field] = FieldCommand.Examples,
            [shot] = ShotCommand.Examples,
            [log] = LogCommand.Examples,
            [check] = CheckCommand.Examples,
            [create] = NewCommand.Examples,
        };
        foreach (var help in root.Options.OfType<HelpOption>()) help.Action = new HelpWithExamples((HelpAction)help.Action!, screen.Width, examples);
        return root;
    }

    // The library's help, with examples beneath.
    private sealed class HelpWithExamples(HelpAction help, int width, Dictionary<Command, string> examples) : SynchronousCommandLineAction
    {
        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            help.MaxWidth = width;
            help.Invoke(parseResult);
            var output = parseResult.InvocationConfiguration.Output;
            output.WriteLine("Examples:");
            foreach (var line in examples[parseResult.CommandResult.Command].Split('\n')) output.WriteLine("  " + line.TrimEnd('\r'));
            return ExitCode.Good;
        }
    }

    private static int Wrong(ParseResult parsed, Screen screen)
    {
        var command = parsed.CommandResult.Command;
        foreach (var error in parsed.Errors) screen.Error.WriteLine(error.Message);
        screen.Error.WriteLine($"Type instead: scribeline {(command is RootCommand ? "" : command.Name + " ")}--help");
        return ExitCode.Input;
    }

    private static string FirstLine(string text) => text.Split('\n')[0].Trim();
}
