using System.Numerics;
using System.Text;
using StandardNormal = MathNet.Numerics.Distributions.Normal;

namespace Scribeline.Engine.Numerics;

/// <summary>
/// Random numbers that depend on a seed, a name and an index alone: on every machine the same, and no stream changes
/// when another is added. The generator is xoshiro256** (Blackman and Vigna, ACM Trans. Math. Softw. 47 (2021) 36),
/// its state filled by SplitMix64 (Steele, Lea and Flood, OOPSLA 2014); names are hashed by FNV-1a (Fowler, Noll and Vo).
/// </summary>
public sealed class RandomStream
{
    private ulong s0;
    private ulong s1;
    private ulong s2;
    private ulong s3;

    /// <summary>Starts a stream.</summary>
    /// <param name="seed">The seed of the whole study.</param>
    /// <param name="name">What the numbers are for.</param>
    /// <param name="index">Which of many alike, such as the number of a sample.</param>
    public RandomStream(ulong seed, string name, ulong index = 0)
    {
        var state = seed;
        state = SplitMix(ref state) ^ Hash(name);
        state = SplitMix(ref state) ^ index;
        state = SplitMix(ref state);
        (s0, s1, s2, s3) = (SplitMix(ref state), SplitMix(ref state), SplitMix(ref state), SplitMix(ref state));
    }

    internal RandomStream(ulong s0, ulong s1, ulong s2, ulong s3) => (this.s0, this.s1, this.s2, this.s3) = (s0, s1, s2, s3);

    /// <summary>64 random bits.</summary>
    public ulong Bits()
    {
        var result = BitOperations.RotateLeft(s1 * 5, 7) * 9;
        var t = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = BitOperations.RotateLeft(s3, 45);
        return result;
    }

    /// <summary>Evenly spread over (0, 1); neither end is ever met. Steps of 2^-52.</summary>
    public double Uniform() => ((Bits() >> 12) + 0.5) * (1.0 / (1UL << 52));

    /// <summary>Normally spread, mean 0 and standard deviation 1, through the inverse of its distribution.</summary>
    public double Normal() => StandardNormal.InvCDF(0, 1, Uniform());

    /// <summary>A whole number from 0 to one below the bound, each equally likely (Lemire, ACM Trans. Model. Comput. Simul. 29 (2019) 3).</summary>
    /// <param name="bound">At least 1.</param>
    public int Below(int bound)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(bound, 1);
        var range = (ulong)bound;
        var high = Math.BigMul(Bits(), range, out var low);
        if (low < range)
        {
            var least = (0 - range) % range;
            while (low < least) high = Math.BigMul(Bits(), range, out low);
        }

        return (int)high;
    }

    internal static ulong SplitMix(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    internal static ulong Hash(string name)
    {
        var hash = 0xCBF29CE484222325;
        foreach (var octet in Encoding.UTF8.GetBytes(name)) hash = (hash ^ octet) * 0x100000001B3;
        return hash;
    }
}
