using CsCheck;
using Scribeline.Store.Logbooks;

namespace Scribeline.Store.Tests.Logbooks;

public class LineDifferenceTests
{
    // The example of Myers (1986), figure 1: ABCABBA into CBABAC takes five changes, and leaves four letters in place.
    [Fact]
    public void Finds_the_published_shortest_script()
    {
        var lines = LineDifference.Between("A\nB\nC\nA\nB\nB\nA\n", "C\nB\nA\nB\nA\nC\n");
        Assert.Equal(4, lines.Count(l => l.Same));
        Assert.Equal(5, lines.Count(l => !l.Same));
    }

    [Fact]
    public void Numbers_lines_and_shows_the_old_before_the_new()
    {
        var lines = LineDifference.Between("one\ntwo\nthree", "one\r\n2\r\nthree\r\nfour\r\n");
        Assert.Equal([new("one", 1, 1), new("two", 2, null), new("2", null, 2), new("three", 3, 3), new("four", null, 4)], lines);
    }

    [Fact]
    public void Gives_back_both_texts_with_as_few_changes_as_there_can_be() =>
        Gen.Select(Gen.Int[0, 3].Array[0, 12], Gen.Int[0, 3].Array[0, 12]).Sample((before, after) =>
        {
            var lines = LineDifference.Between(Text(before), Text(after));
            Assert.Equal(before.Select(b => $"{b}"), lines.Where(l => l.Old is not null).OrderBy(l => l.Old).Select(l => l.Text));
            Assert.Equal(after.Select(a => $"{a}"), lines.Where(l => l.New is not null).OrderBy(l => l.New).Select(l => l.Text));
            Assert.Equal(Enumerable.Range(1, before.Length), lines.Select(l => l.Old).OfType<int>());
            Assert.Equal(Enumerable.Range(1, after.Length), lines.Select(l => l.New).OfType<int>());
            Assert.Equal(LongestCommon(before, after), lines.Count(l => l.Same));
        });

    [Fact]
    public void Texts_without_a_line_in_common_are_shown_as_replaced()
    {
        var lines = LineDifference.Between(Text(Enumerable.Range(0, 3000)), Text(Enumerable.Range(5000, 3000)));
        Assert.Equal(6000, lines.Count);
        Assert.DoesNotContain(lines, l => l.Same);
    }

    private static string Text(IEnumerable<int> lines) => string.Concat(lines.Select(l => $"{l}\n"));

    // By the table of all pairs of beginnings, the textbook way.
    private static int LongestCommon(int[] one, int[] other)
    {
        var table = new int[one.Length + 1, other.Length + 1];
        for (var i = 1; i <= one.Length; i++)
        {
            for (var j = 1; j <= other.Length; j++)
                table[i, j] = one[i - 1] == other[j - 1] ? table[i - 1, j - 1] + 1 : Math.Max(table[i - 1, j], table[i, j - 1]);
        }

        return table[one.Length, other.Length];
    }
}
