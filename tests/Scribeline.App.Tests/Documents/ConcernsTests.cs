using Scribeline.App.Documents;
using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.App.Tests.Documents;

public class ConcernsTests
{
    private static readonly OutlineMap Root = DesignOutline.Of(File.ReadAllText(Path.Combine(Run.Examples, "night-heron", "rocket.yaml")))!;

    [Fact]
    public void Every_question_names_inputs_that_are_in_the_example() => Assert.All(
        Questionnaire.All.Where(q => q.Id is not ("templates" or "build-order" or "as-built" or "cut-list")), q => Assert.NotEmpty(Concerns.FieldsOf(q.Id, Root)));

    [Theory]
    [InlineData("parts[3].fins[0]", "stable")]
    [InlineData("parts[3]", "flutter")]
    [InlineData("joints[0]", "lets-go")]
    [InlineData("charges[0]", "bursts-nothing")]
    [InlineData("rail", "rail-exit")]
    public void A_thing_leads_to_the_questions_it_touches(string path, string question) => Assert.Contains(question, Concerns.QuestionsOf(path));

    [Theory]
    [InlineData("parts[3].fins[0]", "fires")]
    [InlineData("rail", "lets-go")]
    public void A_thing_does_not_lead_to_others(string path, string question) => Assert.DoesNotContain(question, Concerns.QuestionsOf(path));

    // What is said to matter does: a change of one such value changes the answer.
    [Theory]
    [InlineData("stable", "parts[3].fins[0].span", "4.2 in")]
    [InlineData("flutter", "parts[3].fins[0].root", "7 in")]
    [InlineData("rail-exit", "rail.usable length", "7 ft")]
    [InlineData("descends", "stowed[0].canopy.diameter", "60 in")]
    [InlineData("lets-go", "joints[0].pins.count", "4")]
    [InlineData("fires", "firing[0].lead resistance", "0.9 Ω")]
    public void What_is_said_to_matter_does(string question, string path, string value)
    {
        Assert.Contains(Concerns.FieldsOf(question, Root), f => f.Path == path);
        var file = Path.Combine(Run.Examples, "night-heron", "rocket.yaml");
        var text = File.ReadAllText(file);
        var asked = Questionnaire.Named(question)!;
        var before = asked.Ask(Studies.Of(DesignFile.ReadText(text, file).Design!).Nominal!);
        var after = asked.Ask(Studies.Of(DesignFile.ReadText(DesignText.Replace(text, path, value).Text, file).Design!).Nominal!);
        Assert.NotEqual(before.Findings, after.Findings);
    }
}
