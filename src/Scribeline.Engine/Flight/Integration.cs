using System.Runtime.CompilerServices;

namespace Scribeline.Engine.Flight;

/// <summary>A system of equations of motion with the events to watch.</summary>
internal interface IMotion
{
    /// <summary>Events watched, at most <see cref="Integration.MostEvents"/>.</summary>
    int Events { get; }

    /// <summary>Rates of change of the state.</summary>
    void Rates(double time, ReadOnlySpan<double> y, Span<double> rates);

    /// <summary>Puts back what a state must satisfy and steps let drift.</summary>
    void Settle(Span<double> y);

    /// <summary>Event functions; an event happens where one turns from negative to positive.</summary>
    void EventFunctions(double time, ReadOnlySpan<double> y, Span<double> values);
}

/// <summary>How a run of steps ended.</summary>
/// <param name="Time">s.</param>
/// <param name="Event">Index of the event that ended it; −1 at the end time.</param>
/// <param name="Failure">None, or why it stopped.</param>
internal readonly record struct Arrival(double Time, int Event, FlightFailure Failure = FlightFailure.None);

/// <summary>
/// Adaptive Runge-Kutta steps with dense output and event location.
/// Source: Tsitouras, Comput. Math. Appl. 62 (2011) 770-775, pair 5(4); step control of Hairer, Nørsett and Wanner, Solving Ordinary
/// Differential Equations I, II.4 (from memory).
/// </summary>
internal sealed class Integration(Trajectory trajectory, double relative, double[] scale, int maximumSteps)
{
    public const int MostEvents = 4;

    /// <summary>Two boundaries closer than this, s, are one.</summary>
    private const double LeastRun = 1e-12;
    private const int Stages = 7;
    private const int Looks = 4;
    private readonly int size = trajectory.Size;
    private readonly double[] k = new double[Stages * trajectory.Size];
    private readonly double[] trial = new double[trajectory.Size];
    private readonly double[] next = new double[trajectory.Size];
    private double step;
    private double lastError = 1e-4;

    public int Rejected { get; private set; }

    public int Evaluations { get; private set; }

    /// <summary>Steps from a time until an event or the end time; <paramref name="y"/> is carried along.</summary>
    /// <param name="motion">The equations.</param>
    /// <param name="from">s.</param>
    /// <param name="to">s, later than <paramref name="from"/>.</param>
    /// <param name="y">State, replaced by the state at arrival.</param>
    /// <param name="mark">Kept with every step.</param>
    public Arrival Run<TMotion>(in TMotion motion, double from, double to, Span<double> y, int mark)
        where TMotion : struct, IMotion
    {
        Span<double> before = stackalloc double[MostEvents];
        Span<double> after = stackalloc double[MostEvents];
        if (to - from <= LeastRun) return new(to, -1);
        double t = from;
        Evaluate(motion, t, y, 0);
        motion.EventFunctions(t, y, before);
        if (step == 0) step = FirstStep(y);
        lastError = 1e-4;
        bool rejected = false;
        while (true)
        {
            if (trajectory.Count >= maximumSteps) return new(t, -1, FlightFailure.TooManySteps);

            // A remainder shorter than a tenth of a step is taken along; two steps left are made equal.
            double left = to - t;
            double h = left <= 1.1 * step ? left : left < 2 * step ? left / 2 : step;
            if (!(h > 1e-14 * Math.Max(1, Math.Abs(t)))) return new(t, -1, FlightFailure.NotFinite);

            double error = Attempt(motion, t, h, y);
            if (!(error <= 1))
            {
                step = h * (double.IsNaN(error) ? 0.1 : Math.Max(0.2, 0.9 * Math.Pow(error, -0.2)));
                Rejected++;
                rejected = true;
                continue;
            }

            // PI control, β = 0.04 (Hairer, Nørsett and Wanner II.4).
            double growth = 0.9 * Math.Pow(Math.Max(error, 1e-10), -0.17) * Math.Pow(lastError, 0.04);
            double proposed = h * Math.Clamp(growth, 0.2, rejected ? 1 : 10);
            step = h < step ? Math.Max(step, proposed) : proposed;
            lastError = Math.Max(error, 1e-4);
            rejected = false;

            Span<double> polynomial = trajectory.Next();
            Polynomial(h, y, polynomial);
            int happened = FirstEvent(motion, t, h, polynomial, before, after, out double theta);
            double end = happened < 0 ? h == left ? to : t + h : t + theta * h;
            trajectory.Keep(new(t, end, h, mark));
            if (happened >= 0)
            {
                Trajectory.Evaluate(polynomial, theta, y);
                motion.Settle(y);
                return new(end, happened);
            }

            next.CopyTo(y);
            motion.Settle(y);
            k.AsSpan(6 * size, size).CopyTo(k);
            after.CopyTo(before);
            t = end;
            if (t >= to) return new(t, -1);
        }
    }

    private void Evaluate<TMotion>(in TMotion motion, double t, ReadOnlySpan<double> y, int stage)
        where TMotion : struct, IMotion
    {
        motion.Rates(t, y, k.AsSpan(stage * size, size));
        Evaluations++;
    }

    private double Scale(int i, double a, double b) => relative * (scale[i] + Math.Max(Math.Abs(a), Math.Abs(b)));

    private double FirstStep(ReadOnlySpan<double> y)
    {
        double sum = 0;
        for (int i = 0; i < size; i++)
        {
            double e = k[i] / (scale[i] + Math.Abs(y[i]));
            sum += e * e;
        }

        return 0.01 / Math.Max(1, Math.Sqrt(sum / size));
    }

    /// <summary>One step into <c>next</c>; the error against tolerance, 1 at the limit.</summary>
    private double Attempt<TMotion>(in TMotion motion, double t, double h, ReadOnlySpan<double> y)
        where TMotion : struct, IMotion
    {
        ReadOnlySpan<double> nodes = TsitourasPair.Nodes;
        for (int stage = 1; stage < Stages; stage++)
        {
            Span<double> target = stage == Stages - 1 ? next : trial;
            Combine(TsitourasPair.Stage(stage), h, y, target);
            Evaluate(motion, stage >= 5 ? t + h : t + nodes[stage] * h, target, stage);
        }

        ReadOnlySpan<double> e = TsitourasPair.Error;
        double sum = 0;
        for (int i = 0; i < size; i++)
        {
            double error = 0;
            for (int s = 0; s < Stages; s++) error += e[s] * k[s * size + i];
            error *= h / Scale(i, y[i], next[i]);
            sum += error * error;
        }

        return Math.Sqrt(sum / size);
    }

    private void Combine(ReadOnlySpan<double> weights, double h, ReadOnlySpan<double> y, Span<double> target)
    {
        for (int i = 0; i < size; i++)
        {
            double sum = 0;
            for (int s = 0; s < weights.Length; s++) sum += weights[s] * k[s * size + i];
            target[i] = y[i] + h * sum;
        }
    }

    private void Polynomial(double h, ReadOnlySpan<double> y, Span<double> polynomial)
    {
        y.CopyTo(polynomial);
        for (int power = 1; power <= 4; power++)
        {
            ReadOnlySpan<double> p = TsitourasPair.Dense(power);
            Span<double> c = polynomial.Slice(power * size, size);
            for (int i = 0; i < size; i++)
            {
                double sum = 0;
                for (int s = 0; s < Stages; s++) sum += p[s] * k[s * size + i];
                c[i] = h * sum;
            }
        }
    }

    /// <summary>The earliest event of a step, looked for between a few points so that two crossings in one step are seen.</summary>
    private int FirstEvent<TMotion>(
        in TMotion motion, double t, double h, ReadOnlySpan<double> polynomial, Span<double> before, Span<double> after, out double theta)
        where TMotion : struct, IMotion
    {
        theta = 1;
        int count = motion.Events, first = -1;
        if (count == 0) return -1;
        double low = 0;
        for (int look = 1; look <= Looks; look++)
        {
            double high = (double)look / Looks;
            Values(motion, t, h, polynomial, high, after);
            for (int j = 0; j < count; j++)
            {
                if (!(before[j] < 0 && after[j] >= 0)) continue;
                double crossing = Locate(motion, t, h, polynomial, j, low, high);
                if (first >= 0 && crossing >= theta) continue;
                (first, theta) = (j, crossing);
            }

            if (first >= 0) return first;
            after.CopyTo(before);
            low = high;
        }

        return -1;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Values<TMotion>(
        in TMotion motion, double t, double h, ReadOnlySpan<double> polynomial, double theta, Span<double> values)
        where TMotion : struct, IMotion
    {
        Trajectory.Evaluate(polynomial, theta, trial);
        motion.EventFunctions(t + theta * h, trial, values);
    }

    /// <summary>The crossing between two θ, to the last digit that matters: the end of the bracket that is past it.</summary>
    private double Locate<TMotion>(in TMotion motion, double t, double h, ReadOnlySpan<double> polynomial, int j, double low, double high)
        where TMotion : struct, IMotion
    {
        Span<double> values = stackalloc double[MostEvents];
        Values(motion, t, h, polynomial, low, values);
        double a = values[j];
        Values(motion, t, h, polynomial, high, values);
        double b = values[j];
        for (int i = 0; i < 100 && (high - low) * h > 1e-12; i++)
        {
            // Regula falsi; where it stays on one side, halving the other's value (Illinois) pulls it over.
            double middle = i < 60 ? low + (high - low) * (-a / (b - a)) : (low + high) / 2;
            if (!(middle > low && middle < high)) middle = (low + high) / 2;
            Values(motion, t, h, polynomial, middle, values);
            double m = values[j];
            if (m == 0) return middle;
            if (m < 0)
            {
                (low, a) = (middle, m);
                b /= 2;
            }
            else
            {
                (high, b) = (middle, m);
                a /= 2;
            }
        }

        return high;
    }
}
