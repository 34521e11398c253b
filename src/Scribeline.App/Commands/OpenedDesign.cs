using Scribeline.App.Json;
using Scribeline.App.Terminal;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.App.Commands;

/// <summary>A design as a command opened it: its studies, or why there are none.</summary>
internal sealed class OpenedDesign
{
    private readonly ValueList<string> files;

    private OpenedDesign(string file, ValueList<Problem> problems, Studies? studies, ValueList<string> files) =>
        (File, Problems, Studies, this.files) = (file, problems, studies, files);

    /// <summary>The design file, as a person can type it again.</summary>
    public string File { get; }

    /// <summary>Everything wrong with it, by place in the file.</summary>
    public ValueList<Problem> Problems { get; }

    /// <summary>Its studies; null where there are problems.</summary>
    public Studies? Studies { get; }

    /// <summary>What stands at the foot of every sheet of it.</summary>
    public SheetFacts Facts => new(
        Studies?.Nominal?.Rocket.Name ?? "", typeof(OpenedDesign).Assembly.GetName().Version!.ToString(3), DesignFingerprint.Of(files));

    /// <summary>Reads and resolves a design. Never fails: what is wrong becomes a problem.</summary>
    /// <param name="path">File or folder.</param>
    /// <param name="seed">Of the cases drawn from its tolerances.</param>
    public static OpenedDesign Open(string path, ulong seed = 1)
    {
        var reading = DesignFile.Read(path);
        var file = Directory.Exists(path) && reading.Path is { } found ? Path.Combine(path, Path.GetFileName(found)) : path;
        if (!reading.Good) return new(file, reading.Problems, null, reading.Files);
        var studies = Studies.Of(reading.Design!, seed);
        var problems = studies.Problems.Select(reading.Place).OrderBy(p => p.Line ?? 0).ThenBy(p => p.Column ?? 0).ToValueList();
        return new(file, problems, problems.Count == 0 ? studies : null, reading.Files);
    }

    /// <summary>Says why a design cannot be asked anything.</summary>
    public int Refuse(Screen screen, bool asJson)
    {
        if (asJson)
        {
            screen.Output.Write(JsonText.Of(ProblemsJson.Of(File, Problems)));
            return ExitCode.Input;
        }

        new ProblemPage(screen.Error, File).Write(Problems);
        screen.Error.WriteLine(Problems.Count == 1 ? "Mend this first." : $"Mend these {Problems.Count} first.");
        return ExitCode.Input;
    }
}
