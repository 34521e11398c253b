using Scribeline.Tests;
using UglyToad.PdfPig;

namespace Scribeline.App.Tests;

/// <summary>templates, as a process.</summary>
public class TemplatesCommandTests
{
    public static TheoryData<string, string> Sheets => [.. Run.ExampleNames.SelectMany(e => new[] { "a4", "letter" }.Select(p => (e, p)))];

    [Theory, MemberData(nameof(Sheets))]
    public void Templates_of_an_example_are_legible_on_either_paper(string example, string paper)
    {
        using var scratch = new ScratchFolder();
        var run = Run.Of("templates", $"examples/{example}", "--to", scratch.Path, "--as", "pdf", "--paper", paper);
        Assert.Equal(0, run.Code);
        using var pdf = PdfDocument.Open(scratch.At("templates.pdf"));
        Assert.All(pdf.GetPages(), page => Assert.Empty(PageReading.Faults(page)));

        // Every sheet carries the bars to check: 100 mm up the side, 4 inches across.
        Assert.All(pdf.GetPages(), page =>
        {
            var lines = PageReading.Lines(page);
            Assert.Contains(lines, l => Math.Abs(l.Y1 - l.Y2) < 1e-6 && Math.Abs(Math.Abs(l.X1 - l.X2) - 101.6) < 0.01);
            Assert.Contains(lines, l => Math.Abs(l.X1 - 6.5) < 0.01 && Math.Abs(l.X1 - l.X2) < 1e-6 && Math.Abs(Math.Abs(l.Y1 - l.Y2) - 100) < 0.01);
        });
    }

    [Fact]
    public void Every_kind_of_file_is_written_once_for_each_template()
    {
        using var scratch = new ScratchFolder();
        var run = Run.Of("templates", "examples/night-heron", "--to", scratch.At("new/folder"));
        Assert.Equal(0, run.Code);
        var named = run.Output.Split('\n').Where(l => l.Contains(": ", StringComparison.Ordinal)).Select(l => l.Split(':')[0]).ToList();
        Assert.True(named.Count > 8);
        Assert.Equal(named.Count, named.Distinct().Count());
        Assert.All(named, n => Assert.All(["svg", "png", "dxf"], kind => Assert.True(new FileInfo(scratch.At($"new/folder/{n}.{kind}")).Length > 500, $"{n}.{kind}")));
        Assert.Equal((3 * named.Count) + 1, Directory.GetFiles(scratch.At("new/folder")).Length);
    }

    [Fact]
    public void What_cannot_be_typed_is_told()
    {
        Assert.Contains("--paper a4, or --paper letter", Run.Of("templates", "examples/night-heron", "--paper", "a3").Error, StringComparison.Ordinal);
        Assert.Contains("--as pdf", Run.Of("templates", "examples/night-heron", "--as", "gif").Error, StringComparison.Ordinal);
        using var scratch = new ScratchFolder();
        File.WriteAllText(scratch.At("taken"), "");
        var run = Run.Of("templates", "examples/night-heron", "--to", scratch.At("taken"));
        Assert.Equal(2, run.Code);
        Assert.Contains("cannot be made", run.Error, StringComparison.Ordinal);
    }
}
