using Scribeline.Tests;

namespace Scribeline.Store.Tests;

public class DesignCompletionTests
{
    [Theory]
    [InlineData("na|", "name")]
    [InlineData("|", "parts")]
    [InlineData("display: |", "inch")]
    [InlineData("parts:\n  - name: A\n    kind: |", "altimeter bay")]
    [InlineData("parts:\n  - name: A\n    kind: tube\n    |", "length")]
    [InlineData("parts:\n  - name: A\n    |\n    kind: tube\n", "motor mount")]
    [InlineData("parts:\n  - name: A\n    kind: tube\n    fins:\n      |", "root")]
    [InlineData("parts:\n  - name: A\n    kind: tube\n    fins: {sp|", "span")]
    [InlineData("parts:\n  - name: A\n    kind: tube\n    fins:\n      - {count: 3, shape: |", "elliptical")]
    [InlineData("joints:\n  - {between: [A, B], kind: pinned, pins: {|", "screw")]
    [InlineData("joints:\n  - {between: [A, B], kind: |", "pinned")]
    [InlineData("stowed:\n  - {in: A, canopy: {type: |", "annular")]
    [InlineData("charges:\n  - {name: A, powder: |", "4F")]
    [InlineData("rail: {usable length: 9 ft, |", "tilt")]
    public void Offers_what_can_stand_there(string marked, string word) => Assert.Contains(Offers(marked), o => o.Word == word);

    [Theory]
    [InlineData("name: A\n|", "name")]
    [InlineData("parts:\n  - name: A\n    kind: tube\n    length: 3 in\n    |", "length")]
    [InlineData("parts:\n  - name: A\n    kind: tube\n    |\n  - name: B\n    kind: nose cone\n", "shoulder")]
    [InlineData("rail: {usable length: 9 ft, |}", "usable length")]
    [InlineData("# na|", "name")]
    [InlineData("nonsense:\n  |", "name")]
    public void Does_not_offer_what_cannot(string marked, string word) => Assert.DoesNotContain(Offers(marked), o => o.Word == word);

    [Fact]
    public void What_is_offered_replaces_the_word_at_the_caret()
    {
        const string text = "parts:\n  - name: A\n    ki";
        var completion = DesignCompletion.At(text, text.Length);
        Assert.Equal("parts:\n  - name: A\n    kind: ", text[..completion.From] + completion.Offers.Single().Insert);
    }

    [Fact]
    public void Every_place_of_a_design_can_be_asked()
    {
        var text = PlainDesign.Text("Night Heron");
        for (var at = 0; at <= text.Length; at++) Assert.InRange(DesignCompletion.At(text, at).From, 0, at);
    }

    private static IEnumerable<CompletionOffer> Offers(string marked)
    {
        var at = marked.IndexOf('|', StringComparison.Ordinal);
        return DesignCompletion.At(marked.Remove(at, 1), at).Offers;
    }
}
