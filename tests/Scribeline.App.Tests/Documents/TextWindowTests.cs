using Scribeline.App.Documents;

namespace Scribeline.App.Tests.Documents;

/// <summary>Typing faster than answers come back, and in two windows at once.</summary>
public sealed class TextWindowTests : IDisposable
{
    private readonly ScratchFolder scratch = new();
    private readonly DesignDocument document;
    private readonly TextWindow window = new();

    public TextWindowTests()
    {
        File.WriteAllText(scratch.At("rocket.yaml"), "name: A\ndrag scale: 1\n");
        document = DesignDocument.Open("a", scratch.At("rocket.yaml"), 0, TimeSpan.Zero).Document!;
    }

    private string Text => document.Reading.Text;

    [Fact]
    public void Letters_typed_before_the_answer_to_the_first_are_taken_once()
    {
        Assert.True(window.Type(document, "name: Ab\ndrag scale: 1\n", 0, 1));
        Assert.True(window.Type(document, "name: Abc\ndrag scale: 1\n", 0, 2));
        Assert.True(window.Type(document, "name: Abcd\ndrag scale: 1\n", 0, 3));
        Assert.Equal("name: Abcd\ndrag scale: 1\n", Text);
        Assert.Equal((null, document.Version, 3), window.Push(document));
        Assert.Null(window.Push(document));
        Assert.True(window.Type(document, "name: Abcde\ndrag scale: 1\n", document.Version, 4));
        Assert.Equal("name: Abcde\ndrag scale: 1\n", Text);
    }

    [Fact]
    public void The_same_text_twice_is_no_conflict()
    {
        Assert.True(window.Type(document, "other: 1\n", 0, 1));
        Assert.True(window.Type(document, "other: 1\n", 0, 2));
        Assert.Equal("other: 1\n", Text);
    }

    [Fact]
    public void A_word_put_in_whole_is_there_once_whatever_is_typed_next()
    {
        // The answer to the letters typed first may reach the window before the word is put in, or after.
        Assert.True(window.Type(document, "na\n", 0, 1));
        Assert.Equal((null, 1, 1), window.Push(document));
        document.Become("name: \n", "");
        Assert.Equal(("name: \n", 2, 1), window.Put(document));
        Assert.Null(window.Push(document));
        Assert.True(window.Type(document, "name: B\n", 2, 2));
        Assert.Equal("name: B\n", Text);
    }

    [Fact]
    public void What_another_window_changed_elsewhere_is_kept()
    {
        TextWindow other = new();
        Assert.True(other.Type(document, "name: A\ndrag scale: 1.2\n", 0, 1));
        Assert.True(window.Type(document, "name: Ab\ndrag scale: 1\n", 0, 1));
        Assert.Equal("name: Ab\ndrag scale: 1.2\n", Text);
        Assert.Equal(("name: Ab\ndrag scale: 1.2\n", 2, 1), window.Push(document));
    }

    [Fact]
    public void What_cannot_be_told_apart_is_refused_and_nothing_of_the_other_is_lost()
    {
        Assert.True(window.Type(document, "name: Ab\ndrag scale: 1\n", 0, 1));
        Assert.Null(document.Change("drag scale", "2"));
        Assert.False(window.Type(document, "name: Abc\ndrag scale: 1\n", 0, 2));
        Assert.Equal("name: Ab\ndrag scale: 2\n", Text);
        Assert.Equal(("name: Ab\ndrag scale: 2\n", 2, 2), window.Push(document));
    }

    public void Dispose()
    {
        document.Dispose();
        scratch.Dispose();
    }
}
