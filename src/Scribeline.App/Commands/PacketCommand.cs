using System.CommandLine;
using System.Globalization;
using Scribeline.App.Terminal;
using Scribeline.Drawing.Packets;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Commands;

/// <summary>packet: everything of one design on paper.</summary>
internal sealed class PacketCommand
{
    /// <summary>Shown beneath its help.</summary>
    public const string Examples =
        """
        scribeline packet examples/night-heron
        scribeline packet examples/night-heron --to night-heron.pdf --paper letter
        """;

    private readonly Screen screen;
    private readonly Argument<string> file = CommonOptions.File();
    private readonly Option<string> paper = CommonOptions.PaperSize();
    private readonly Option<int> samples = CommonOptions.Samples(20);
    private readonly Option<ulong> seed = CommonOptions.Seed();
    private readonly Option<string> to = new("--to") { Description = "Write to this file; left out, it is named after the rocket.", HelpName = "FILE.pdf" };

    public PacketCommand(Screen screen)
    {
        this.screen = screen;
        Command = new Command(
            "packet",
            "Prints the whole set to one PDF: summary for the range safety officer, answers with working, drill sheets at true size, build order, card, checklists.")
        {
            file, to, paper, samples, seed,
        };
        Command.SetAction((parsed, cancel) => Task.Run(() => Run(parsed, cancel), cancel));
    }

    public Command Command { get; }

    private int Run(ParseResult parsed, CancellationToken cancel)
    {
        var opened = OpenedDesign.Open(parsed.GetRequiredValue(file), parsed.GetValue(seed));
        if (opened.Studies is not { Nominal: { } study } studies) return opened.Refuse(screen, asJson: false);
        var cases = parsed.GetValue(samples);
        IReadOnlyList<Answer> answers;
        using (var progress = screen.Progress())
        {
            var asked = Questionnaire.All.Where(q => q.Place != Place.Log || study.Recorded is not null).ToArray();
            answers = Enquiry.Ask(asked, study, studies.Case, cases, share => progress.Show(share), cancel);
        }

        var path = parsed.GetValue(to) ?? $"{NewCommand.FolderName(study.Rocket.Name)}-packet.pdf";
        var packet = new PacketContents(study, answers, opened.Facts, opened.File, cases, parsed.GetValue(seed), Paper.Named(parsed.GetRequiredValue(paper))!);
        var content = Packet.Pdf(packet);
        if (!OutputFile.Write(screen, path, content)) return ExitCode.Input;
        Write(packet, path, content.Length);
        return answers.Where(a => a.Question.Place != Place.Log).Max(a => a.Verdict) >= Verdict.Open ? ExitCode.NotReady : ExitCode.Good;
    }

    private void Write(PacketContents packet, string path, int bytes)
    {
        var page = screen.OpenPage();
        page.Paragraph(packet.Facts.Design, style: Page.Bold);
        foreach (var answer in packet.Answers)
        {
            var headline = answer.Governing is { } first ? $": {Shown.Text(first.Value, first.Unit, packet.Inch)} {first.Name}" : "";
            page.Paragraph($"{answer.Question.Text}{headline}", hanging: $"{VerdictMark.Of(answer.Verdict),-8}");
        }

        page.Gap();
        page.Paragraph(AnswerText.Count(packet.Answers), style: Page.Bold);
        page.Paragraph(string.Create(CultureInfo.InvariantCulture, $"{path}, {packet.Paper.Name}, {bytes / 1024.0:0} KB, design {packet.Facts.Fingerprint}"));
        page.Paragraph(Cautions.Everything, style: Page.Quiet);
    }
}
