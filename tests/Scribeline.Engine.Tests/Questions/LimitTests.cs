using Scribeline.Engine.Questions;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Tests.Questions;

public class LimitTests
{
    private static readonly Limit Must = new("x.y", 10, Sense.AtLeast, 1, Must: true, "test");
    private static readonly Limit Should = Must with { Must = false };

    [Theory]
    [InlineData(12, null, Verdict.Clear)]
    [InlineData(10.5, null, Verdict.Watch)]
    [InlineData(9.9, null, Verdict.Stop)]
    [InlineData(12, 0.995, Verdict.Clear)]
    [InlineData(12, 0.97, Verdict.Watch)]
    [InlineData(12, 0.94, Verdict.Stop)]
    [InlineData(double.NaN, null, Verdict.Stop)]
    public void A_must_is_judged_by_value_and_share(double value, double? share, Verdict expected) => Assert.Equal(expected, Must.Judge(value, share));

    [Theory]
    [InlineData(12, 0.5, Verdict.Watch)]
    [InlineData(9.9, 1.0, Verdict.Stop)]
    public void A_should_stops_only_when_the_nominal_fails(double value, double? share, Verdict expected) => Assert.Equal(expected, Should.Judge(value, share));

    [Fact]
    public void A_builders_own_limit_counts_before_the_table()
    {
        var table = new LimitTable([new OwnLimit("stable.margin", 1.5)]);
        Assert.Equal(1.5, table["stable.margin"].Value);
        Assert.Contains("design file", table["stable.margin"].Source, StringComparison.Ordinal);
        Assert.Equal(15.24, table["rail-exit.speed"].Value);
    }

    [Fact]
    public void Every_limit_has_a_source_and_belongs_to_a_question()
    {
        Assert.All(LimitRow.All, row => Assert.False(string.IsNullOrWhiteSpace(row.Source), row.Id));
        Assert.All(LimitRow.All, row => Assert.NotNull(Questionnaire.Named(row.Id.Split('.')[0])));
    }

    // Hyndman & Fan (1996), Sample quantiles in statistical packages, definition 7: for 1..5 the 5 % quantile is 1.2, the 95 % one 4.8.
    [Fact]
    public void Spread_counts_cases_and_interpolates_between_them()
    {
        var spread = Spread.Of([3, 1, 2, 5, 4, double.NaN], new Limit("x.y", 2, Sense.AtLeast, 0, Must: true, "test"))!;
        Assert.Equal(3, spread.Mean, 1e-12);
        Assert.Equal(1.2, spread.Low, 1e-12);
        Assert.Equal(4.8, spread.High, 1e-12);
        Assert.Equal(4.0 / 6, spread.Meets!.Value, 1e-12);
    }

    [Fact]
    public void A_missing_input_makes_an_answer_open_and_a_failed_limit_stops_it()
    {
        var question = Questionnaire.Named("weight")!;
        Assert.Equal(Verdict.Open, Answer.Open(question, "motor").Verdict);
        var answer = Answer.Open(question, "motor") with { Findings = [Finding.Of("x", 9, Unit.Ratio, Must)] };
        Assert.Equal(Verdict.Stop, answer.Verdict);
    }

    [Theory]
    [InlineData(12, 13, "first")]
    [InlineData(12, 10.5, "second")]
    [InlineData(10.5, 9, "second")]
    [InlineData(9, 8, "first")]
    public void The_finding_that_decides_the_verdict_stands_for_the_answer(double first, double second, string expected)
    {
        Assert.Null(Answer.Open(Questionnaire.Named("weight")!, "motor").Governing);
        var answer = Answer.Open(Questionnaire.Named("weight")!) with { Findings = [Finding.Of("first", first, Unit.Ratio, Must), Finding.Of("second", second, Unit.Ratio, Must)] };
        Assert.Equal(expected, answer.Governing!.Name);
        Assert.Equal("first", (answer with { Missing = ["motor"], Findings = [Finding.Of("first", 12, Unit.Ratio, Must)] }).Governing!.Name);
    }

    [Theory]
    [InlineData(0.3048, Unit.Height, true, "1 ft")]
    [InlineData(15.24, Unit.Speed, true, "50.0 ft/s")]
    [InlineData(101.69, Unit.Energy, true, "75.0 ft·lbf")]
    [InlineData(0.318, Unit.Mass, false, "318 g")]
    [InlineData(4.81, Unit.Mass, false, "4.810 kg")]
    [InlineData(0.0762, Unit.Length, true, "3.00 in")]
    [InlineData(Math.PI / 6, Unit.Angle, false, "30.0°")]
    [InlineData(288.15, Unit.Temperature, true, "59 °F")]
    [InlineData(-0.001, Unit.Ratio, false, "0.00")]
    [InlineData(double.NaN, Unit.Ratio, false, "not known")]
    public void Values_are_shown_in_the_builders_units(double si, Unit unit, bool inch, string expected) => Assert.Equal(expected, Shown.Text(si, unit, inch));
}
