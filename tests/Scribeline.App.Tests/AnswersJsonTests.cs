using System.Text.Json;
using Scribeline.App.Json;
using Scribeline.Engine.Questions;
using Scribeline.Tests;

namespace Scribeline.App.Tests;

public class AnswersJsonTests
{
    [Fact]
    public void Reads_as_approved() => Approved.Check(Text(ExampleAnswers.All), "tests/Scribeline.App.Tests/Approved/answers.json");

    [Fact]
    public void Every_digit_survives()
    {
        var value = JsonDocument.Parse(Text(ExampleAnswers.All)).RootElement.GetProperty("answers")[0].GetProperty("findings")[1].GetProperty("value");
        Assert.Equal(0.0872664626, value.GetDouble());
    }

    [Fact]
    public void What_is_not_known_is_null()
    {
        var answer = ExampleAnswers.All[0] with { Findings = [Finding.Of("margin", double.NaN, Unit.Calibre)] };
        var finding = JsonDocument.Parse(Text([answer])).RootElement.GetProperty("answers")[0].GetProperty("findings")[0];
        Assert.Equal(JsonValueKind.Null, finding.GetProperty("value").ValueKind);
        Assert.Equal("open", finding.GetProperty("verdict").GetString());
    }

    [Fact]
    public void Every_unit_has_a_symbol() => Assert.All(Enum.GetValues<Unit>(), unit => Assert.NotNull(UnitSymbol.Of(unit)));

    private static string Text(IReadOnlyList<Answer> answers) => JsonText.Of(AnswersJson.Of("Night Heron", "rocket.yaml", 200, 1, answers));
}
