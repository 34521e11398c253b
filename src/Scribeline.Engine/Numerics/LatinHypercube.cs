namespace Scribeline.Engine.Numerics;

/// <summary>
/// Latin hypercube sampling: of N samples each input has exactly one in every N-th part of its range. McKay, Beckman and
/// Conover, Technometrics 21 (1979) 239-245. Each input draws from a stream of its own, so that adding one leaves the
/// others as they are. The samples are not independent: rank and tolerance intervals do not hold for them.
/// </summary>
public static class LatinHypercube
{
    /// <summary>The samples of one input as probabilities in (0, 1): (permutation(i) + U)/N.</summary>
    /// <param name="stream">The input's own stream.</param>
    /// <param name="count">Number of samples N, at least 1.</param>
    public static double[] Column(RandomStream stream, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var column = new double[count];
        for (var i = 0; i < count; i++) column[i] = i;
        for (var i = count - 1; i > 0; i--)
        {
            var other = stream.Below(i + 1);
            (column[i], column[other]) = (column[other], column[i]);
        }

        // Rounding must not carry a sample into the next part, nor to 1.
        for (var i = 0; i < count; i++) column[i] = Math.Min((column[i] + stream.Uniform()) / count, Math.BitDecrement((column[i] + 1) / count));
        return column;
    }
}
