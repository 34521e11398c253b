namespace Scribeline.Engine.Numerics;

/// <summary>
/// Finds the zeros of event functions within a step on its dense output, earliest first. Each step is looked at in four
/// parts, so that two crossings in one step are seen; in each part a function is taken to cross once.
/// </summary>
/// <param name="dimension">Components of the state.</param>
/// <param name="tolerance">Largest distance of a reported time from the zero.</param>
internal sealed class EventSearch(int dimension, double tolerance)
{
    private const int Parts = 4;
    private const int MostEvents = 64;

    private readonly double[] probe = new double[dimension];
    private double[] behind = [];
    private double[] ahead = [];
    private double[] root = [];
    private ulong waiting;

    /// <summary>The terminal event found; -1 if none.</summary>
    public int Fired { get; private set; }

    /// <summary>All terminal events up to its time, one bit each.</summary>
    public ulong FiredSet { get; private set; }

    /// <summary>The time of the terminal event, on the far side of its zero.</summary>
    public double FiredTime { get; private set; }

    /// <summary>Takes the values at the start of a run. Events of the set <paramref name="just"/> wait until they have left their guard.</summary>
    public void Begin<TEvents>(ref TEvents events, double time, ReadOnlySpan<double> state, ulong just)
        where TEvents : IEventFunctions
    {
        var count = events.Count;
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, MostEvents);
        Fired = -1;
        FiredSet = 0;
        if (behind.Length != count) (behind, ahead, root) = (new double[count], new double[count], new double[count]);
        waiting = just;
        for (var i = 0; i < count; i++)
        {
            behind[i] = events.Value(i, time, state);
            Release(i, events.Rule(i).Guard);
        }
    }

    /// <summary>
    /// Looks through a step; passing events are told to the sink. True if a terminal one was found, and
    /// <paramref name="next"/> then holds the state there.
    /// </summary>
    public bool Search<TEvents, TSink>(ref TEvents events, ref TSink sink, DenseStep step, Span<double> next)
        where TEvents : IEventFunctions
        where TSink : IStepSink
    {
        for (var part = 1; part <= Parts; part++)
        {
            var from = step.Start + step.Width * (part - 1) / Parts;
            var to = part == Parts ? step.End : step.Start + step.Width * part / Parts;
            if (part < Parts) step.StateAt(to, probe);
            else next.CopyTo(probe);

            for (var i = 0; i < ahead.Length; i++) ahead[i] = events.Value(i, to, probe);
            for (var i = 0; i < ahead.Length; i++)
            {
                root[i] = Happens(i, events.Rule(i).Crossing, ahead[i]) ? Locate(ref events, i, step, from, to) : double.NaN;
            }

            if (Report(ref events, ref sink, step, next)) return true;
            for (var i = 0; i < ahead.Length; i++)
            {
                behind[i] = ahead[i];
                if (waiting != 0) Release(i, events.Rule(i).Guard);
            }
        }

        return false;
    }

    private bool Report<TEvents, TSink>(ref TEvents events, ref TSink sink, DenseStep step, Span<double> next)
        where TEvents : IEventFunctions
        where TSink : IStepSink
    {
        while (true)
        {
            var first = Earliest(step.Width);
            if (first < 0) return false;
            var time = root[first];
            step.StateAt(time, probe);
            if (events.Rule(first).Terminal)
            {
                End(ref events, ref sink, first, time);
                probe.CopyTo(next);
                return true;
            }

            sink.Pass(first, time, probe);
            root[first] = double.NaN;
        }
    }

    /// <summary>Gathers what else happened up to the end, which the next run would start beyond and never see.</summary>
    private void End<TEvents, TSink>(ref TEvents events, ref TSink sink, int first, double time)
        where TEvents : IEventFunctions
        where TSink : IStepSink
    {
        Fired = first;
        FiredTime = time;
        FiredSet = 1UL << first;
        for (var i = 0; i < root.Length; i++)
        {
            if (i == first || double.IsNaN(root[i])) continue;
            var rule = events.Rule(i);
            if (root[i] != time && !Happens(i, rule.Crossing, events.Value(i, time, probe))) continue;
            if (rule.Terminal) FiredSet |= 1UL << i;
            else sink.Pass(i, time, probe);
        }
    }

    private int Earliest(double direction)
    {
        var first = -1;
        for (var i = 0; i < root.Length; i++)
        {
            if (!double.IsNaN(root[i]) && (first < 0 || (root[first] - root[i]) * direction > 0)) first = i;
        }

        return first;
    }

    private bool Happens(int index, Crossing crossing, double value) =>
        (waiting & (1UL << index)) == 0
        && ((behind[index] < 0 && value >= 0 && crossing != Crossing.Falling)
            || (behind[index] > 0 && value <= 0 && crossing != Crossing.Rising));

    private void Release(int index, double guard)
    {
        if (Math.Abs(behind[index]) > guard) waiting &= ~(1UL << index);
    }

    /// <summary>
    /// The far side of a zero, by Chandrupatla's bracketing with inverse quadratic interpolation (Advances in Engineering
    /// Software 28 (1997) 145-149).
    /// </summary>
    private double Locate<TEvents>(ref TEvents events, int index, DenseStep step, double from, double to)
        where TEvents : IEventFunctions
    {
        var (a, fa, b, fb) = (to, ahead[index], from, behind[index]);
        if (fa == 0) return to;
        var before = Math.Sign(fb);
        var fraction = 0.5;
        var largest = Math.Max(Math.Abs(from), Math.Abs(to));
        var least = Math.Max(tolerance, 4 * (Math.BitIncrement(largest) - largest));
        while (Math.Abs(b - a) > least)
        {
            var x = a + fraction * (b - a);
            step.StateAt(x, probe);
            var fx = events.Value(index, x, probe);
            if (fx == 0) return x;
            double c, fc;
            if (Math.Sign(fx) == Math.Sign(fa)) (c, fc) = (a, fa);
            else (c, fc, b, fb) = (b, fb, a, fa);
            (a, fa) = (x, fx);
            var (xi, phi) = ((a - b) / (c - b), (fa - fb) / (fc - fb));
            fraction = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
                ? fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
                : 0.5;
            var margin = 0.5 * least / Math.Abs(b - a);
            fraction = margin >= 0.5 ? 0.5 : Math.Clamp(fraction, margin, 1 - margin);
        }

        return Math.Sign(fa) == before ? b : a;
    }
}
