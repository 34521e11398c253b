using Scribeline.App.Terminal;
using Scribeline.Engine.Questions;
using Scribeline.Tests;

namespace Scribeline.App.Tests;

public class AnswerPageTests
{
    [Theory]
    [InlineData(80, "answers.txt")]
    [InlineData(50, "answers-narrow.txt")]
    public void Answers_read_as_approved(int width, string file)
    {
        var text = Render(width, false, true);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= width, line));
        Approved.Check(text, "tests/Scribeline.App.Tests/Approved/" + file);
    }

    [Fact]
    public void Every_word_of_a_long_name_is_there()
    {
        var words = Render(80, false, false).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
        foreach (var word in ExampleAnswers.All[2].Findings[0].Name.Split(' ')) Assert.Contains(word, words);
    }

    [Fact]
    public void Colour_only_where_asked_for()
    {
        Assert.DoesNotContain('\u001b', Render(80, false, true));
        Assert.Contains('\u001b', Render(80, true, true));
    }

    [Fact]
    public void Working_can_be_redone_from_what_is_shown()
    {
        // sqrt(2 * 63.2 * 3.6) = 21.3316..., by hand.
        Assert.Contains("v = sqrt(2 * a * L) = 21.3316", Render(80, false, true), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_tables_are_not_shown_it_is_said_how_to_see_them() =>
        Assert.Contains("with --question how-high: height by motor (3 rows)", Render(80, false, false), StringComparison.Ordinal);

    [Theory]
    [InlineData(0, "0")]
    [InlineData(0.0254, "0.0254")]
    [InlineData(101325, "101325")]
    [InlineData(-2.0 / 3, "-0.6666667")]
    [InlineData(6.6743e-11, "6.6743E-11")]
    [InlineData(1234567890123, "1.234568E12")]
    [InlineData(double.NaN, "not known")]
    public void Numbers_of_a_working_have_seven_digits(double value, string shown) => Assert.Equal(shown, WorkingText.Number(value));

    private static string Render(int width, bool colour, bool working)
    {
        var writer = new StringWriter();
        new AnswerPage(new Page(writer, width, colour), inch: true, working, showTables: working).Write(ExampleAnswers.All);
        return writer.ToString();
    }
}
