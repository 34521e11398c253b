using MathNet.Numerics.Distributions;
using Scribeline.Engine.Evidence.Shots;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Published.Evidence;

/// <summary>What shots say, against published counts, a worked example and computations that share nothing with the grid.</summary>
public class ShotCheckValues
{
    private static readonly double[] Places = [-1.5, -1, -0.5, 0, 0.5, 1, 1.5];

    /// <summary>A load whose push is in proportion to powder and effectiveness, and whose speed goes with the root of both.</summary>
    internal static ChargeResponse Proportional(double grams, double newtonsPerGram = 100, double speed = 10) => new(
        [.. Places],
        Places.Select(x => x + Math.Log(newtonsPerGram * grams)).ToValueList(),
        Places.Select(x => (x / 2) + Math.Log(speed * Math.Sqrt(grams))).ToValueList(),
        Places.Select(x => x + Math.Log(50e3 * grams)).ToValueList(),
        Places.Select(x => x + Math.Log(60e3 * grams)).ToValueList());

    // Wilks, Ann. Math. Statist. 12 (1941) 91: 59 for 95/95, 299 for 99/95 (from memory, reproduced); 22 for 90/90 from R^n = 1 - C.
    [Theory]
    [InlineData(0.95, 0.95, 59)]
    [InlineData(0.90, 0.90, 22)]
    [InlineData(0.99, 0.95, 299)]
    public void The_success_run_needs_as_many_tests_as_tables_say(double reliability, double confidence, int tests) =>
        Assert.Equal(tests, SuccessRun.Needed(reliability, confidence));

    // P >= 0.05^(1/n) at 95 % confidence (closed form, Clopper and Pearson 1934); all digits of a computation apart from this program.
    [Theory]
    [InlineData(1, 0.05)]
    [InlineData(3, 0.36840315)]
    [InlineData(5, 0.54928027)]
    [InlineData(10, 0.74113445)]
    [InlineData(22, 0.87269457)]
    [InlineData(59, 0.95049239)]
    public void A_run_shows_what_the_closed_form_says(int passes, double shown) => Assert.Equal(shown, SuccessRun.Shown(passes, 0.95), 5e-9);

    [Fact]
    public void Three_of_three_show_less_than_half_at_ninety_per_cent() => Assert.Equal(0.4642, SuccessRun.Shown(3, 0.90), 5e-5);

    // The charge example: ln m50 ~ N(ln 1.20 g, 0.35²), P(clean | m) = Φ((ln m - ln m50)/0.15); fired 1.0 F, 1.4 P, 1.2 P, 1.2 P. Invented
    // data; values computed apart from this program on a grid of its own: mean and s.d. of ln m50, chance at 1.5 g, charge for 0.99.
    [Fact]
    public void Four_shots_at_a_known_hold_give_the_worked_example()
    {
        var prior = new JointPrior(0.35, 0.15, 0, 0);
        var hold = new JointHold(120, 0, 0);
        var after = JointPosterior.Of(prior, [Fired(1.0, false), Fired(1.4, true), Fired(1.2, true), Fired(1.2, true)]);
        ShotEvidence Fired(double grams, bool letGo) => new(Proportional(grams), hold, letGo);

        // m50 is the charge whose push at this effectiveness is the hold: ln m50 = ln 1.20 - ln η.
        Assert.Equal(0.03939, Math.Log(1.2) - after.LogPowder.Mean, 2e-5);
        Assert.Equal(0.1173, after.LogPowder.Deviation, 5e-5);
        Assert.Equal(0.9741, after.LetsGo(Fired(1.5, true)).Mean, 5e-5);
        Assert.Equal(0.99, after.LetsGo(Fired(1.610, true)).Mean, 5e-5);
        Assert.Equal(0, after.Correlation);
    }

    // Product of Gaussians (JCGM 100 and any textbook): a speed that is the root of the effectiveness, measured with 5 %, no doubt of the model.
    // ln η then has precision 1/s0² + 1/(scatter² + (2 u)²), and where the joint surely lets go the outcome says nothing.
    [Fact]
    public void A_measured_speed_far_from_the_threshold_is_a_product_of_gaussians()
    {
        var prior = new JointPrior(0.35, 0.15, 0, 0) { ModelShare = 1e-9 };
        var shot = new ShotEvidence(Proportional(2, newtonsPerGram: 1e4), new(1, 0, 0), true, new ShotReading(10 * Math.Sqrt(2) * 1.1, 0.05));
        var (mean, deviation) = JointPosterior.Of(prior, [shot]).LogPowder;
        double seen = 2 * Math.Log(1.1), variance = (0.15 * 0.15) + (4 * 0.05 * 0.05), gain = 0.35 * 0.35 / ((0.35 * 0.35) + variance);
        Assert.Equal(gain * seen, mean, 1e-5);
        Assert.Equal(Math.Sqrt((1 - gain) * 0.35 * 0.35), deviation, 1e-5);
    }

    // Two lognormals against each other: P(η e^ε F > κ e^δ H) = Φ(ln(F/H e^-middle)/√(s² + k² + h² + c²)) in closed form.
    [Fact]
    public void Before_any_shot_the_probability_is_that_of_two_lognormals()
    {
        var prior = new JointPrior(0.35, 0.15, -0.1, 0.12);
        var firing = new ShotEvidence(Proportional(1.8), new(120, 0, 0.07), true);
        var expected = Normal.CDF(0, 1, (Math.Log(1.8 * 100 / 120) + 0.1) / Math.Sqrt((0.35 * 0.35) + (0.15 * 0.15) + (0.12 * 0.12) + (0.07 * 0.07)));
        Assert.Equal(expected, JointPosterior.Of(prior, []).LetsGo(firing).Mean, 2e-5);
        Assert.Equal(expected, JointPosterior.Of(prior, []).Chance(firing), 2e-5);
    }

    // Importance sampling with 400 000 draws from the prior: each draw fires every shot anew with its own scatter and is weighed by what
    // came of it. It shares no grid and no threshold with the posterior; tolerances are three standard errors.
    [Fact]
    public void The_grid_agrees_with_drawing_everything_at_random()
    {
        var prior = new JointPrior(0.35, 0.15, -0.08, 0.11);
        var hold = new JointHold(350, 30, 0.06);
        (double Grams, bool LetGo, double? Speed)[] fired = [(3.2, false, null), (4.2, true, null), (4.2, true, 21.5), (5.0, true, 24.0)];
        var shots = fired.Select(f => new ShotEvidence(Proportional(f.Grams), hold, f.LetGo, f.Speed is { } v ? new ShotReading(v, 0.06) : null)).ToArray();
        var flight = new ShotEvidence(Proportional(4.6), hold, true);
        var after = JointPosterior.Of(prior, shots);

        var random = new RandomStream(7, "shots");
        double sum = 0, x1 = 0, k1 = 0, go = 0;
        double model = Math.Sqrt((0.06 * 0.06) + (prior.ModelShare * prior.ModelShare));
        for (var draw = 0; draw < 400_000; draw++)
        {
            double x = 0.35 * random.Normal(), y = -0.08 + (0.11 * random.Normal()), weight = 1;
            foreach (var (grams, letGo, speed) in fired)
            {
                double e = x + (0.15 * random.Normal()), held = (Math.Exp(y + (0.06 * random.Normal())) * 350) + 30;
                if (100 * grams * Math.Exp(e) >= held != letGo)
                {
                    weight = 0;
                    break;
                }

                if (speed is { } v) weight *= Normal.PDF(Math.Log(10 * Math.Sqrt(grams)) + (e / 2), model, Math.Log(v));
            }

            if (weight == 0) continue;
            sum += weight;
            x1 += weight * Math.Exp(x);
            k1 += weight * Math.Exp(y);
            if (460 * Math.Exp(x + (0.15 * random.Normal())) >= (Math.Exp(y + (0.06 * random.Normal())) * 350) + 30) go += weight;
        }

        Assert.Equal(x1 / sum, after.Powder.Mean, 0.004);
        Assert.Equal(k1 / sum, after.Hold.Mean, 0.002);
        Assert.Equal(go / sum, after.LetsGo(flight).Mean, 0.006);
        Assert.InRange(after.Correlation, 0.05, 0.9);
    }

    // JCGM 100:2008 4.3.7: the difference of two rectangular distributions of one frame has the variance 1/6.
    [Fact]
    public void A_filmed_speed_is_distance_by_rate_over_frames()
    {
        var speed = ShotReading.Filmed(0.3, 0.01, 8, 240);
        Assert.Equal(9, speed.Value, 1e-12);
        Assert.Equal(Math.Sqrt(1e-4 + (1 / 384.0)), speed.Share, 1e-12);
    }
}
