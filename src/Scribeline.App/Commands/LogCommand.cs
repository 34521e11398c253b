using System.CommandLine;
using Scribeline.App.Terminal;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store.Logbooks;
using Scribeline.Store.Logs;

namespace Scribeline.App.Commands;

/// <summary>log: flights that were flown, what they did, whether they were as predicted, what they teach.</summary>
internal sealed class LogCommand
{
    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline log night-heron
        scribeline log night-heron --add flight.csv --flown "4 October" --weather weather/cool-morning.yaml
        scribeline log night-heron --add flight.csv --column "pressure = Baro in hPa"
        scribeline log night-heron --accept drag-scale
        scribeline log night-heron --remove 2 --sure
        """;

    private readonly Screen screen;
    private readonly TimeProvider clock;
    private readonly Argument<string> file = CommonOptions.File();
    private readonly Option<string> add = new("--add") { Description = "Keep this altimeter's file, a table of any columns, as a flight.", HelpName = "CSV" };
    private readonly Option<string[]> column = Several("--column", "HOLDS = NAME", "What a column holds where its name does not tell, such as \"pressure = Baro in hPa\"; may be given several times.");
    private readonly Option<string> flown = new("--flown") { Description = "When it was flown, in your words.", HelpName = "WHEN" };
    private readonly Option<string> note = new("--note") { Description = "Words that go with the flight.", HelpName = "TEXT" };
    private readonly Option<string> weather = new("--weather") { Description = "Weather file of that day; the design's if left out.", HelpName = "FILE" };
    private readonly Option<string> motor = new("--motor") { Description = "Motor file of that day; the design's if left out.", HelpName = "FILE" };
    private readonly Option<long?> ask = new("--ask") { Description = "Ask about this flight from now on; the newest is asked about otherwise.", HelpName = "N" };
    private readonly Option<long?> remove = new("--remove") { Description = "Take this flight out, its record with it; needs --sure.", HelpName = "N" };
    private readonly Option<bool> sure = new("--sure") { Description = "Say that the flight named by --remove is to be taken out." };
    private readonly Option<string[]> accept = Several("--accept", "NAME", "Write what flights teach of this, such as drag-scale, into the design; may be given several times.");
    private readonly Option<string[]> takeBack = Several("--take-back", "NAME", "Take what was accepted out of the design again; may be given several times.");

    public LogCommand(Screen screen, TimeProvider? clock = null)
    {
        (this.screen, this.clock) = (screen, clock ?? TimeProvider.System);
        Command = new Command("log", "Tells what recorded flights did, whether they were as predicted and what they teach; keeps records in the logbook beside the design.")
        {
            file, add, column, flown, note, weather, motor, ask, remove, sure, accept, takeBack,
        };
        Command.SetAction((parsed, cancel) => Task.Run(() => Run(parsed), cancel));
    }

    public Command Command { get; }

    private static Option<string[]> Several(string name, string holds, string says) => new(name) { Description = says, HelpName = holds, Arity = ArgumentArity.OneOrMore };

    private int Run(ParseResult parsed)
    {
        var opened = OpenedDesign.Open(parsed.GetRequiredValue(file));
        if (opened.Studies is not { Nominal: { } study } || opened.Reading.Path is not { } path) return opened.Refuse(screen, asJson: false);
        List<Problem> problems = [];
        List<string> notes = [];
        if (Changes(parsed))
        {
            Change(parsed, opened, study, path, problems, notes);
            if (problems.Count > 0) return Refuse(problems);
            opened = OpenedDesign.Open(parsed.GetRequiredValue(file));
            if (opened.Studies?.Nominal is not { } anew) return opened.Refuse(screen, asJson: false);
            study = anew;
        }

        new LogPage(screen.OpenPage(), study.Rocket).Write(opened.File, opened.Flights, notes, Questionnaire.Flown.Select(q => q.Ask(study)).ToArray());
        return ExitCode.Good;
    }

    private bool Changes(ParseResult parsed) =>
        parsed.GetValue(add) is not null || parsed.GetValue(ask) is not null || parsed.GetValue(remove) is not null || parsed.GetValue(accept) is { Length: > 0 } || parsed.GetValue(takeBack) is { Length: > 0 };

    private void Change(ParseResult parsed, OpenedDesign opened, Study study, string path, List<Problem> problems, List<string> notes)
    {
        if (parsed.GetValue(remove) is { } gone && !parsed.GetValue(sure))
        {
            problems.Add(new("", $"Flight {gone} would be taken out of the logbook, its record with it.", $"If that is meant, type: --remove {gone} --sure"));
            return;
        }

        var book = Logbook.Open(path);
        using var kept = book.Value;
        if (kept is null)
        {
            problems.Add(book.Problem!);
            return;
        }

        FlightEntries entries = new(path, clock.GetUtcNow());
        if (parsed.GetValue(add) is { } csv && Entry(parsed, csv, problems) is { } entry && entries.Add(kept, opened.Reading.Text, entry, problems) is { } added)
        {
            notes.Add($"Kept as flight {added.Number}.");
            notes.AddRange(entries.Read!.Notes);
        }

        if (parsed.GetValue(remove) is { } number) entries.Remove(kept, number, problems);
        if (parsed.GetValue(ask) is { } asked) entries.Ask(kept, asked, problems);
        string[] accepted = parsed.GetValue(accept) ?? [], taken = parsed.GetValue(takeBack) ?? [];
        if (accepted.Length + taken.Length > 0 && problems.Count == 0) entries.Teach(kept, opened.Reading.Text, opened.Reading.Design!, study, accepted, taken, problems);
    }

    private FlightEntry? Entry(ParseResult parsed, string csv, List<Problem> problems)
    {
        try
        {
            if (new FileInfo(csv) is { Exists: true, Length: > LogFile.Largest })
            {
                problems.Add(new("", $"{Path.GetFileName(csv)} is larger than {LogFile.Largest / 1_000_000} MB.", "Cut it to the flight: from a minute before lift-off to a minute after landing."));
                return null;
            }

            return new(
                Path.GetFileName(csv), File.ReadAllBytes(csv), parsed.GetValue(flown)?.Trim() ?? "", parsed.GetValue(note)?.Trim() ?? "", parsed.GetValue(column) ?? [],
                parsed.GetValue(weather), parsed.GetValue(motor));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            problems.Add(new("", $"{csv} cannot be read: {failure.Message.TrimEnd('.')}.", "Check the name and the folder."));
            return null;
        }
    }

    private int Refuse(IReadOnlyCollection<Problem> problems)
    {
        foreach (var problem in problems) screen.Error.WriteLine(problem.ToString());
        return ExitCode.Input;
    }
}
