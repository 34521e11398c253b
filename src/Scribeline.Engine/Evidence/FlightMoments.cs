namespace Scribeline.Engine.Evidence;

/// <summary>Finds the moments of a recorded flight. Their order is fixed: none comes before the one it follows.</summary>
public static class FlightMoments
{
    private const double Gravity = 9.80665;

    // Common practice: three samples beyond three times gravity are no knock on the rail; a climb past 30 m at 10 m/s is no gust.
    private const double Thrust = 30;
    private const int Together = 3;
    private const double Risen = 30;
    private const double LowMark = 10, HighMark = 40;

    /// <summary>First sample of the first three in a row whose acceleration, gravity taken off, is more than 3 g; null where there are none.</summary>
    /// <param name="accelerations">m/s², nil on the pad.</param>
    public static int? LiftOff(IReadOnlyList<double> accelerations)
    {
        var run = 0;
        for (var i = 0; i < accelerations.Count; i++)
        {
            run = accelerations[i] > Thrust ? run + 1 : 0;
            if (run == Together) return i - Together + 1;
        }

        return null;
    }

    /// <summary>First sample higher than 30 m above the pad; null where there is none.</summary>
    /// <param name="heights">m above the pad.</param>
    public static int? Climbed(IReadOnlyList<double> heights)
    {
        for (var i = 0; i < heights.Count; i++)
        {
            if (heights[i] > Risen) return i;
        }

        return null;
    }

    /// <summary>When a rocket that rises from rest at a constant acceleration left, from two heights: t0 = (t1 √h2 - t2 √h1)/(√h2 - √h1).</summary>
    /// <returns>Time, s, and acceleration, m/s².</returns>
    public static (double Time, double Acceleration) FromRest(double firstTime, double firstHeight, double secondTime, double secondHeight)
    {
        double low = Math.Sqrt(firstHeight), high = Math.Sqrt(secondHeight);
        var start = ((firstTime * high) - (secondTime * low)) / (high - low);
        return (start, 2 * firstHeight / ((firstTime - start) * (firstTime - start)));
    }

    /// <summary>When a climb told by heights alone left the pad: back from where it passes 10 m and 40 m; null where it does not.</summary>
    /// <param name="times">s.</param>
    /// <param name="heights">m, smooth.</param>
    public static double? Left(IReadOnlyList<double> times, IReadOnlyList<double> heights)
    {
        double? low = null, high = null;
        for (var i = 1; i < heights.Count && high is null; i++)
        {
            low = heights[i] < LowMark ? null : low ?? Passing(i, LowMark);
            if (heights[i] >= HighMark) high = Passing(i, HighMark);
        }

        return low is { } first && high is { } second && second > first ? FromRest(first, LowMark, second, HighMark).Time : null;

        double Passing(int i, double mark)
        {
            var share = (mark - heights[i - 1]) / (heights[i] - heights[i - 1]);
            return times[i - 1] + (Math.Clamp(share, 0, 1) * (times[i] - times[i - 1]));
        }
    }

    /// <summary>First sample after lift-off that no longer feels more push than drag; null where there is none.</summary>
    /// <param name="times">s.</param>
    /// <param name="accelerations">m/s², nil on the pad.</param>
    /// <param name="liftOff">s.</param>
    public static int? Burnout(IReadOnlyList<double> times, IReadOnlyList<double> accelerations, double liftOff)
    {
        for (var i = 0; i < times.Count; i++)
        {
            if (times[i] > liftOff + 0.1 && accelerations[i] + Gravity <= 0) return i;
        }

        return null;
    }

    /// <summary>When the smooth speed falls through nil, s; null where it never does.</summary>
    /// <param name="smooth">The flight.</param>
    /// <param name="after">Not before this, s.</param>
    public static double? Apogee(SmoothedFlight smooth, double after)
    {
        for (var i = smooth.IndexAt(after); i + 1 < smooth.Time.Count; i++)
        {
            double now = smooth.Speed[i], next = smooth.Speed[i + 1];
            if (now > 0 && next <= 0) return smooth.Time[i] + ((smooth.Time[i + 1] - smooth.Time[i]) * now / (now - next));
        }

        return null;
    }

    /// <summary>
    /// Start of the first ten seconds in which it hardly moves, s, or of what is left of the record then, three seconds at least; null where it ends
    /// before.
    /// </summary>
    /// <param name="smooth">The flight.</param>
    /// <param name="after">Not before this, s.</param>
    public static double? Landing(SmoothedFlight smooth, double after)
    {
        const double Still = 1, Span = 3, For = 10, Least = 3;
        var first = smooth.IndexAt(after) + 1;
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (var i = first; i < smooth.Time.Count; i++)
        {
            (low, high) = (Math.Min(low, smooth.Height[i]), Math.Max(high, smooth.Height[i]));
            if (Math.Abs(smooth.Speed[i]) >= Still || high - low >= Span)
            {
                (first, low, high) = (i + 1, double.PositiveInfinity, double.NegativeInfinity);
                continue;
            }

            if (smooth.Time[i] - smooth.Time[first] >= For) return smooth.Time[first];
        }

        return first < smooth.Time.Count && smooth.Time[^1] - smooth.Time[first] >= Least ? smooth.Time[first] : null;
    }

    /// <summary>When a steady descent became much slower, s: cumulative sums of the rates of one-second blocks; null where it did not.</summary>
    /// <param name="times">s.</param>
    /// <param name="heights">m; NaN where missing.</param>
    /// <param name="from">s.</param>
    /// <param name="to">s.</param>
    public static double? Slowed(IReadOnlyList<double> times, IReadOnlyList<double> heights, double from, double to)
    {
        const int Known = 8;
        List<(double Start, double Rate)> blocks = [];
        for (var start = from; start + 1 <= to; start++)
        {
            if (DescentFit.Of(times, heights, start, start + 1) is { } fit) blocks.Add((start, fit.Rate));
        }

        if (blocks.Count <= Known + 2) return null;
        var rates = blocks.Select(b => b.Rate).ToArray();
        var mean = rates.Take(Known).Average();

        // A quarter of the rate is far beyond gusts and swinging, and half of what a main changes at least.
        return mean <= 0 ? null : Cusum.Of(rates, mean, mean / 4).FallsFrom(mean) is { } first ? blocks[first].Start : null;
    }
}
