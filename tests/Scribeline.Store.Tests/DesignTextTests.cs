using CsCheck;
using Scribeline.Tests;

namespace Scribeline.Store.Tests;

public class DesignTextTests
{
    private static readonly string Text = PlainDesign.Text("Night Heron");

    [Theory]
    [InlineData("parts[3].fins.root", "8 in", "7-1/2 in ± 1/64 in")]
    [InlineData("parts[0].shoulder.length", "length: 3 in", "80 mm")]
    [InlineData("joints[0].pins.screw", "\"#2-56 nylon\"", "#4-40 nylon")]
    [InlineData("charges[1].mass", "130 % of Drogue A", "1.4 g")]
    [InlineData("name", "Night Heron", "Grey: Heron")]
    public void Replaces_one_value_and_nothing_else(string path, string old, string value)
    {
        foreach (var text in new[] { Text, Text.Replace("\n", "\r\n", StringComparison.Ordinal) })
        {
            var change = DesignText.Replace(text, path, value);
            Assert.Null(change.Problem);
            var same = text.Zip(change.Text).TakeWhile(p => p.First == p.Second).Count();
            var tail = text.Reverse().Zip(change.Text.Reverse()).TakeWhile(p => p.First == p.Second).Count();
            Assert.True(text.Length - same - tail <= old.Length);
            Assert.True(DesignFile.ReadText(change.Text).Good);
            Assert.Equal(DesignFile.ReadText(change.Text).Design, DesignFile.ReadText(DesignText.Replace(change.Text, path, value).Text).Design);
        }
    }

    [Fact]
    public void Every_value_can_be_replaced_by_itself_without_a_trace()
    {
        foreach (var path in (string[])["parts[0].length", "parts[1].inside", "parts[2].band.from aft end", "firing[1].apogee.after", "stowed[0].canopy.diameter", "joints[1].screws.clock"])
        {
            var change = DesignText.Replace(Text, path, "9 mm");
            Assert.Null(change.Problem);
            var old = Text[..^0];
            Assert.NotEqual(old, change.Text);
            Assert.Equal(old.Count(c => c == '#'), change.Text.Count(c => c == '#'));
            Assert.Equal(old.Split('\n').Length, change.Text.Split('\n').Length);
        }
    }

    [Fact]
    public void A_measured_value_keeps_how_it_is_known()
    {
        var change = DesignText.Replace("a: {value: 1 g, known: measured} # scale", "a", "2 g");
        Assert.Equal("a: {value: 2 g, known: measured} # scale", change.Text);
    }

    [Theory]
    [InlineData("a: 1 g # planned\nb: 2\n", "a", "a: {value: 3 g ± 1 g, known: measured} # planned\nb: 2\n")]
    [InlineData("x: {a: 1 g, b: 2}", "x.a", "x: {a: {value: 3 g ± 1 g, known: measured}, b: 2}")]
    [InlineData("x: {b: 2}", "x.a", "x: {b: 2, a: {value: 3 g ± 1 g, known: measured}}")]
    [InlineData("x:\n  b: 2\ny: 1\n", "x.a", "x:\n  b: 2\n  a: {value: 3 g ± 1 g, known: measured}\ny: 1\n")]
    [InlineData("a: {value: 1 g, known: tested} # shot\n", "a", "a: {value: 3 g ± 1 g, known: measured} # shot\n")]
    [InlineData("a: {value: 1 g}\n", "a", "a: {value: 3 g ± 1 g, known: measured}\n")]
    public void A_measured_value_is_marked_as_such(string text, string path, string expected)
    {
        var change = DesignText.Measured(text, path, "3 g ± 1 g");
        Assert.Null(change.Problem);
        Assert.Equal(expected, change.Text);
    }

    [Fact]
    public void A_measured_value_without_a_place_is_told()
    {
        var change = DesignText.Measured(Text, "joints[0].fit.friction", "20 N");
        Assert.Equal(Text, change.Text);
        Assert.Equal("There is no place for 'joints[0].fit.friction' in the file.", change.Problem!.Message);
    }

    [Theory]
    [InlineData("a:\n  b: 1 # one\n  c: 2 # two\n\n# end\nd: 3\n", "a.e", "4", "a:\n  b: 1 # one\n  c: 2 # two\n  e: 4\n\n# end\nd: 3\n")]
    [InlineData("a: {b: 1}\r\nc: 2\r\n", "a.e", "4", "a: {b: 1, e: 4}\r\nc: 2\r\n")]
    [InlineData("a: 1", "b", "2", "a: 1\nb: 2")]
    [InlineData("a:\n  - b: 1\n    c: 2\nd: 3\n", "a[0].e", "4", "a:\n  - b: 1\n    c: 2\n    e: 4\nd: 3\n")]
    [InlineData("a:\r\n  b:\r\n    - 1\r\nc: 2", "a.e", "4", "a:\r\n  b:\r\n    - 1\r\n  e: 4\r\nc: 2")]
    [InlineData("a:\nb: 1\n", "a", "2", "a: 2\nb: 1\n")]
    public void Adds_a_key_where_it_belongs(string text, string path, string value, string expected) =>
        Assert.Equal(expected, DesignText.Replace(text, path, value).Text);

    [Theory]
    [InlineData("a: 1\nb: 2 # two\n# end\nc: 3\n", "b", "a: 1\n# end\nc: 3\n")]
    [InlineData("x: {a: 1, b: 2, c: 3}", "x.a", "x: {b: 2, c: 3}")]
    [InlineData("x: {a: 1, b: 2, c: 3}", "x.b", "x: {a: 1, c: 3}")]
    [InlineData("x: {a: 1, b: 2, c: 3}", "x.c", "x: {a: 1, b: 2}")]
    [InlineData("limits:\n  stable.margin: 2\n  how-high: 3\n", "limits.stable.margin", "limits:\n  how-high: 3\n")]
    public void Removes_a_key_with_its_value(string text, string path, string expected) => Assert.Equal(expected, DesignText.Remove(text, path).Text);

    [Fact]
    public void What_cannot_be_done_leaves_the_text_alone()
    {
        Assert.All(
            [DesignText.Replace(Text, "parts", "x"), DesignText.Replace(Text, "parts[9].length", "1 m"), DesignText.Remove(Text, "parts[0].name"), DesignText.Replace("a: [1", "a", "2"), DesignText.Remove(Text, "none")],
            c => Assert.NotNull(c.Problem));
        Assert.Equal(Text, DesignText.Replace(Text, "parts[9].length", "1 m").Text);
    }

    [Fact]
    public void Any_text_reads_back_as_written() => Gen.String.Where(t => t.All(c => !char.IsControl(c) && !char.IsSurrogate(c) && c is not ('\u0085' or '\u2028' or '\u2029' or '\uFEFF' or '\uFFFE' or '\uFFFF')) && t.Trim().Length > 0).Sample(
        text => Assert.Null(DesignText.Replace("a: 1\nb: {c: 2}\n", "b.c", text).Problem));

    [Fact]
    public void Writing_leaves_no_litter_and_keeps_the_mark()
    {
        using var folder = new TemporaryFolder();
        var path = folder.Path("rocket.yaml");
        File.WriteAllBytes(path, [0xEF, 0xBB, 0xBF, (byte)'a']);
        SafeWriting.Write(path, "name: °\n");
        Assert.Equal([0xEF, 0xBB, 0xBF, .. "name: °\n"u8], File.ReadAllBytes(path));
        Assert.Single(Directory.GetFiles(folder.Path("")));
        Assert.ThrowsAny<Exception>(() => SafeWriting.Write(folder.Path("none/rocket.yaml"), "x"));
    }
}
