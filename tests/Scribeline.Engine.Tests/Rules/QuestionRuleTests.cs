using System.Text.RegularExpressions;
using Scribeline.Engine.Questions;
using Scribeline.Tests;

namespace Scribeline.Engine.Tests.Rules;

/// <summary>What every question owes its readers.</summary>
public partial class QuestionRuleTests
{
    [Fact]
    public void Every_question_class_is_asked()
    {
        var classes = typeof(Question).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Question)) && !t.IsAbstract);
        Assert.Equal(classes.Select(t => t.Name).Order(StringComparer.Ordinal), Questionnaire.All.Select(q => q.GetType().Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_question_has_its_entry_in_the_documentation()
    {
        var text = File.ReadAllText(Path.Combine(Approved.Root, "docs", "questions.md"));
        Assert.All(Questionnaire.All, q => Assert.Contains($"### `{q.Id}` — {q.Text}", text, StringComparison.Ordinal));
        var entries = Entry().Matches(text).Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal);
        Assert.Equal(Questionnaire.All.Select(q => q.Id).Order(StringComparer.Ordinal), entries);
    }

    [Fact]
    public void Ids_are_words_with_dashes() => Assert.All(Questionnaire.All, q => Assert.Matches("^[a-z]+(-[a-z]+)*$", q.Id));

    [GeneratedRegex("^### `([^`]+)`", RegexOptions.Multiline)]
    private static partial Regex Entry();
}
