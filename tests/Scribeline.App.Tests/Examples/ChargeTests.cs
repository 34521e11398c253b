using Scribeline.Engine.Questions;
using Scribeline.Engine.Separation;

namespace Scribeline.App.Tests.Examples;

/// <summary>Charges the program chooses, and what becomes of them in the cases drawn from the tolerances.</summary>
public class ChargeTests
{
    [Theory]
    [MemberData(nameof(Example.Sound), MemberType = typeof(Example))]
    public void A_chosen_charge_is_the_least_tenth_of_a_gram_that_serves(string example)
    {
        var charges = Example.Nominal(example).Rocket.Separation.Charges;
        Assert.Equal(4, charges.Count);
        foreach (var charge in charges.Where(c => c.Choice is not null))
        {
            Assert.Equal(Math.Round(charge.Mass!.Value * 1e4), charge.Mass.Value * 1e4, 1e-9);
            Assert.InRange(charge.Mass.Value - charge.Choice!.Least, -1e-12, ChargeChoice.Step);
            Assert.Contains(charge.Choice.Ruling, new[] { "lets-go.force-ratio", "lets-go.draws-clear" });
        }
    }

    [Theory]
    [MemberData(nameof(Example.Sound), MemberType = typeof(Example))]
    public void A_backup_has_its_share_of_the_primary(string example)
    {
        var charges = Example.Nominal(example).Rocket.Separation.Charges.ToDictionary(c => c.Name, c => c.Mass!.Value);
        Assert.Equal(1.3 * charges["Drogue A"], charges["Drogue B"], 1e-12);
        Assert.Equal(1.3 * charges["Main A"], charges["Main B"], 1e-12);
    }

    [Fact]
    public void A_case_keeps_the_charge_that_was_chosen()
    {
        var studies = Example.Studies("night-heron");
        var chosen = studies.Nominal!.Rocket.Separation.Charges;
        for (var i = 0; i < 5; i++)
        {
            var drawn = studies.Case(i)!.Rocket.Separation;
            Assert.Equal(chosen.Select(c => c.Mass), drawn.Charges.Select(c => c.Mass));
            Assert.NotEqual(studies.Nominal.Rocket.Separation.Joints[0].Friction.Force, drawn.Joints[0].Friction.Force);
        }
    }

    [Theory]
    [MemberData(nameof(Example.Sound), MemberType = typeof(Example))]
    public void Every_chosen_charge_frees_its_joint(string example)
    {
        var answer = Questionnaire.Named("lets-go")!.Ask(Example.Nominal(example));
        Assert.Empty(answer.Missing);
        Assert.All(answer.Findings.Where(f => f.Limit is not null), f => Assert.NotEqual(Verdict.Stop, f.Verdict));
        Assert.Equal(4, answer.Plots[0].Series.Count);
        Assert.Contains(answer.Notes, n => n.Contains("Black powder", StringComparison.Ordinal));
    }
}
