using Scribeline.Drawing.Sheets;
using Scribeline.Drawing.Tests.Templates;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;

namespace Scribeline.Drawing.Tests.Sheets;

/// <summary>Bookmarks added after the end of the file are read back by another library.</summary>
public class PdfOutlineTests
{
    private static Sheet Page(string title, params Bookmark[] bookmarks) =>
        new(Paper.A4, title, pen => pen.Words($"words of {title}", 20, 40, Lettering.Body)) { Bookmarks = bookmarks };

    private static readonly Sheet[] Sheets =
    [
        Page("first", new Bookmark("Summary")),
        Page("second", new Bookmark("Answers"), new Bookmark("Is it stable? α ≥ 1", 40, 1), new Bookmark("Zweite Frage: Größe (ж)", 80, 1)),
        Page("third", new Bookmark("Cautions \\ (all)")),
    ];

    [Fact]
    public void Bookmarks_lead_to_their_pages_in_their_order()
    {
        using var pdf = PdfDocument.Open(SheetOutput.Pdf(Sheets, SampleStrips.Facts, "set"));
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var all = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(n => (n.Title, n.Level, n.PageNumber)).ToList();
        Assert.Equal(
            [("Summary", 0, 1), ("Answers", 0, 2), ("Is it stable? α ≥ 1", 1, 2), ("Zweite Frage: Größe (ж)", 1, 2), ("Cautions \\ (all)", 0, 3)], all);
    }

    [Fact]
    public void Everything_else_stays_readable()
    {
        using var pdf = PdfDocument.Open(SheetOutput.Pdf(Sheets, SampleStrips.Facts, "set"));
        Assert.Equal(3, pdf.NumberOfPages);
        Assert.All(Enumerable.Range(1, 3), n => Assert.Contains($"page {n} of 3", string.Join(' ', pdf.GetPage(n).GetWords().Select(w => w.Text)), StringComparison.Ordinal));
        Assert.Equal("set", pdf.Information.Title);
        Assert.Equal("design 0123456789ab", pdf.Information.Subject);
    }

    [Fact]
    public void Without_bookmarks_nothing_is_added()
    {
        var file = SheetOutput.Pdf([Page("alone")], SampleStrips.Facts, "set");
        using var pdf = PdfDocument.Open(file);
        Assert.False(pdf.TryGetBookmarks(out _));
    }

    [Fact]
    public void Every_page_names_design_fingerprint_and_version()
    {
        using var pdf = PdfDocument.Open(SheetOutput.Pdf(Sheets, SampleStrips.Facts, "set"));
        Assert.All(pdf.GetPages(), page =>
        {
            var words = string.Join(' ', page.GetWords().Select(w => w.Text));
            Assert.Contains("Sample rocket", words, StringComparison.Ordinal);
            Assert.Contains("0123456789ab", words, StringComparison.Ordinal);
            Assert.Contains("scribeline 0.1.0", words, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Letters_the_typeface_lacks_become_question_marks()
    {
        Assert.Equal("a ? b", Lettering.Known("a 🚀 b"));
        Assert.Equal("≥ 1 · α", Lettering.Known("≥ 1 · α"));
        Assert.Equal("one two", Lettering.Known("one\ntwo"));
    }

    [Fact]
    public void A_word_longer_than_the_line_is_broken_not_lost()
    {
        var lines = Lettering.Body.Wrap("x " + new string('m', 200), 40);
        Assert.Equal(200, lines.Sum(l => l.Count(c => c == 'm')));
        Assert.All(lines, l => Assert.True(Lettering.Body.Width(l) <= 40));
        Assert.EndsWith("…", Lettering.Body.Cut(new string('m', 200), 40), StringComparison.Ordinal);
    }
}
