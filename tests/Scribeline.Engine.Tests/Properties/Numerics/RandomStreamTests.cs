using CsCheck;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Properties.Numerics;

/// <summary>Streams stand alone; samples fill their parts.</summary>
public class RandomStreamTests
{
    [Fact]
    public void A_stream_depends_on_its_seed_name_and_index_alone() => Gen.Select(Gen.ULong, Gen.String, Gen.ULong).Sample((seed, name, index) =>
    {
        var alone = new RandomStream(seed, name, index);
        var among = new RandomStream(seed, name, index);
        var other = new RandomStream(seed, name + "x", index);
        var later = new RandomStream(seed, name, index + 1);
        for (var i = 0; i < 5; i++)
        {
            var number = alone.Bits();
            Assert.NotEqual(number, other.Bits());
            Assert.NotEqual(number, later.Bits());
            Assert.Equal(number, among.Bits());
        }
    });

    [Fact]
    public void Numbers_stay_in_their_range() => Gen.Select(Gen.ULong, Gen.Int[1, int.MaxValue]).Sample((seed, bound) =>
    {
        var stream = new RandomStream(seed, "range");
        for (var i = 0; i < 100; i++)
        {
            Assert.InRange(stream.Uniform(), double.Epsilon, Math.BitDecrement(1));
            Assert.InRange(stream.Below(bound), 0, bound - 1);
        }
    });

    /// <summary>The largest and smallest bit patterns stay off the ends, so that a normal number is always finite.</summary>
    [Fact]
    public void Uniform_never_meets_an_end()
    {
        // With the second word 0 the generator gives 0; with the word that multiplies to all ones, all ones.
        var inverse = unchecked(0xFFFFFFFFFFFFFFFFUL * 0x8E38E38E38E38E39UL);
        var second = unchecked(System.Numerics.BitOperations.RotateRight(inverse, 7) * 0xCCCCCCCCCCCCCCCDUL);
        Assert.Equal(ulong.MaxValue, new RandomStream(1, second, 3, 4).Bits());
        Assert.Equal(Math.BitDecrement(1), new RandomStream(1, second, 3, 4).Uniform(), 2e-16);
        Assert.True(new RandomStream(1, second, 3, 4).Uniform() < 1);
        Assert.True(new RandomStream(1, 0, 3, 4).Uniform() > 0);
        Assert.True(double.IsFinite(new RandomStream(1, second, 3, 4).Normal()) && double.IsFinite(new RandomStream(1, 0, 3, 4).Normal()));
    }

    [Fact]
    public void Each_part_of_a_latin_hypercube_holds_one_sample() => Gen.Select(Gen.ULong, Gen.Int[1, 200]).Sample((seed, count) =>
    {
        foreach (var name in (string[])["thrust", "wind", "mass"])
        {
            var parts = LatinHypercube.Column(new RandomStream(seed, name), count).Select(u => (int)(u * count)).Order();
            Assert.Equal(Enumerable.Range(0, count), parts);
        }
    });
}
