using CsCheck;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Properties.Numerics;

/// <summary>What every table must do.</summary>
public class TableTests
{
    private static readonly Gen<(double[] Knots, double[] Values)> Data =
        Gen.Int[2, 20].SelectMany(count => Gen.Select(Gen.Double[0.01, 3].Array[count], Gen.Double[-5, 5].Array[count]))
            .Select(pair => (Running(pair.Item1), pair.Item2));

    [Fact]
    public void Tables_pass_through_their_points_and_stay_constant_beyond() => Data.Sample(data =>
    {
        var linear = new PiecewiseLinear(data.Knots.ToValueList(), data.Values.ToValueList());
        var cubic = new MonotoneCubic(data.Knots.ToValueList(), data.Values.ToValueList());
        for (var i = 0; i < data.Knots.Length; i++)
        {
            Assert.Equal(data.Values[i], linear.At<Scalar>(data.Knots[i]), 1e-13);
            Assert.Equal(data.Values[i], cubic.At<Scalar>(data.Knots[i]), 1e-12);
        }

        Assert.Equal(data.Values[0], linear.At<Scalar>(data.Knots[0] - 1), 1e-13);
        Assert.Equal(data.Values[^1], linear.At<Scalar>(data.Knots[^1] + 1), 1e-13);
        Assert.Equal(data.Values[0], cubic.At<Scalar>(double.NegativeInfinity), 1e-12);
        Assert.Equal(data.Values[^1], cubic.At<Scalar>(double.PositiveInfinity), 1e-12);
        Assert.True(double.IsNaN(linear.At<Scalar>(double.NaN)));
        Assert.True(double.IsNaN(cubic.At<Scalar>(double.NaN)));
    });

    [Fact]
    public void A_monotone_cubic_never_leaves_the_values_beside_it() => Data.Sample(data =>
    {
        var cubic = new MonotoneCubic(data.Knots.ToValueList(), data.Values.ToValueList());
        for (var i = 0; i + 1 < data.Knots.Length; i++)
        {
            var (last, rise) = (data.Values[i], data.Values[i + 1] - data.Values[i]);
            for (var part = 1; part <= 50; part++)
            {
                var value = cubic.At<Scalar>(data.Knots[i] + (data.Knots[i + 1] - data.Knots[i]) * part / 50.0);
                Assert.True((value - last) * Math.Sign(rise) >= -1e-12, "the curve turns where the values do not");
                last = value;
            }
        }
    });

    [Fact]
    public void Integral_grows_at_the_value() => Gen.Select(Data, Gen.Double[0, 1]).Sample((data, part) =>
    {
        var table = new PiecewiseLinear(data.Knots.ToValueList(), data.Values.ToValueList());
        var x = data.Knots[0] + part * (data.Knots[^1] - data.Knots[0]);
        var sum = 0.0;
        for (var i = 0; i + 1 < data.Knots.Length && data.Knots[i] < x; i++)
        {
            var to = Math.Min(x, data.Knots[i + 1]);
            sum += (to - data.Knots[i]) * 0.5 * (table.At<Scalar>(data.Knots[i]).Value + table.At<Scalar>(to).Value);
        }

        Assert.Equal(sum, table.IntegralTo<Scalar>(x), 1e-11);
        Assert.Equal(table.Integral, table.IntegralTo<Scalar>(data.Knots[^1]), 1e-11);
    });

    [Fact]
    public void A_jump_takes_the_later_value()
    {
        var table = new PiecewiseLinear([0, 0, 1, 1, 2], [7, 3, 4, 9, 9]);
        Assert.Equal([3, 9, 9], ((double[])[0, 1, 2]).Select(x => table.At<Scalar>(x).Value));
        Assert.Equal(4, table.At<Scalar>(Math.BitDecrement(1)), 1e-14);
    }

    /// <summary>Multilinear interpolation reproduces a function that is linear in each number apart.</summary>
    [Fact]
    public void Grids_reproduce_multilinear_functions() =>
        Gen.Select(Gen.Double[-3, 3], Gen.Double[-3, 3], Gen.Double[-3, 3]).Sample((x, y, z) =>
        {
            UniformAxis a = new(-3, 3, 4), b = new(-3, 3, 7), c = new(-3, 3, 2);
            var one = new UniformGrid(a, Points(a).Select(p => 2 - p).ToValueList());
            var two = new UniformGrid2(a, b, Points(a).SelectMany(p => Points(b).Select(q => F(p, q, 1))).ToValueList());
            var three = new UniformGrid3(a, b, c, Points(a).SelectMany(p => Points(b).SelectMany(q => Points(c).Select(r => F(p, q, r)))).ToValueList());
            Assert.Equal(2 - x, one.At<Scalar>(x), 1e-12);
            Assert.Equal(F(x, y, 1), two.At<Scalar>(x, y), 1e-11);
            Assert.Equal(F(x, y, z), three.At<Scalar>(x, y, z), 1e-11);
            Assert.Equal(F(3, y, -3), three.At<Scalar>(x + 7, y, z - 7), 1e-11);

            static double F(double p, double q, double r) => 1 + 2 * p - q + 0.5 * p * q * r + r;
            static IEnumerable<double> Points(UniformAxis axis) => Enumerable.Range(0, axis.Count).Select(axis.Point);
        });

    [Fact]
    public void Tables_are_compared_by_value()
    {
        Assert.Equal(new PiecewiseLinear([0, 1], [2, 3]), new PiecewiseLinear([0, 1], [2, 3]));
        Assert.NotEqual(new PiecewiseLinear([0, 1], [2, 3]), new PiecewiseLinear([0, 1], [2, 4]));
        Assert.Equal(new MonotoneCubic([0, 1], [2, 3]).GetHashCode(), new MonotoneCubic([0, 1], [2, 3]).GetHashCode());
        Assert.Equal(new UniformGrid(new(0, 1, 2), [2, 3]), new UniformGrid(new(0, 1, 2), [2, 3]));
    }

    [Fact]
    public void Unsound_tables_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([0], [1]));
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([0, -1], [1, 2]));
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([0, 1], [1, double.NaN]));
        Assert.Throws<ArgumentException>(() => new MonotoneCubic([0, 0], [1, 2]));
        Assert.Throws<ArgumentException>(() => new UniformGrid2(new(0, 1, 2), new(0, 1, 2), [1, 2, 3]));
        Assert.Throws<ArgumentException>(() => new UniformGrid(new(1, 1, 2), [1, 2]));
    }

    private static double[] Running(double[] widths)
    {
        var sum = 0.0;
        return [.. widths.Select(width => sum += width)];
    }
}
