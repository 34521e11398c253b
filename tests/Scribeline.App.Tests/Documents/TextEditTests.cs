using CsCheck;
using Scribeline.App.Documents;

namespace Scribeline.App.Tests.Documents;

public class TextEditTests
{
    private static readonly Gen<string> Text = Gen.String[Gen.Char["ab\n"], 0, 12];

    [Fact]
    public void The_change_between_two_texts_leads_from_one_to_the_other_and_back() => Gen.Select(Text, Text).Sample((before, after) =>
    {
        var edit = TextEdit.Between(before, after);
        return edit.In(before) == after && edit.Inverse().In(after) == before;
    });

    [Fact]
    public void Undoing_everything_gives_the_first_text_and_redoing_everything_the_last() => Gen.Select(Text, Gen.Select(Text, Gen.OneOf(Gen.Const("a"), Gen.Const("b"), Gen.Null(Gen.Const("c")))).Array[0, 8]).Sample((first, steps) =>
    {
        EditHistory history = new();
        var text = first;
        foreach (var (next, key) in steps)
        {
            history.Did(TextEdit.Between(text, next), text, key);
            text = next;
        }

        var last = text;
        while (history.CanUndo) text = history.Undo().Aggregate(text, (now, step) => step.Edit.In(now));
        var back = text == first;
        while (history.CanRedo) text = history.Redo().Aggregate(text, (now, step) => step.Edit.In(now));
        return back && text == last;
    });

    [Fact]
    public void Changes_of_two_files_are_undone_in_turn_and_do_not_move_each_other()
    {
        EditHistory history = new();
        history.Did(TextEdit.Between("one", "zero one"), "one", null);
        history.Did(TextEdit.Between("two", "2"), "two", null, "b");
        Assert.Equal("1 one", history.Fit(TextEdit.Between("zero one", "1 one"), 1)!.In("zero one"));
        Assert.Equal("two", history.TextOf(0, "2", "b"));
        Assert.Equal(("b", "two"), history.Undo() is [var first] ? (first.File, first.Edit.In("2")) : default);
        Assert.Equal(("", "one"), history.Undo() is [var second] ? (second.File, second.Edit.In("zero one")) : default);
        Assert.False(history.CanUndo);
    }

    [Fact]
    public void Changes_of_two_windows_in_two_places_are_both_kept()
    {
        const string text = "one two three";
        EditHistory history = new();
        var mine = TextEdit.Between(text, "one two four");
        history.Did(TextEdit.Between(text, "zero one two three"), text, null);
        Assert.Equal("zero one two four", history.Fit(mine, 0)!.In("zero one two three"));
    }

    [Fact]
    public void Changes_of_the_same_letters_are_told()
    {
        const string text = "one two three";
        EditHistory history = new();
        history.Did(TextEdit.Between(text, "one 2 three"), text, null);
        Assert.Null(history.Fit(TextEdit.Between(text, "one zwei three"), 0));
    }

    [Fact]
    public void An_earlier_version_can_be_told() => Gen.Select(Text, Text.Array[1, 6]).Sample((first, steps) =>
    {
        EditHistory history = new();
        List<string> versions = [first];
        foreach (var next in steps.Where(s => s != versions[^1]).ToList())
        {
            if (next == versions[^1]) continue;
            history.Did(TextEdit.Between(versions[^1], next), versions[^1], null);
            versions.Add(next);
        }

        return Enumerable.Range(0, versions.Count).All(v => history.TextOf(v, versions[^1]) == versions[v]);
    });
}
