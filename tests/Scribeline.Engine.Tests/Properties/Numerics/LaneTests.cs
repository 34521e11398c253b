using CsCheck;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Properties.Numerics;

/// <summary>Packs of lanes against one number at a time.</summary>
public class LaneTests
{
    private static readonly Gen<double[]> Any = Gen.Double[-700, 700].Array[8];

    [Fact]
    public void Arithmetic_agrees_to_the_bit() => Gen.Select(Any, Any).Sample((a, b) => Both(new Arithmetic(), a, b, 0));

    [Fact]
    public void Elementary_functions_agree_to_a_few_units_in_the_last_place() =>
        Gen.Select(Any, Any).Sample((a, b) => Both(new Elementary(), a, b, 4));

    [Fact]
    public void Special_values_are_handled_alike()
    {
        double[] values = [0, -0.0, double.NaN, double.PositiveInfinity, double.NegativeInfinity, 1, -1, 1e300];
        for (var shift = 0; shift < 8; shift++)
        {
            double[] turned = [.. values[shift..], .. values[..shift]];
            Both(new Arithmetic(), values, turned, 0);
            Both(new Elementary(), values, turned, 4);
        }
    }

    [Fact]
    public void Tables_agree()
    {
        var linear = new PiecewiseLinear([0, 1, 1, 2.5, 7, 9], [0, 3, 5, 4, -2, 1]);
        var cubic = new MonotoneCubic([0, 1, 2.5, 7, 9], [0, 3, 5, 4, 4]);
        var one = new UniformGrid(new(0, 3, 4), [1, 5, 2, 8]);
        var two = new UniformGrid2(new(0, 3, 4), new(-1, 1, 3), Values(12));
        var three = new UniformGrid3(new(0, 3, 4), new(-1, 1, 3), new(2, 4, 5), Values(60));
        Gen.Select(Gen.Double[-2, 11].Array[8], Gen.Double[-2, 5].Array[8]).Sample((a, b) =>
        {
            Both(new Linear(linear), a, b, 0);
            Both(new Cubic(cubic), a, b, 0);
            Both(new Grid(one, two, three), a, b, 0);
        });

        static ValueList<double> Values(int count) => Enumerable.Range(0, count).Select(i => Math.Sin(i * i)).ToValueList();
    }

    /// <summary>A pack takes each lane's step with its own time and width as a scalar would.</summary>
    [Fact]
    public void Steps_agree_to_the_bit_in_each_lane()
    {
        double[] times = [0, 0.5, 1, 3, -2, 4, 0.1, 9], widths = [0.1, 0.2, 0.05, 0.4, -0.1, 0.3, 0.01, 1];
        var (wide, wideError) = Step<Wide8>(times, widths);
        for (var lane = 0; lane < 8; lane++)
        {
            var (one, oneError) = Step<Scalar>(times[lane..], widths[lane..]);
            for (var i = 0; i < 2; i++) Assert.Equal(one[i].Value, Wide8.Lane(wide[i], lane));
            Assert.Equal(oneError.Value, Wide8.Lane(wideError, lane));
        }

        static (T[] Next, T Error) Step<T>(double[] times, double[] widths)
            where T : struct, IReal<T>
        {
            var system = new Logistic<T>();
            T[] state = [T.From(1), T.From(2)], stages = new T[14], next = new T[2];
            var (time, width) = (T.Load(times), T.Load(widths));
            system.Derivative(time, state, stages.AsSpan(0, 2));
            RungeKuttaStep.Take<T, DormandPrince54, Logistic<T>>(ref system, time, width, time + width, state, stages, next);
            return (next, RungeKuttaStep.Error<T, DormandPrince54>(width, state, next, stages, T.From(1e-6), [T.From(1e-9), T.From(1e-9)], new T[2]));
        }
    }

    private static void Both<TFunction>(TFunction function, double[] a, double[] b, int units)
        where TFunction : IFunction
    {
        Compare<Wide4, TFunction>(function, a, b, units);
        Compare<Wide8, TFunction>(function, a, b, units);
    }

    private static void Compare<T, TFunction>(TFunction function, double[] a, double[] b, int units)
        where T : struct, IReal<T>
        where TFunction : IFunction
    {
        var wide = function.Of(T.Load(a), T.Load(b));
        for (var lane = 0; lane < T.Width; lane++)
        {
            var one = function.Of<Scalar>(a[lane], b[lane]);
            for (var i = 0; i < one.Length; i++)
            {
                double expected = one[i], found = T.Lane(wide[i], lane);
                if (expected.Equals(found)) continue;
                var allowed = units * (Math.BitIncrement(Math.Abs(expected)) - Math.Abs(expected));
                // A sine near a multiple of pi is as good as its argument's own last place.
                if (units > 0 && Math.Abs(expected) < 1) allowed = Math.Max(allowed, units * 1.2e-16);
                Assert.True(Math.Abs(expected - found) <= allowed, $"function {i} of {a[lane]:R}, {b[lane]:R}: {found:R} for {expected:R}");
            }
        }
    }

    private interface IFunction
    {
        T[] Of<T>(T a, T b)
            where T : struct, IReal<T>;
    }

    private readonly struct Arithmetic : IFunction
    {
        public T[] Of<T>(T a, T b)
            where T : struct, IReal<T> =>
            [a + b, a - b, a * b, a / b, -a, T.Sqrt(T.Abs(a)), T.Abs(a), T.Floor(a), T.Min(a, b), T.Max(a, b), T.SelectLess(a, b, T.From(3), a)];
    }

    private readonly struct Elementary : IFunction
    {
        public T[] Of<T>(T a, T b)
            where T : struct, IReal<T> => [T.Exp(a), T.Log(T.Abs(a)), T.Log(a), T.Sin(a), T.Cos(a), T.Atan2(a, b)];
    }

    private readonly struct Linear(PiecewiseLinear table) : IFunction
    {
        public T[] Of<T>(T a, T b)
            where T : struct, IReal<T> => [table.At(a), table.IntegralTo(a)];
    }

    private readonly struct Cubic(MonotoneCubic table) : IFunction
    {
        public T[] Of<T>(T a, T b)
            where T : struct, IReal<T> => [table.At(a), table.SlopeAt(a)];
    }

    private readonly struct Grid(UniformGrid one, UniformGrid2 two, UniformGrid3 three) : IFunction
    {
        public T[] Of<T>(T a, T b)
            where T : struct, IReal<T> => [one.At(a), two.At(a, b), three.At(a, b, a + b)];
    }

    private readonly struct Logistic<T> : IOdeSystem<T>
        where T : struct, IReal<T>
    {
        public int Dimension => 2;

        public void Derivative(T time, ReadOnlySpan<T> state, Span<T> rate)
        {
            rate[0] = state[0] * (T.From(3) - state[1]) + time;
            rate[1] = state[1] * (state[0] - time);
        }
    }
}
