using System.CommandLine;
using Scribeline.App.Json;
using Scribeline.App.Terminal;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Commands;

/// <summary>build: what is done, what sets, what comes next; ticks and measured values go into the logbook.</summary>
internal sealed class BuildCommand
{
    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline build night-heron
        scribeline build night-heron --done booster-fins/bond --note "12 g of mix, 21 C"
        scribeline build night-heron --measured "Booster mass = 1446 g ± 2 g"
        scribeline build night-heron --all
        """;

    private readonly Screen screen;
    private readonly TimeProvider clock;
    private readonly Argument<string> file = CommonOptions.File();
    private readonly Option<bool> json = CommonOptions.Json();
    private readonly Option<string[]> done = Several("--done", "STEP", "Tick this step off, or all steps of a place such as booster-fins; may be given several times.");
    private readonly Option<string[]> undo = Several("--undo", "STEP", "Take the tick of this step back; may be given several times.");
    private readonly Option<string[]> measured = Several("--measured", "NAME = VALUE", "Keep a measured value, such as \"Booster mass = 1446 g ± 2 g\"; nothing after = takes it back.");
    private readonly Option<string> note = new("--note") { Description = "Words that go with the ticks.", HelpName = "TEXT" };
    private readonly Option<bool> write = new("--write") { Description = "Write the measured values into the design, where each becomes the plan." };
    private readonly Option<bool> all = new("--all") { Description = "Show every step, not only the next ones." };

    public BuildCommand(Screen screen, TimeProvider? clock = null)
    {
        (this.screen, this.clock) = (screen, clock ?? TimeProvider.System);
        Command = new Command("build", "Tells what to build next and why; keeps what is done and what was measured in the logbook beside the design.")
        {
            file, done, undo, note, measured, write, all, json,
        };
        Command.SetAction(Run);
    }

    public Command Command { get; }

    private static Option<string[]> Several(string name, string holds, string says) => new(name) { Description = says, HelpName = holds, Arity = ArgumentArity.OneOrMore };

    private int Run(ParseResult parsed)
    {
        var opened = OpenedDesign.Open(parsed.GetRequiredValue(file));
        if (opened.Studies is not { Nominal: { } study } || opened.Reading.Path is not { } path) return opened.Refuse(screen, parsed.GetValue(json));
        if (study.BuildOrder.Network is not { } network) throw new InvalidOperationException($"Steps wait for each other: {string.Join(", ", study.BuildOrder.Cycle)}.");

        List<Problem> problems = [];
        string[] ticked = parsed.GetValue(done) ?? [], taken = parsed.GetValue(undo) ?? [], values = parsed.GetValue(measured) ?? [];
        var changes = ticked.Length + taken.Length + values.Length > 0 || parsed.GetValue(write);
        var book = changes ? Logbook.Open(path) : Logbook.OpenExisting(path);
        using var kept = book.Value;
        if (book.Problem is { } closed) return Refuse([closed]);
        var entries = new BuildEntries(study.Rocket.Build, network, DesignMeasures.Of(opened.Reading.Design!), clock.GetUtcNow());
        if (changes)
        {
            entries.Tick(kept!, ticked, taken, parsed.GetValue(note) ?? "", problems);
            entries.Measure(kept!, values, problems);
            if (problems.Count == 0 && parsed.GetValue(write)) entries.Write(kept!, path, opened.Reading.Text, problems);
            if (problems.Count > 0) return Refuse(problems);
        }

        var ticks = kept?.Progress() ?? new([]);
        var sizes = kept?.Measured() ?? new([]);
        if ((ticks.Problem ?? sizes.Problem) is { } unread) return Refuse([unread]);
        var progress = BuildProgress.Of(study.Rocket.Build, network, ticks.Value!, clock.GetUtcNow());
        if (parsed.GetValue(json)) screen.Output.Write(JsonText.Of(BuildJson.Of(study.Rocket.Name, opened.File, progress, sizes.Value!)));
        else new BuildPage(screen.OpenPage(), study.Rocket, entries.Known, clock).Write(opened.File, progress, sizes.Value!, parsed.GetValue(all));
        return ExitCode.Good;
    }

    private int Refuse(IReadOnlyCollection<Problem> problems)
    {
        foreach (var problem in problems) screen.Error.WriteLine($"{problem.Message} {problem.Suggestion}".Trim());
        return ExitCode.Input;
    }
}
