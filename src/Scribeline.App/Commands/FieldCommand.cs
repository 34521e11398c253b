using System.CommandLine;
using Scribeline.App.Json;
using Scribeline.App.Terminal;
using Scribeline.Engine.Quantities;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Commands;

/// <summary>field: what the day asks: conditions for a person to confirm, and the lists to work through; both go into the logbook.</summary>
internal sealed class FieldCommand
{
    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline field night-heron
        scribeline field night-heron --confirm N06b --confirm N07d
        scribeline field night-heron --done arming/rocket --done arming/arming-switch-on
        scribeline field night-heron --again arming
        scribeline field night-heron --all
        """;

    private readonly Screen screen;
    private readonly TimeProvider clock;
    private readonly Argument<string> file = CommonOptions.File();
    private readonly Option<bool> json = CommonOptions.Json();
    private readonly Option<string[]> done = Several("--done", "ITEM", "Tick this item off; may be given several times.");
    private readonly Option<string[]> undo = Several("--undo", "ITEM", "Take the tick of this item back; may be given several times.");
    private readonly Option<string[]> again = Several("--again", "LIST", "Begin this list again: its ticks are taken back. all begins every list again.");
    private readonly Option<string[]> confirm = Several("--confirm", "ID", "Say, as a person, that this condition is met, today, with this design and motor; may be given several times.");
    private readonly Option<string[]> withdraw = Several("--withdraw", "ID", "Take such a word back; may be given several times.");
    private readonly Option<bool> all = new("--all") { Description = "Show every condition and every item, not only what comes next." };

    public FieldCommand(Screen screen, TimeProvider? clock = null)
    {
        (this.screen, this.clock) = (screen, clock ?? TimeProvider.System);
        Command = new Command("field", "Tells what the day asks: conditions that a person must confirm, and the checklists; keeps both in the logbook beside the design.")
        {
            file, confirm, withdraw, done, undo, again, all, json,
        };
        Command.SetAction(Run);
    }

    public Command Command { get; }

    private static Option<string[]> Several(string name, string holds, string says) => new(name) { Description = says, HelpName = holds, Arity = ArgumentArity.OneOrMore };

    private int Run(ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(file);
        var opened = OpenedDesign.Open(path, clock: clock);
        if (opened.Studies is not { Nominal: { } study } || opened.Reading.Path is not { } design) return opened.Refuse(screen, parsed.GetValue(json));

        List<Problem> problems = [];
        string[] ticked = parsed.GetValue(done) ?? [], taken = parsed.GetValue(undo) ?? [], begun = parsed.GetValue(again) ?? [];
        string[] given = parsed.GetValue(confirm) ?? [], withdrawn = parsed.GetValue(withdraw) ?? [];
        var changes = ticked.Length + taken.Length + begun.Length + given.Length + withdrawn.Length > 0;
        var book = changes ? Logbook.Open(design) : Logbook.OpenExisting(design);
        using var kept = book.Value;
        if (book.Problem is { } closed) return Refuse([closed]);
        var entries = new FieldEntries(study, FlightBasis.Of(opened.Reading, opened.FromLogbook), clock.GetLocalNow());
        if (changes)
        {
            entries.Confirm(kept!, given, withdrawn, problems);
            if (problems.Count == 0) entries.Again(kept!, begun, problems);
            if (problems.Count == 0) entries.Tick(kept!, ticked, taken, problems);
            if (problems.Count > 0) return Refuse(problems);
        }

        var progress = entries.Progress(kept, problems);
        if (problems.Count > 0) return Refuse(problems);
        if (given.Length + withdrawn.Length > 0)
        {
            opened = OpenedDesign.Open(path, clock: clock);
            if (opened.Studies is not { Nominal: { } anew }) return opened.Refuse(screen, parsed.GetValue(json));
            study = anew;
        }

        if (parsed.GetValue(json)) screen.Output.Write(JsonText.Of(FieldJson.Of(study, opened.File, progress)));
        else new FieldPage(screen.OpenPage(), study, clock).Write(opened.File, progress, parsed.GetValue(all));
        return ExitCode.Good;
    }

    private int Refuse(IReadOnlyCollection<Problem> problems)
    {
        foreach (var problem in problems) screen.Error.WriteLine($"{problem.Message} {problem.Suggestion}".Trim());
        return ExitCode.Input;
    }
}
