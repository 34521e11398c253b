using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Numerics;

/// <summary>The parts of the generator against their authors' programs; the output rows are from memory.</summary>
public class RandomStreamTests
{
    /// <summary>Output of the authors' xoshiro256** from the state 1, 2, 3, 4 (Blackman and Vigna), from memory; first two by hand.</summary>
    [Fact]
    public void Generator_gives_the_authors_numbers()
    {
        var stream = new RandomStream(1, 2, 3, 4);
        ulong[] expected = [11520, 0, 1509978240, 1215971899390074240, 1216172134540287360, 607988272756665600];
        Assert.All(expected, value => Assert.Equal(value, stream.Bits()));
    }

    /// <summary>Output of SplitMix64 from 1234567 (Vigna's program), from memory.</summary>
    [Fact]
    public void Seed_expander_gives_the_authors_numbers()
    {
        var state = 1234567UL;
        ulong[] expected = [6457827717110365317, 3203168211198807973, 9817491932198370423];
        Assert.All(expected, value => Assert.Equal(value, RandomStream.SplitMix(ref state)));
    }

    /// <summary>Test vectors of Fowler, Noll and Vo for the 64-bit FNV-1a, from memory.</summary>
    [Theory]
    [InlineData("", 0xcbf29ce484222325UL)]
    [InlineData("a", 0xaf63dc4c8601ec8cUL)]
    [InlineData("foobar", 0x85944171f73967e8UL)]
    public void Name_hash_gives_the_authors_numbers(string name, ulong hash) => Assert.Equal(hash, RandomStream.Hash(name));

    /// <summary>
    /// Moments of 200 000 draws within four of their standard errors, and shares outside the standard normal's 95 % and
    /// 99.7300204 % intervals (textbook values).
    /// </summary>
    [Fact]
    public void Normal_numbers_are_normal()
    {
        var stream = new RandomStream(20, "wind");
        const int Count = 200_000;
        double mean = 0, square = 0;
        int beyond2 = 0, beyond3 = 0;
        for (var i = 0; i < Count; i++)
        {
            var x = stream.Normal();
            mean += x / Count;
            square += x * x / Count;
            if (Math.Abs(x) > 1.959963984540054) beyond2++;
            if (Math.Abs(x) > 3) beyond3++;
        }

        Assert.Equal(0, mean, 4 / Math.Sqrt(Count));
        Assert.Equal(1, square, 4 * Math.Sqrt(2.0 / Count));
        Near(0.05, beyond2);
        Near(0.002699796, beyond3);

        static void Near(double share, int seen) => Assert.Equal(share * Count, seen, 4 * Math.Sqrt(share * (1 - share) * Count));
    }

    /// <summary>
    /// McKay, Beckman and Conover 1979: for the mean of three uniforms' sum over 100 samples the variance falls from
    /// 2.5e-3 to 3/12/100^3 = 2.5e-7. Over 2000 repeats an estimated variance has a standard error of 3.2 %.
    /// </summary>
    [Fact]
    public void Latin_hypercube_cuts_the_variance_of_an_additive_mean()
    {
        const int Repeats = 2000;
        Assert.Equal(2.5e-7, Variance(stream => LatinHypercube.Column(stream, 100)), 0.13 * 2.5e-7);
        Assert.Equal(2.5e-3, Variance(stream => [.. Enumerable.Range(0, 100).Select(_ => stream.Uniform())]), 0.13 * 2.5e-3);

        static double Variance(Func<RandomStream, double[]> column)
        {
            var sum = 0.0;
            for (var i = 0UL; i < Repeats; i++)
            {
                var mean = ((string[])["first", "second", "third"]).Sum(name => column(new RandomStream(3, name, i)).Average());
                sum += (mean - 1.5) * (mean - 1.5);
            }

            return sum / Repeats;
        }
    }
}
