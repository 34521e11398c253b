using System.CommandLine;
using Scribeline.App.Json;
using Scribeline.App.Terminal;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Resolving;

namespace Scribeline.App.Commands;

/// <summary>answer: every question, or some, of one design.</summary>
internal sealed class AnswerCommand
{
    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline answer examples/night-heron
        scribeline answer examples/night-heron --question stable --working
        scribeline answer examples/night-heron --json --samples 1000 > answers.json
        """;

    private readonly Screen screen;
    private readonly Argument<string> file = CommonOptions.File();
    private readonly Option<bool> json = CommonOptions.Json();

    private readonly Option<string[]> question = new("--question", "-q")
    {
        Description = "Ask only this question; may be given several times.",
        HelpName = "ID",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<bool> working = new("--working", "-w")
    {
        Description = "Show every step: formula, values, unit, source.",
    };

    private readonly Option<int> samples = CommonOptions.Samples(100);
    private readonly Option<ulong> seed = CommonOptions.Seed();

    public AnswerCommand(Screen screen)
    {
        this.screen = screen;
        question.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Where(t => Questionnaire.Named(t.Value) is null)) result.AddError(Unknown(token.Value));
        });
        question.CompletionSources.Add(_ => Questionnaire.All.Select(q => new System.CommandLine.Completions.CompletionItem(q.Id)));
        Command = new Command(
            "answer",
            "Answers the questions of a design: value, limit, spread over the tolerances, verdict.")
        {
            file, question, working, samples, seed, json,
        };
        Command.SetAction((parsed, cancel) => Task.Run(() => Run(parsed, cancel), cancel));
    }

    public Command Command { get; }

    private int Run(ParseResult parsed, CancellationToken cancel)
    {
        var asJson = parsed.GetValue(json);
        var opened = OpenedDesign.Open(parsed.GetRequiredValue(file), parsed.GetValue(seed));
        if (opened.Studies is not { Nominal: { } study } studies) return opened.Refuse(screen, asJson);

        var ids = parsed.GetValue(question) ?? [];
        var questions = ids.Length == 0 ? Questionnaire.All : [.. Questionnaire.All.Where(q => ids.Contains(q.Id))];
        var cases = parsed.GetValue(samples);
        IReadOnlyList<Answer> answers;
        using (var progress = screen.Progress())
        {
            answers = Enquiry.Ask(questions, study, studies.Case, cases, share => progress.Show(share), cancel);
        }

        if (asJson) screen.Output.Write(JsonText.Of(AnswersJson.Of(study.Rocket.Name, opened.File, cases, parsed.GetValue(seed), answers)));
        else Write(opened.Added.Length == 0 ? opened.File : $"{opened.File} and {opened.Added} of its logbook", study.Rocket, answers, cases, parsed.GetValue(seed), parsed.GetValue(working), ids.Length > 0);

        // A rocket that was never flown may fly; asked for by name, that its record is missing counts.
        return answers.Where(a => ids.Length > 0 || a.Question.Place != Place.Log).Max(a => a.Verdict) >= Verdict.Open ? ExitCode.NotReady : ExitCode.Good;
    }

    private void Write(string designFile, Rocket rocket, IReadOnlyList<Answer> answers, int cases, ulong seed, bool showWorking, bool showTables)
    {
        var page = screen.OpenPage();
        page.Paragraph(rocket.Name, style: Page.Bold);
        page.Paragraph(cases == 0 ? $"{designFile}, as typed" : $"{designFile}, as typed and in {cases} cases of its tolerances (seed {seed})", style: Page.Quiet);
        page.Gap();
        new AnswerPage(page, rocket.Inch, showWorking, showTables).Write(answers);
        page.Paragraph(Cautions.Everything, style: Page.Quiet);
    }

    private static string Unknown(string typed) => Spelling.Nearest(typed, Questionnaire.All.Select(q => q.Id)) is { } meant
        ? $"There is no question \"{typed}\". Type instead: --question {meant}"
        : $"There is no question \"{typed}\". The questions are: {string.Join(", ", Questionnaire.All.Select(q => q.Id))}.";
}
