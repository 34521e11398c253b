using System.Globalization;
using MathNet.Numerics.LinearAlgebra;
using Scribeline.Engine.Evidence;
using Scribeline.Engine.Tests.Published.Air;

namespace Scribeline.Engine.Tests.Published.Evidence;

/// <summary>Least squares against the certified values of NIST's Statistical Reference Datasets, nonlinear regression, from both starts of each.</summary>
public class FittingChecks
{
    private static readonly Dictionary<string, Func<Vector<double>, double, double>> Models = new()
    {
        ["Misra1a"] = (b, x) => b[0] * (1 - Math.Exp(-b[1] * x)),
        ["Chwirut2"] = (b, x) => Math.Exp(-b[0] * x) / (b[1] + (b[2] * x)),
        ["Thurber"] = (b, x) => (b[0] + (x * (b[1] + (x * (b[2] + (x * b[3])))))) / (1 + (x * (b[4] + (x * (b[5] + (x * b[6])))))),
        ["Eckerle4"] = (b, x) => b[0] / b[1] * Math.Exp(-0.5 * Math.Pow((x - b[2]) / b[1], 2)),
        ["MGH09"] = (b, x) => b[0] * ((x * x) + (b[1] * x)) / ((x * x) + (b[2] * x) + b[3]),
        ["BoxBOD"] = (b, x) => b[0] * (1 - Math.Exp(-b[1] * x)),
    };

    // From these starts a fit may say that it did not come to rest, never that it did where it did not.
    private static readonly string[] MayFail = ["MGH09 start1", "Eckerle4 start1", "BoxBOD start1"];

    public static TheoryData<string, string> Sets
    {
        get
        {
            TheoryData<string, string> sets = [];
            foreach (var set in Models.Keys)
            {
                sets.Add(set, "start1");
                sets.Add(set, "start2");
            }

            return sets;
        }
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void Certified_values_are_found_to_six_digits(string set, string start)
    {
        var certified = AirTable.Read("logs-strd-nonlinear-certified.csv").Where(r => r["dataset"] == set).ToArray();
        var fit = LeastSquares.Fit(Residuals(set), Jacobian(set), Start(certified, start), 5000);
        if (!fit.Converged)
        {
            Assert.Contains($"{set} {start}", MayFail);
            return;
        }

        for (var i = 0; i < certified.Length; i++)
        {
            var value = Number(certified[i]["certified"]);
            Assert.True(Digits(fit.Parameters[i], value) >= 6, $"{set} {certified[i]["parameter"]}: {fit.Parameters[i]} for {value}");
            var deviation = Math.Sqrt(fit.Sum / fit.Freedom * fit.Covariance[i, i]);
            Assert.True(Digits(deviation, Number(certified[i]["certified_sd"])) >= 5, $"{set} {certified[i]["parameter"]}: deviation {deviation}");
        }

        Assert.True(Digits(fit.Sum, Number(certified[0]["rss"])) >= 6, $"{set}: {fit.Sum}");
    }

    // Single steps on Misra1a, computed independently.
    [Fact]
    public void Single_steps_are_those_of_Gauss_and_Newton_and_of_Marquardt()
    {
        var (r, J) = (Residuals("Misra1a"), Jacobian("Misra1a"));
        var one = Vector<double>.Build.DenseOfArray([500, 0.0001]);
        var two = Vector<double>.Build.DenseOfArray([250, 0.0005]);
        Assert.Equal(10780.1901639, r(one) * r(one), 1e-6);
        Assert.Equal(44.7712768227, r(two) * r(two), 1e-9);
        var newton = two + LeastSquares.Step(J(two), r(two), 0);
        Assert.Equal(237.013030442, newton[0], 1e-6);
        Assert.Equal(0.000551730072406, newton[1], 1e-12);
        Assert.Equal(1.1781319272, r(newton) * r(newton), 1e-8);
        var damped = two + LeastSquares.Step(J(two), r(two), 1e-3);
        Assert.Equal(245.893170235, damped[0], 1e-6);
        Assert.Equal(0.000531295467334, damped[1], 1e-12);
        Assert.Equal(0.249064248418, r(damped) * r(damped), 1e-9);
    }

    private static Func<Vector<double>, Vector<double>> Residuals(string set)
    {
        var data = AirTable.Read("logs-strd-nonlinear-data.csv").Where(r => r["dataset"] == set).Select(r => (X: r.Number("x"), Y: r.Number("y"))).ToArray();
        return b => Vector<double>.Build.DenseOfEnumerable(data.Select(d => Models[set](b, d.X) - d.Y));
    }

    // Five-point differences, whose error is of the fourth order: the models are smooth.
    private static Func<Vector<double>, Matrix<double>> Jacobian(string set)
    {
        var r = Residuals(set);
        return b => Matrix<double>.Build.DenseOfColumnVectors(Enumerable.Range(0, b.Count).Select(j =>
        {
            var h = 1e-4 * Math.Max(Math.Abs(b[j]), 1e-8);
            Vector<double> At(double by)
            {
                var moved = b.Clone();
                moved[j] += by;
                return r(moved);
            }

            return ((8 * (At(h) - At(-h))) - (At(2 * h) - At(-2 * h))) / (12 * h);
        }));
    }

    private static Vector<double> Start(Dictionary<string, string>[] certified, string start) => Vector<double>.Build.DenseOfEnumerable(certified.Select(c => Number(c[start])));

    private static double Digits(double found, double certified) => found == certified ? 15 : -Math.Log10(Math.Abs(found - certified) / Math.Abs(certified));

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
