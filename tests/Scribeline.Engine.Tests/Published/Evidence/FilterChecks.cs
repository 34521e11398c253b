using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using Scribeline.Engine.Evidence;
using Scribeline.Engine.Tests.Published.Air;

namespace Scribeline.Engine.Tests.Published.Evidence;

/// <summary>
/// Filter and smoother against every intermediate value of a worked flight (computed independently with 40 digits), and against the Nile series of
/// Durbin and Koopman, Time Series Analysis by State Space Methods, 2nd edition 2012, chapter 2.
/// </summary>
public class FilterChecks
{
    private static readonly double[] Nile = [.. AirTable.Read("logs-nile.csv").Select(r => r.Number("flow"))];

    [Fact]
    public void Five_steps_of_a_climb_agree_in_every_digit()
    {
        var rows = AirTable.Read("logs-kalman-steps.csv");
        var filter = Climb();
        Vector<double> height = Vector<double>.Build.DenseOfArray([1, 0, 0]), acceleration = Vector<double>.Build.DenseOfArray([0, 0, 1]);
        foreach (var row in rows)
        {
            filter.Predict(SmoothedFlight.Motion(0.1), SmoothedFlight.Noise(0.1, 1000));
            Close(row.Number("xp_h"), filter.State[0]);
            Close(row.Number("Pp_hv"), filter.Covariance[0, 1]);
            Close(row.Number("S_hh"), filter.Look(height, row.Number("z_h_m"), 1).Variance);
            Close(row.Number("nu_a"), filter.Look(acceleration, row.Number("z_a_mps2"), 4).Difference);
            var squared = filter.Take(height, row.Number("z_h_m"), 1).Squared + filter.Take(acceleration, row.Number("z_a_mps2"), 4).Squared;
            Close(row.Number("NIS"), squared);
            (string Name, int I)[] states = [("h", 0), ("v", 1), ("a", 2)];
            foreach (var (name, i) in states) Close(row.Number($"x_{name}"), filter.State[i]);
            (string Name, int I, int J)[] covariances = [("hh", 0, 0), ("hv", 0, 1), ("ha", 0, 2), ("vv", 1, 1), ("va", 1, 2), ("aa", 2, 2)];
            foreach (var (name, i, j) in covariances) Close(row.Number($"P_{name}"), filter.Covariance[i, j]);
        }

        Close(-23.741064719, filter.LogLikelihood);
        var smooth = filter.Smooth().Skip(1).ToArray();
        for (var k = 0; k < rows.Count; k++)
        {
            Close(rows[k].Number("xs_h"), smooth[k].State[0]);
            Close(rows[k].Number("xs_v"), smooth[k].State[1]);
            Close(rows[k].Number("xs_a"), smooth[k].State[2]);
            Close(rows[k].Number("Ps_hh"), smooth[k].Covariance[0, 0]);
            Close(rows[k].Number("Ps_va"), smooth[k].Covariance[1, 2]);
        }

        // A height 45 m below the pad, a tenth of a second later, is far beyond any gate.
        filter.Predict(SmoothedFlight.Motion(0.1), SmoothedFlight.Noise(0.1, 1000));
        var spike = filter.Look(height, -45, 1);
        Close(14.546451391, filter.State[0]);
        Close(1.48432925697, spike.Variance);
        Close(2388.80952902, spike.Squared);
    }

    [Fact]
    public void The_level_of_the_Nile_agrees_with_the_book()
    {
        // Variances of the book; begun exactly diffuse, which is the first year's flow with the variance of its error.
        var filter = Level(15099, 1469.1, diffuse: true, _ => true);
        var rows = AirTable.Read("logs-nile.csv");
        var smooth = filter.Smooth();
        Assert.Equal(rows.Count, smooth.Count);
        for (var i = 0; i < rows.Count; i++)
        {
            Close(rows[i].Number("a_smooth"), smooth[i].State[0], 1e-8);
            Close(rows[i].Number("V_smooth"), smooth[i].Covariance[0, 0], 1e-8);
        }

        Close(1111.66831913, smooth[0].State[0]);
        Close(999.585218705, smooth[27].State[0]);
        Close(950.93008674, smooth[28].State[0]);
        Close(4032.15794181, smooth[0].Covariance[0, 0]);
        Close(2326.75686981, smooth[49].Covariance[0, 0]);
        Close(798.370292608, filter.State[0]);

        // Settled: P = s(q + sqrt(q² + 4 q))/2 before a year, s the error's variance and q the ratio of both.
        Close(5501.25794181, filter.Covariance[0, 0] + 1469.1, 1e-8);
        Close(-632.545625116, filter.LogLikelihood);
    }

    // Published likelihoods: -632.5376, -632.54421, and -379.9899 with two spans of twenty years missing.
    [Theory]
    [InlineData(1e6, false, -632.5376855873)]
    [InlineData(1e7, false, -632.5442121255)]
    [InlineData(1e6, true, -379.9899784801)]
    public void The_greatest_likelihood_of_the_Nile_is_the_published_one(double vague, bool gaps, double expected)
    {
        var found = Likeliest(v => -Level(v[0], v[1], diffuse: false, i => !gaps || i is not ((>= 20 and < 40) or (>= 60 and < 80)), vague).LogLikelihood);
        Assert.Equal(expected, -found.Value, 1e-6);
    }

    [Fact]
    public void The_likeliest_variances_of_the_Nile_are_those_of_the_book()
    {
        var (at, _) = Likeliest(v => -Level(v[0], v[1], diffuse: true, _ => true).LogLikelihood);

        // Printed: 15099 and 1469.1; the likelihood is flat there.
        Assert.Equal(15098.519, at[0], 15098.519 * 1e-4);
        Assert.Equal(1469.176, at[1], 1469.176 * 1e-3);
    }

    private static (double[] At, double Value) Likeliest(Func<double[], double> cost)
    {
        double[] Of(Vector<double> logs) => [Math.Exp(logs[0]), Math.Exp(logs[1])];
        var found = NelderMeadSimplex.Minimum(ObjectiveFunction.Value(x => cost(Of(x))), Vector<double>.Build.DenseOfArray([9.4, 7.1]), 1e-12, 2000);
        return (Of(found.MinimizingPoint), found.FunctionInfoAtMinimum.Value);
    }

    private static KalmanFilter Level(double error, double drift, bool diffuse, Func<int, bool> seen, double vague = 0)
    {
        var one = Vector<double>.Build.Dense(1, 1);
        Matrix<double> M(double x) => Matrix<double>.Build.Dense(1, 1, x);
        var filter = diffuse ? new KalmanFilter(one * Nile[0], M(error)) : new KalmanFilter(one * 0, M(vague));

        // The first term says only how vague the start was, and is left out by those who published these.
        var first = diffuse ? 0 : Likelihood(filter, () => filter.Take(one, Nile[0], error));
        for (var i = 1; i < Nile.Length; i++)
        {
            filter.Predict(M(1), M(drift));
            if (seen(i)) filter.Take(one, Nile[i], error);
        }

        return diffuse ? filter : Without(filter, first);
    }

    private static double Likelihood(KalmanFilter filter, Action take)
    {
        var before = filter.LogLikelihood;
        take();
        return filter.LogLikelihood - before;
    }

    // A measurement that changes nothing but takes the first term off: its own likelihood is that term's inverse.
    private static KalmanFilter Without(KalmanFilter filter, double first)
    {
        var nothing = Vector<double>.Build.Dense(1, 0);
        filter.Take(nothing, 0, Math.Exp(2 * first) / (2 * Math.PI));
        return filter;
    }

    private static KalmanFilter Climb() => new(
        Vector<double>.Build.DenseOfArray([0, 0, 80]), Matrix<double>.Build.DiagonalOfDiagonalArray([4, 4, 100]));

    private static void Close(double expected, double actual, double relative = 1e-8) =>
        Assert.True(Math.Abs(actual - expected) <= relative * Math.Max(Math.Abs(expected), 1e-3), $"{actual} is not {expected}");
}
