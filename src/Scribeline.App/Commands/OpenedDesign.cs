using Scribeline.App.Json;
using Scribeline.App.Terminal;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store;
using Scribeline.Store.Logbooks;
using Scribeline.Store.Logs;

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

    /// <summary>Shots of its logbook, those taken out included.</summary>
    public ValueList<LoggedShot> Shots { get; private init; } = [];

    /// <summary>What its logbook adds, in words; empty for nothing.</summary>
    public string Added => string.Join(" and ", new[] { Counted(FromLogbook.Count, "measured value"), Counted(Shots.Count(s => !s.Out), "shot") }.Where(t => t.Length > 0));

    /// <summary>Its recorded flights.</summary>
    public FlownFlights Flights { get; private init; } = FlownFlights.None;

    /// <summary>Everything wrong with it, by place in the file.</summary>
    public ValueList<Problem> Problems { get; }

    /// <summary>Its studies; null where there are problems.</summary>
    public Studies? Studies { get; }

    /// <summary>What stands at the foot of every sheet of it.</summary>
    public SheetFacts Facts => new(
        Studies?.Nominal?.Rocket.Name ?? "", typeof(OpenedDesign).Assembly.GetName().Version!.ToString(3), DesignFingerprint.Of(Reading.Files, FromLogbook, Shots));

    /// <summary>Reads and resolves a design. Never fails: what is wrong becomes a problem.</summary>
    /// <param name="path">File or folder.</param>
    /// <param name="seed">Of the cases drawn from its tolerances.</param>
    /// <param name="clock">Tells the day for which conditions are confirmed; null for that of the machine.</param>
    public static OpenedDesign Open(string path, ulong seed = 1, TimeProvider? clock = null)
    {
        var reading = DesignFile.Read(path);
        var file = Directory.Exists(path) && reading.Path is { } found ? Path.Combine(path, Path.GetFileName(found)) : path;
        if (!reading.Good) return new(file, reading, reading.Problems, null);
        var (measured, shots, flights, unread) = Logged(reading.Path!);
        if (unread is not null) return new(file, reading, [unread with { File = Logbook.FileName }], null);
        var (design, strangers) = MeasuredRecords.AddTo(reading.Design!, measured);
        var confirmed = Confirmed(reading, measured.Except(strangers), DateOnly.FromDateTime((clock ?? TimeProvider.System).GetLocalNow().DateTime));
        var studies = Studies.Of(ShotRecords.AddTo(design, shots), seed, confirmed: confirmed, flights: flights.Flights, asked: flights.Asked);
        var problems = studies.Problems.Select(reading.Place).OrderBy(p => p.Line ?? 0).ThenBy(p => p.Column ?? 0).ToValueList();
        return new(file, reading, problems, problems.Count == 0 ? studies : null) { FromLogbook = measured.Except(strangers).ToValueList(), Shots = shots, Flights = flights };
    }

    // A logbook that cannot be read may hold measured values: answers without them would not be those of the rocket as built.
    private static (ValueList<MeasuredValue> Values, ValueList<LoggedShot> Shots, FlownFlights Flights, Problem? Problem) Logged(string path)
    {
        var opened = Logbook.OpenExisting(path);
        using var book = opened.Value;
        var measured = book?.Measured();
        var shots = book?.Shots();
        var flights = book is null ? new(FlownFlights.None) : FlownFlights.Of(book, path);
        return (measured?.Value ?? [], shots?.Value ?? [], flights.Value ?? FlownFlights.None, opened.Problem ?? measured?.Problem ?? shots?.Problem ?? flights.Problem);
    }

    // A logbook that cannot be read has stopped everything before this.
    private static ValueList<Confirmation> Confirmed(DesignReading reading, IEnumerable<MeasuredValue> measured, DateOnly today)
    {
        using var book = Logbook.OpenExisting(reading.Path!).Value;
        return book is null ? [] : FieldEntries.Confirmed(book, FlightBasis.Of(reading, measured), today).Value ?? [];
    }

    private static string Counted(int count, string what) => count == 0 ? "" : $"{count} {what}{(count == 1 ? "" : "s")}";

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
