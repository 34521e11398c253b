using Scribeline.App.Json;
using Scribeline.App.Terminal;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Commands;

/// <summary>A design as a command opened it: its studies, or why there are none.</summary>
internal sealed class OpenedDesign
{
    private OpenedDesign(string file, DesignReading reading, ValueList<Problem> problems, Studies? studies) =>
        (File, Reading, Problems, Studies) = (file, reading, problems, studies);

    /// <summary>The design file, as a person can type it again.</summary>
    public string File { get; }

    /// <summary>The design as it was read.</summary>
    public DesignReading Reading { get; }

    /// <summary>Measured values that its logbook adds.</summary>
    public ValueList<MeasuredValue> FromLogbook { get; private init; } = [];

    /// <summary>Everything wrong with it, by place in the file.</summary>
    public ValueList<Problem> Problems { get; }

    /// <summary>Its studies; null where there are problems.</summary>
    public Studies? Studies { get; }

    /// <summary>What stands at the foot of every sheet of it.</summary>
    public SheetFacts Facts => new(
        Studies?.Nominal?.Rocket.Name ?? "", typeof(OpenedDesign).Assembly.GetName().Version!.ToString(3), DesignFingerprint.Of(Reading.Files, FromLogbook));

    /// <summary>Reads and resolves a design. Never fails: what is wrong becomes a problem.</summary>
    /// <param name="path">File or folder.</param>
    /// <param name="seed">Of the cases drawn from its tolerances.</param>
    public static OpenedDesign Open(string path, ulong seed = 1)
    {
        var reading = DesignFile.Read(path);
        var file = Directory.Exists(path) && reading.Path is { } found ? Path.Combine(path, Path.GetFileName(found)) : path;
        if (!reading.Good) return new(file, reading, reading.Problems, null);
        var (measured, unread) = Measured(reading.Path!);
        if (unread is not null) return new(file, reading, [unread with { File = Logbook.FileName }], null);
        var (design, strangers) = MeasuredRecords.AddTo(reading.Design!, measured);
        var studies = Studies.Of(design, seed);
        var problems = studies.Problems.Select(reading.Place).OrderBy(p => p.Line ?? 0).ThenBy(p => p.Column ?? 0).ToValueList();
        return new(file, reading, problems, problems.Count == 0 ? studies : null) { FromLogbook = measured.Except(strangers).ToValueList() };
    }

    // A logbook that cannot be read may hold measured values: answers without them would not be those of the rocket as built.
    private static (ValueList<MeasuredValue> Values, Problem? Problem) Measured(string path)
    {
        var opened = Logbook.OpenExisting(path);
        using var book = opened.Value;
        var measured = book?.Measured();
        return (measured?.Value ?? [], opened.Problem ?? measured?.Problem);
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
