using System.CommandLine;
using System.Text;
using Scribeline.App.Terminal;
using Scribeline.Store;

namespace Scribeline.App.Commands;

/// <summary>new: a design to start from.</summary>
internal sealed class NewCommand
{
    private const int LongestName = 100;

    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline new "Night Heron"
        scribeline new "Night Heron" --to rockets
        """;

    private readonly Screen screen;
    private readonly Argument<string> name = new("NAME") { Description = "Name of the rocket." };
    private readonly Option<string> to = new("--to")
    {
        Description = "Make the rocket's folder in this one.",
        HelpName = "FOLDER",
        DefaultValueFactory = _ => ".",
    };

    public NewCommand(Screen screen)
    {
        this.screen = screen;
        Command = new Command(
            "new",
            "Makes a folder named after the rocket, with a design to start from. Nothing that is there is overwritten.")
        {
            name, to,
        };
        Command.SetAction(parsed => Run(parsed.GetRequiredValue(name), parsed.GetRequiredValue(to)));
    }

    public Command Command { get; }

    private int Run(string rocket, string parent)
    {
        var folder = FolderName(rocket);
        if (folder.Length == 0 || rocket.Length > LongestName || rocket.Any(char.IsControl))
        {
            screen.Error.WriteLine($"A rocket's name is one line with at least one letter or digit, up to {LongestName} long. Type instead: scribeline new \"Night Heron\"");
            return ExitCode.Input;
        }

        var home = parent is "." ? folder : Path.Combine(parent, folder);
        var path = Path.Combine(home, "rocket.yaml");
        try
        {
            Directory.CreateDirectory(home);
            using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            file.Write(Encoding.UTF8.GetBytes(Starter.Text(rocket)));
        }
        catch (IOException) when (File.Exists(path))
        {
            screen.Error.WriteLine($"{path} is there already and stays as it is. Type another name, or another folder with --to.");
            return ExitCode.Input;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            screen.Error.WriteLine($"{path} cannot be written: {failure.Message.TrimEnd('.')}. Name a folder that may be written with --to.");
            return ExitCode.Input;
        }

        screen.Output.WriteLine($"{path} is made. Fit it to your rocket, then type: scribeline answer {Quoted(home)}");
        return ExitCode.Good;
    }

    /// <summary>A name that every file system takes: lower-case letters and digits with dashes between.</summary>
    internal static string FolderName(string rocket)
    {
        var text = new StringBuilder();
        foreach (var letter in rocket.ToLowerInvariant())
        {
            if (char.IsLetterOrDigit(letter)) text.Append(letter);
            else if (text.Length > 0 && text[^1] != '-') text.Append('-');
        }

        return text.ToString().Trim('-');
    }

    private static string Quoted(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;
}
