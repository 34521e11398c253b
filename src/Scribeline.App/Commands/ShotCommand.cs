using System.CommandLine;
using System.Text;
using Scribeline.App.Json;
using Scribeline.App.Terminal;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Commands;

/// <summary>shot: what to fire on the ground, what was fired, and what it says; shots go into the logbook.</summary>
internal sealed class ShotCommand
{
    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline shot night-heron
        scribeline shot heron --charge "Main A" --powder "0.5 g" --happened parted
        scribeline shot night-heron --take-out 3
        scribeline shot night-heron --let-count
        """;

    private readonly Screen screen;
    private readonly TimeProvider clock;
    private readonly Argument<string> file = CommonOptions.File();
    private readonly Option<bool> json = CommonOptions.Json();
    private readonly (string Key, Option<string> Option)[] entries;
    private readonly Option<string[]> takeOut = Several("--take-out", "Take this shot out, so that it no longer counts; may be given several times.");
    private readonly Option<string[]> putBack = Several("--put-back", "Put a shot back that was taken out; may be given several times.");
    private readonly Option<bool> letCount = new("--let-count") { Description = "Let what the shots say count in lets-go: writes records: shots count: yes into the design." };
    private readonly Option<bool> setAside = new("--set-aside") { Description = "No longer: takes that out of the design again." };
    private readonly Option<string> csv = new("--csv") { Description = "Write every shot as CSV.", HelpName = "OUT" };

    public ShotCommand(Screen screen, TimeProvider? clock = null)
    {
        (this.screen, this.clock) = (screen, clock ?? TimeProvider.System);
        entries = [.. ShotEntries.Keys.Select(k => (k.Key, new Option<string>($"--{k.Key}") { Description = Says(k.Label, k.Key), HelpName = k.Example }))];
        Command = new Command("shot", "Tells what to fire on the ground and what the shots say; keeps each shot in the logbook beside the design.") { file };
        foreach (var (_, option) in entries) Command.Add(option);
        foreach (var option in (Option[])[takeOut, putBack, letCount, setAside, csv, json]) Command.Add(option);
        Command.SetAction(Run);
    }

    public Command Command { get; }

    private static string Says(string label, string key) => key switch
    {
        "charge" => "Records a shot: the charge whose place it took.",
        "happened" => $"What happened: {string.Join(", ", ShotEntries.Outcomes)}.",
        _ => $"{label}.",
    };

    private static Option<string[]> Several(string name, string says) => new(name) { Description = says, HelpName = "NUMBER", Arity = ArgumentArity.OneOrMore };

    private int Run(ParseResult parsed)
    {
        var opened = OpenedDesign.Open(parsed.GetRequiredValue(file));
        if (opened.Studies is not { Nominal: { } study } || opened.Reading.Path is not { } path) return opened.Refuse(screen, parsed.GetValue(json));

        var typed = entries.Select(e => (e.Key, Value: parsed.GetValue(e.Option) ?? "")).Where(e => e.Value.Length > 0).ToDictionary(e => e.Key, e => e.Value);
        string[] taken = parsed.GetValue(takeOut) ?? [], back = parsed.GetValue(putBack) ?? [];
        List<Problem> problems = [];
        if (parsed.GetValue(letCount) && parsed.GetValue(setAside)) return Refuse([new("", "--let-count and --set-aside say the opposite.", "Give one of them.")]);
        if (typed.Count + taken.Length + back.Length > 0 && !Keep(opened, study, path, typed, taken, back, problems)) return Refuse(problems);
        if ((parsed.GetValue(letCount) || parsed.GetValue(setAside)) && !Write(opened, path, parsed.GetValue(letCount), problems)) return Refuse(problems);

        opened = OpenedDesign.Open(parsed.GetRequiredValue(file));
        if (opened.Studies is not { Nominal: { } now }) return opened.Refuse(screen, parsed.GetValue(json));
        if (parsed.GetValue(csv) is { Length: > 0 } to && !OutputFile.Write(screen, to, Encoding.UTF8.GetBytes(ShotCsv.Of(now)))) return ExitCode.Input;
        var answers = Questionnaire.Testing.Select(q => q.Ask(now)).ToArray();
        if (parsed.GetValue(json))
        {
            screen.Output.Write(JsonText.Of(AnswersJson.Of(now.Rocket.Name, opened.File, 0, 1, answers)));
            return ExitCode.Good;
        }

        var page = screen.OpenPage();
        page.Paragraph(now.Rocket.Name, style: Page.Bold);
        page.Paragraph(opened.File, style: Page.Quiet);
        page.Gap();
        new AnswerPage(page, now.Rocket.Inch, showWorking: false, showTables: true).Write(answers);
        page.Paragraph(Cautions.Everything, style: Page.Quiet);
        return ExitCode.Good;
    }

    private bool Keep(OpenedDesign opened, Study study, string path, Dictionary<string, string> typed, string[] taken, string[] back, List<Problem> problems)
    {
        var logged = Logbook.Open(path);
        using var book = logged.Value;
        if (logged.Problem is { } closed) problems.Add(closed);
        if (book is null) return false;
        var now = clock.GetUtcNow();
        if (typed.Count > 0) new ShotEntries(study, opened.Reading.Design!, opened.Reading.Text, now).Add(book, typed, problems);
        if (problems.Count > 0) return false;
        foreach (var number in taken) ShotEntries.Mark(book, number, takeOut: true, now, problems);
        foreach (var number in back) ShotEntries.Mark(book, number, takeOut: false, now, problems);
        return problems.Count == 0;
    }

    private bool Write(OpenedDesign opened, string path, bool counts, List<Problem> problems)
    {
        var change = ShotEntries.Count(opened.Reading.Text, opened.Reading.Design!, counts);
        if (change.Problem is { } refused) problems.Add(refused);
        else if (change.Text != opened.Reading.Text)
        {
            var logged = Logbook.Open(path);
            using var book = logged.Value;
            if (logged.Problem is { } closed) problems.Add(closed);
            if (book is not null) DesignSaving.Write(book, path, change.Text, counts ? "Shots let count" : "Shots set aside", clock.GetUtcNow(), problems);
        }

        return problems.Count == 0;
    }

    private int Refuse(IReadOnlyCollection<Problem> problems)
    {
        foreach (var problem in problems) screen.Error.WriteLine($"{problem.Message} {problem.Suggestion}".Trim());
        return ExitCode.Input;
    }
}
