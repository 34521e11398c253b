namespace Scribeline.Engine.Flight;

/// <summary>Greatest values along a track: the best of a few points in every step, then golden section between its neighbours.</summary>
internal static class MaximumSearch
{
    private const int Points = 4;

    /// <summary>Greatest value of a measure between two times.</summary>
    public static FlightMaximum Of(FlightTrack track, Func<FlightSample, double> measure, double from, double to)
    {
        List<double> times = Times(track, from, to);
        int best = 0;
        double greatest = double.NegativeInfinity;
        for (int i = 0; i < times.Count; i++)
        {
            double value = measure(track.At(times[i]));
            if (value > greatest) (best, greatest) = (i, value);
        }

        return Refine(track, measure, times, best, greatest);
    }

    /// <summary>Greatest values of the whole rocket's track.</summary>
    public static FlightMaxima Whole(FlightTrack track, RailExit? exit)
    {
        List<double> times = Times(track, track.Start, track.End);
        List<FlightSample> samples = [.. times.Select(track.At)];
        double free = exit?.Aft.Time ?? double.PositiveInfinity;
        double slow = samples.FirstOrDefault(s => s.Time > free && s.Airspeed < 30)?.Time ?? double.PositiveInfinity;
        return new(
            Find(s => s.Speed),
            Find(s => s.Mach),
            Find(s => s.DynamicPressure),
            Find(s => s.ProperAcceleration.Length),
            Find(s => s.Time >= free && s.Time <= slow ? s.AngleOfAttack : 0),
            Find(s => s.Thrust),
            Find(s => Math.Abs(s.RollRate)));

        FlightMaximum Find(Func<FlightSample, double> measure)
        {
            int best = 0;
            for (int i = 1; i < samples.Count; i++)
            {
                if (measure(samples[i]) > measure(samples[best])) best = i;
            }

            return Refine(track, measure, times, best, measure(samples[best]));
        }
    }

    private static List<double> Times(FlightTrack track, double from, double to)
    {
        List<double> times = [];
        foreach ((double start, double end) in track.Steps)
        {
            if (end < from || start > to) continue;
            for (int i = 0; i < Points; i++)
            {
                double t = start + (end - start) * i / Points;
                if (t >= from && t <= to) times.Add(t);
            }
        }

        times.Add(Math.Min(to, track.End));
        return times;
    }

    private static FlightMaximum Refine(FlightTrack track, Func<FlightSample, double> measure, List<double> times, int best, double greatest)
    {
        double low = times[Math.Max(best - 1, 0)], high = times[Math.Min(best + 1, times.Count - 1)], at = times[best];
        double golden = (Math.Sqrt(5) - 1) / 2;
        double a = high - golden * (high - low), b = low + golden * (high - low);
        double atA = measure(track.At(a)), atB = measure(track.At(b));
        while (high - low > 1e-7)
        {
            if (atA > atB)
            {
                (high, b, atB) = (b, a, atA);
                a = high - golden * (high - low);
                atA = measure(track.At(a));
            }
            else
            {
                (low, a, atA) = (a, b, atB);
                b = low + golden * (high - low);
                atB = measure(track.At(b));
            }
        }

        double found = Math.Max(atA, atB);
        if (found > greatest) (at, greatest) = (atA > atB ? a : b, found);
        return new(greatest, at, track.At(at).Height);
    }
}
