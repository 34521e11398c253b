using Scribeline.Tests;

namespace Scribeline.Store.Tests;

public class DesignItemsTests
{
    private static readonly string Text = PlainDesign.Text("Night Heron");

    [Theory]
    [InlineData("a: [1, 2]\n", "a", "3", null, "a: [1, 2, 3]\n")]
    [InlineData("a: [1, 2]\n", "a", "3", 0, "a: [3, 1, 2]\n")]
    [InlineData("a: []\n", "a", "3", null, "a: [3]\n")]
    [InlineData("a:\n  - {b: 1} # one\n  - {b: 2}\nc: 4\n", "a", "{b: 3}", null, "a:\n  - {b: 1} # one\n  - {b: 2}\n  - {b: 3}\nc: 4\n")]
    [InlineData("a:\n  - b: 1\n    c: 2\n  - b: 2\n", "a", "{b: 3}", 1, "a:\n  - b: 1\n    c: 2\n  - {b: 3}\n  - b: 2\n")]
    [InlineData("a:\r\n- 1", "a", "2", null, "a:\r\n- 1\r\n- 2")]
    [InlineData("b: 1\n", "a", "{c: 1}", null, "b: 1\na: [{c: 1}]\n")]
    [InlineData("a: {c: 1}\n", "a", "{c: 2}", null, "a: [{c: 1}, {c: 2}]\n")]
    [InlineData("a:\n  c: 1\n  d: 2\ne: 3\n", "a", "{c: 2}", null, "a:\n  - c: 1\n    d: 2\n  - {c: 2}\ne: 3\n")]
    public void Adds_an_item(string text, string path, string item, int? index, string expected) =>
        Assert.Equal(expected, DesignText.Insert(text, path, item, index).Text);

    [Theory]
    [InlineData("a: [1, 2, 3]\n", "a[1]", "a: [1, 3]\n")]
    [InlineData("a: [1, 2, 3]\n", "a[2]", "a: [1, 2]\n")]
    [InlineData("a:\n  - b: 1\n    c: 2\n  # two\n  - b: 2\nd: 1\n", "a[0]", "a:\n  # two\n  - b: 2\nd: 1\n")]
    [InlineData("a:\n  - b: 1\n  - b: 2 # two\n\n# end\nd: 1\n", "a[1]", "a:\n  - b: 1\n\n# end\nd: 1\n")]
    [InlineData("a: [1]\nb: 2\n", "a[0]", "b: 2\n")]
    [InlineData("a: {b: {c: 1}, d: 2}\n", "a.b", "a: {d: 2}\n")]
    public void Takes_an_item_out(string text, string path, string expected) => Assert.Equal(expected, DesignText.TakeOut(text, path).Text);

    [Fact]
    public void What_was_added_last_can_be_taken_out_without_a_trace()
    {
        foreach (var list in (string[])["parts", "joints", "stowed", "charges", "firing", "parts[2].plates"])
        {
            var added = DesignText.Insert(Text, list, "{name: New}");
            Assert.Null(added.Problem);
            var number = DesignOutline.Of(added.Text)!.All.Count(m => m.OneOfMany && m.Path[..m.Path.LastIndexOf('[')] == list) - 1;
            Assert.Equal(Text, DesignText.TakeOut(added.Text, $"{list}[{number}]").Text);
        }
    }

    [Fact]
    public void Puts_a_map_under_a_new_key()
    {
        var change = DesignText.Put(Text, "parts[3].fins.tab", "{length: 6 in, depth: 1/2 in}");
        Assert.Null(change.Problem);
        Assert.Equal("6 in", DesignFile.ReadText(change.Text).Design!.Parts[3] is Engine.Design.TubeDesign { Fins: [{ Tab: { } tab }] } ? tab.Length.Text : "");
        Assert.NotNull(DesignText.Put(change.Text, "parts[3].fins.tab", "{}").Problem);
    }

    [Fact]
    public void Refuses_what_is_not_there()
    {
        Assert.NotNull(DesignText.TakeOut(Text, "parts[9]").Problem);
        Assert.NotNull(DesignText.Insert(Text, "parts[9].plates", "{}").Problem);
        Assert.NotNull(DesignText.Insert("a: [", "a", "1").Problem);
    }
}
