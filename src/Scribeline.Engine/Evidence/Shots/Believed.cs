namespace Scribeline.Engine.Evidence.Shots;

/// <summary>What is held of an unknown: its mean, and what it lies between in nine of ten cases.</summary>
/// <param name="Mean">Expected.</param>
/// <param name="Low">5 % below.</param>
/// <param name="High">5 % above.</param>
public readonly record struct Believed(double Mean, double Low, double High)
{
    /// <summary>Of values with weights that sum to 1.</summary>
    /// <param name="weighted">In any order.</param>
    public static Believed Of(IEnumerable<(double Value, double Weight)> weighted)
    {
        var sorted = weighted.OrderBy(w => w.Value).ToArray();
        return new(sorted.Sum(w => w.Value * w.Weight), Quantile(sorted, 0.05), Quantile(sorted, 0.95));
    }

    // Each weight stands for the room about its value: the cumulated share is reckoned to its middle, and straight between middles.
    private static double Quantile((double Value, double Weight)[] sorted, double share)
    {
        double before = 0, last = 0;
        for (var i = 0; i < sorted.Length; i++)
        {
            var middle = before + (sorted[i].Weight / 2);
            if (middle >= share)
            {
                if (i == 0 || middle <= last) return sorted[i].Value;
                return sorted[i - 1].Value + ((share - last) / (middle - last) * (sorted[i].Value - sorted[i - 1].Value));
            }

            (before, last) = (before + sorted[i].Weight, middle);
        }

        return sorted[^1].Value;
    }
}
