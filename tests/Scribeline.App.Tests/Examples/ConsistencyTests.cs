using Scribeline.Engine.Questions;

namespace Scribeline.App.Tests.Examples;

/// <summary>Answers agree with each other and with hand computations that do not use the flight.</summary>
public class ConsistencyTests
{
    private static double Value(Answer answer, string finding) => answer.Findings.Single(f => f.Name == finding).Value;

    private static Answer Ask(Study study, string id) => Questionnaire.Named(id)!.Ask(study);

    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Nothing_an_example_needs_is_missing(string example)
    {
        var study = Example.Nominal(example);
        Assert.Empty(study.Missing);
        Assert.All(Questionnaire.All.Where(q => q.Id != "allowed" && q.Place != Place.Log), q => Assert.NotEqual(Verdict.Open, q.Ask(study).Verdict));

        // What a person has to confirm on the day is open until somebody has; nothing else is.
        Assert.Equal(Verdict.Open, Ask(study, "allowed").Verdict);
        Assert.StartsWith("a person's word on", Assert.Single(Ask(study, "allowed").Missing), StringComparison.Ordinal);
        Assert.DoesNotContain(study.RuleChecks, c => c.State is RuleState.Missing or RuleState.NotMet);
    }

    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Pieces_weigh_together_what_the_burnt_rocket_weighs(string example)
    {
        var weight = Ask(Example.Nominal(example), "weight");
        var pieces = weight.Findings.Where(f => f.Name.EndsWith("mass after it comes apart", StringComparison.Ordinal)).Sum(f => f.Value);
        Assert.Equal(Value(weight, "mass at burnout"), pieces, 1e-9);
    }

    // Straight up, constant coefficient (closed form of m v' = -m g - k v²) against six degrees of freedom with tilt, wind and Mach number:
    // the two share only the state at burnout, so a quarter is what they may differ by for a flight that passes the speed of sound.
    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void The_apogee_by_hand_is_near_the_flown_one(string example)
    {
        var answer = Ask(Example.Nominal(example), "how-high");
        var byHand = answer.Working.Steps.Single(s => s.Symbol == "h_h").Value;
        Assert.InRange(Value(answer, "apogee above ground") / byHand, 0.8, 1.35);
    }

    // Impulse over mass less weight and friction, against the flown rail: drag takes a little, the propellant that has left gives a little.
    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void The_rail_exit_by_hand_is_near_the_flown_one(string example)
    {
        var steps = Ask(Example.Nominal(example), "rail-exit").Working.Steps;
        var byHand = steps.Single(s => s.Symbol == "v_h").Value;
        var flown = steps.Single(s => s.Symbol == "v_f").Value;
        Assert.InRange(flown / byHand, 0.97, 1.02);
    }

    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void The_steady_descent_by_hand_is_the_flown_one(string example)
    {
        var steps = Ask(Example.Nominal(example), "descends").Working.Steps;
        foreach (var byHand in steps.Where(s => s.Symbol.StartsWith("v_", StringComparison.Ordinal)))
        {
            var flown = steps.Single(s => s.Symbol == "f_" + byHand.Symbol[2..]).Value;
            Assert.Equal(1, flown / byHand.Value, 0.02);
        }
    }

    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Answers_are_the_same_to_the_bit_each_time(string example)
    {
        var (first, second) = (Example.Nominal(example), Example.Nominal(example));
        foreach (var question in Questionnaire.All) Assert.Equal(question.Ask(first).Findings, question.Ask(second).Findings);
    }

    [Fact]
    public void A_case_drawn_twice_is_the_same_case()
    {
        var studies = Example.Studies("night-heron");
        var question = Questionnaire.Named("how-high")!;
        Assert.Equal(question.Ask(studies.Case(3)!).Findings, question.Ask(studies.Case(3)!).Findings);
        Assert.NotEqual(question.Ask(studies.Case(3)!).Findings, question.Ask(studies.Case(4)!).Findings);
    }

    [Fact]
    public void Tolerances_spread_the_apogee_about_the_nominal_one()
    {
        var studies = Example.Studies("night-heron");
        var answer = Enquiry.Ask([Questionnaire.Named("how-high")!], studies.Nominal!, studies.Case, 40, cancel: TestContext.Current.CancellationToken)[0];
        var apogee = answer.Findings[0];
        Assert.NotNull(apogee.Spread);
        Assert.InRange(apogee.Value, apogee.Spread.Low, apogee.Spread.High);
        Assert.Equal(40, apogee.Spread.Samples);
    }
}
