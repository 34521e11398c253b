using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Numerics;

/// <summary>The coefficients against their publications, and the conditions that make them what they are.</summary>
public class TableauTests
{
    [Theory]
    [InlineData("DP54")]
    [InlineData("TS54")]
    [InlineData("BS32")]
    public void Coefficients_are_the_published_ones(string name)
    {
        // Listed with 16 to 17 digits: a unit or two in the last place, and the rounding of a difference of weights.
        var pair = Tableau.Of(name);
        for (var i = 0; i < pair.Stages; i++)
        {
            Assert.Equal(pair.Published("c", i + 1), pair.Nodes[i], 1e-16);
            Assert.Equal(pair.Published("b", i + 1), pair.B(i), 1e-15);
            Assert.Equal(pair.Published("b", i + 1) - pair.Published("bh", i + 1), pair.ErrorWeights[i], 1e-15);
            for (var j = 0; j < i; j++) Assert.Equal(pair.Published("a", i + 1, j + 1), pair.A(i, j), 1e-14);
            for (var j = 0; j < pair.DenseDegree; j++)
            {
                Assert.Equal(pair.Published("p", i + 1, j + 1), pair.Dense[i * pair.DenseDegree + j], 1e-13);
            }
        }
    }

    /// <summary>Hairer, Norsett and Wanner I, table II.2.2: one condition per rooted tree, up to order 5.</summary>
    [Theory]
    [InlineData("DP54", 5, 4)]
    [InlineData("TS54", 5, 4)]
    [InlineData("BS32", 3, 2)]
    public void Order_conditions_hold_and_the_next_order_does_not(string name, int order, int embedded)
    {
        var pair = Tableau.Of(name);
        var solution = Enumerable.Range(0, pair.Stages).Select(pair.B).ToArray();
        var lower = solution.Select((b, i) => b - pair.ErrorWeights[i]).ToArray();
        Assert.All(Residuals(pair, solution, 1, order), residual => Assert.Equal(0, residual, 1e-14));
        Assert.All(Residuals(pair, lower, 1, embedded), residual => Assert.Equal(0, residual, 1e-14));
        Assert.Contains(Residuals(pair, lower, order, order), residual => Math.Abs(residual) > 1e-4);
        if (order < 5) Assert.Contains(Residuals(pair, solution, order + 1, order + 1), residual => Math.Abs(residual) > 1e-4);
    }

    [Theory]
    [InlineData("DP54")]
    [InlineData("TS54")]
    [InlineData("BS32")]
    public void Dense_output_meets_both_ends_with_their_slopes(string name)
    {
        var pair = Tableau.Of(name);
        for (var i = 0; i < pair.Stages; i++)
        {
            double value = 0, slope = 0;
            for (var j = 0; j < pair.DenseDegree; j++)
            {
                value += pair.Dense[i * pair.DenseDegree + j];
                slope += (j + 1) * pair.Dense[i * pair.DenseDegree + j];
            }

            Assert.Equal(pair.B(i), value, 1e-13);
            Assert.Equal(i == pair.Stages - 1 ? 1 : 0, slope, 1e-12);
            Assert.Equal(i == 0 ? 1 : 0, pair.Dense[i * pair.DenseDegree]);
        }
    }

    [Theory]
    [InlineData("DP54", "N31", "N32")]
    [InlineData("TS54", "N33", "N34")]
    [InlineData("BS32", "N35", "N36")]
    public void One_step_of_decay(string name, string value, string estimate)
    {
        var (computed, error) = name switch
        {
            "DP54" => Step<DormandPrince54>(),
            "TS54" => Step<Tsitouras54>(),
            _ => Step<BogackiShampine32>(),
        };
        CheckValues.Holds(value, computed);
        CheckValues.Holds(estimate, error);
    }

    private static (double Value, double Error) Step<TPair>()
        where TPair : struct, IRungeKuttaPair
    {
        var system = new Decay();
        Scalar[] state = [1], stages = new Scalar[TPair.Stages], next = new Scalar[1];
        system.Derivative(0, state, stages.AsSpan(0, 1));
        RungeKuttaStep.Take<Scalar, TPair, Decay>(ref system, 0, 0.5, 0.5, state, stages, next);
        // With an absolute tolerance of 1 and no relative one, the error is the estimate itself.
        return (next[0], RungeKuttaStep.Error<Scalar, TPair>(0.5, state, next, stages, 0, [1], new Scalar[1]));
    }

    private static IEnumerable<double> Residuals(Tableau pair, double[] b, int from, int to)
    {
        var n = pair.Stages;
        var c = pair.Nodes;
        double[] Times(double[] x, double[] y) => [.. x.Zip(y, (p, q) => p * q)];
        double[] Apply(double[] x) => [.. Enumerable.Range(0, n).Select(i => Enumerable.Range(0, i).Sum(j => pair.A(i, j) * x[j]))];
        double Sum(double[] x) => b.Zip(x, (p, q) => p * q).Sum();
        var one = Enumerable.Repeat(1.0, n).ToArray();
        var c2 = Times(c, c);
        var c3 = Times(c2, c);
        (int Order, double[] Vector, double Value)[] trees =
        [
            (1, one, 1), (2, c, 1.0 / 2), (3, c2, 1.0 / 3), (3, Apply(c), 1.0 / 6),
            (4, c3, 1.0 / 4), (4, Times(c, Apply(c)), 1.0 / 8), (4, Apply(c2), 1.0 / 12), (4, Apply(Apply(c)), 1.0 / 24),
            (5, Times(c3, c), 1.0 / 5), (5, Times(c2, Apply(c)), 1.0 / 10), (5, Times(c, Apply(c2)), 1.0 / 15),
            (5, Times(c, Apply(Apply(c))), 1.0 / 30), (5, Times(Apply(c), Apply(c)), 1.0 / 20), (5, Apply(c3), 1.0 / 20),
            (5, Apply(Times(c, Apply(c))), 1.0 / 40), (5, Apply(Apply(c2)), 1.0 / 60), (5, Apply(Apply(Apply(c))), 1.0 / 120),
        ];
        return trees.Where(tree => tree.Order >= from && tree.Order <= to).Select(tree => Sum(tree.Vector) - tree.Value);
    }
}
