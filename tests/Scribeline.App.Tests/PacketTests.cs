using Scribeline.App.Tests.Examples;
using Scribeline.Drawing.Packets;
using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Questions;
using Scribeline.Store;
using Scribeline.Tests;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Outline;

namespace Scribeline.App.Tests;

/// <summary>The packet, read back by another library: whole, legible, and telling what the terminal tells.</summary>
public class PacketTests
{
    public static TheoryData<string, string> Sheets => [.. Run.ExampleNames.SelectMany(e => new[] { "a4", "letter" }.Select(p => (e, p)))];

    private static PacketContents Contents(Study study, string paper = "a4") =>
        new(study, [.. Questionnaire.All.Select(q => q.Ask(study))], new(study.Rocket.Name, "0.1.0", "0123456789ab"), "rocket.yaml", 0, 1, Paper.Named(paper)!);

    [Theory, MemberData(nameof(Sheets))]
    public void Every_page_of_an_example_is_legible_and_named(string example, string paper)
    {
        var packet = Contents(Example.Nominal(example), paper);
        var file = Packet.Pdf(packet);
        Assert.InRange(file.Length, 100_000, 3 * 1024 * 1024);
        using var pdf = PdfDocument.Open(file);
        Assert.All(pdf.GetPages(), page =>
        {
            Assert.Empty(PageReading.Faults(page));
            var text = Text(page);
            Assert.Contains($"page {page.Number} of {pdf.NumberOfPages}", text, StringComparison.Ordinal);
            Assert.Contains("design 0123456789ab · scribeline 0.1.0", text, StringComparison.Ordinal);
            Assert.Contains(packet.Facts.Design, text, StringComparison.Ordinal);
        });

        // Chapters in their order, each on the page its bookmark says.
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var chapters = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Where(n => n.Level == 0).ToList();
        Assert.Equal(
            ["Summary for the range safety officer", "General arrangement", "Joints", "Answers with working", "What if something fails", "Drill sheets", "Building", "Flight card", "Checklists", "Cautions"],
            chapters.Select(c => c.Title));
        Assert.All(chapters.Skip(1), c => Assert.Contains(c.Title, Text(pdf.GetPage(c.PageNumber)), StringComparison.Ordinal));
        Assert.Equal(1, chapters[0].PageNumber);
        Assert.Equal(2, chapters[1].PageNumber);
    }

    [Fact]
    public void It_tells_what_the_terminal_tells()
    {
        using var scratch = new ScratchFolder();
        var packet = Run.Of("packet", "examples/night-heron", "--to", scratch.At("p.pdf"), "--samples", "3", "--seed", "4");
        Assert.Equal("", packet.Error);
        var all = ExampleAnswers("night-heron", 3, 4);

        // Before the flight there is nothing to print of its record.
        var answers = all.Where(a => !a.AwaitsFlight).ToList();
        Assert.Equal(3, all.Count - answers.Count);
        using var pdf = PdfDocument.Open(scratch.At("p.pdf"));
        var text = string.Join(' ', pdf.GetPages().Select(Text));
        Assert.All(answers, a =>
        {
            Assert.Contains(a.Question.Text, text, StringComparison.Ordinal);
            Assert.Contains($"{VerdictWord(a)} {a.Question.Text}", packet.Output.Replace("\n", " ", StringComparison.Ordinal).Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.All(a.Findings, f =>
            {
                Assert.Contains(Shown.Text(f.Value, f.Unit, true), text, StringComparison.Ordinal);
                if (f.Limit is { } limit) Assert.Contains(AnswerText.Limit(limit, f.Unit, true), text, StringComparison.Ordinal);
                if (f.Spread is { } spread) Assert.Contains(AnswerText.Spread(spread, f, true), text, StringComparison.Ordinal);
            });
        });
        Assert.Contains(AnswerText.Count(answers), text, StringComparison.Ordinal);
        Assert.Contains(AnswerText.Count(all), packet.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_design_gives_the_same_bytes()
    {
        using var scratch = new ScratchFolder();
        foreach (var name in new[] { "a.pdf", "b.pdf" }) Run.Of("packet", "examples/sand-martin", "--to", scratch.At(name), "--samples", "2");
        Assert.Equal(File.ReadAllBytes(scratch.At("a.pdf")), File.ReadAllBytes(scratch.At("b.pdf")));
    }

    [Fact]
    public void A_design_that_leaves_much_open_still_prints_and_says_so()
    {
        var reading = DesignFile.ReadText(PlainDesign.Text("Nobody's first rocket, with a name far too long for the head of any page that was ever printed"));
        Assert.Empty(reading.Problems);
        var packet = Contents(Engine.Questions.Studies.Of(reading.Design!).Nominal!);
        Assert.Contains(packet.Answers, a => a.Verdict == Verdict.Open);
        using var pdf = PdfDocument.Open(Packet.Pdf(packet));
        Assert.All(pdf.GetPages(), page => Assert.Empty(PageReading.Faults(page)));
        var text = string.Join(' ', pdf.GetPages().Select(Text));
        var missing = packet.Answers.First(a => a.Missing.Count > 0).Missing[0];
        Assert.Contains(missing, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_it_cannot_be_written_nothing_is_claimed()
    {
        var run = Run.Of("packet", "examples/night-heron", "--to", "no/such/folder/p.pdf", "--samples", "0");
        Assert.Equal(2, run.Code);
        Assert.Equal("", run.Output);
        Assert.Contains("cannot be written", run.Error, StringComparison.Ordinal);
    }

    private static string VerdictWord(Answer answer) => AnswerText.Word(answer.Verdict);

    private static IReadOnlyList<Answer> ExampleAnswers(string name, int cases, ulong seed)
    {
        var studies = Engine.Questions.Studies.Of(DesignFile.Read(Path.Combine(Run.Examples, name)).Design!, seed);
        return Enquiry.Ask(Questionnaire.All, studies.Nominal!, studies.Case, cases, _ => { }, CancellationToken.None);
    }

    // Words in the order they were drawn, one blank between them.
    private static string Text(Page page)
    {
        var text = new System.Text.StringBuilder();
        Letter? before = null;
        foreach (var letter in page.Letters)
        {
            var apart = before is not null && (Math.Abs(letter.StartBaseLine.Y - before.EndBaseLine.Y) > 0.5 || Math.Abs(letter.StartBaseLine.X - before.EndBaseLine.X) > 0.8);
            if (apart && text.Length > 0 && text[^1] != ' ') text.Append(' ');
            text.Append(letter.Value);
            before = letter;
        }

        return string.Join(' ', text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
