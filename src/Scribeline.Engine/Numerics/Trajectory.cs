namespace Scribeline.Engine.Numerics;

/// <summary>
/// A whole solution: the steps of one run, or of several that follow one another, to be evaluated anywhere between the
/// first start and the last end. Memory: per step (degree + 1) times the dimension, and three numbers.
/// </summary>
public sealed class Trajectory : IStepSink
{
    private readonly List<PassedEvent> passed = [];
    private readonly int n;
    private double[] starts = new double[16];
    private double[] widths = new double[16];
    private double[] numbers = [];
    private int stride;

    /// <summary>An empty solution.</summary>
    /// <param name="dimension">Components of the state.</param>
    public Trajectory(int dimension)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimension, 1);
        n = dimension;
    }

    /// <summary>The same solution, to be gone on with apart from this one.</summary>
    public Trajectory Copy()
    {
        Trajectory copy = new(n) { starts = [.. starts], widths = [.. widths], numbers = [.. numbers], stride = stride, Count = Count, End = End };
        copy.passed.AddRange(passed);
        return copy;
    }

    /// <summary>An event that was passed on the way.</summary>
    public readonly record struct PassedEvent(int Index, double Time);

    /// <summary>Number of steps.</summary>
    public int Count { get; private set; }

    /// <summary>Components of the state.</summary>
    public int Dimension => n;

    /// <summary>Where the first step starts; NaN while empty.</summary>
    public double Start => Count == 0 ? double.NaN : starts[0];

    /// <summary>Where the last step ends; NaN while empty.</summary>
    public double End { get; private set; } = double.NaN;

    /// <summary>Events that did not end a run, in the order in which they happened.</summary>
    public IReadOnlyList<PassedEvent> Passed => passed;

    /// <summary>The start of one step.</summary>
    public double StepStart(int step) => starts[InRange(step)];

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The step does not start where the last one ended, or is of another kind.</exception>
    public void Accept(DenseStep step)
    {
        var size = step.StartState.Length + step.Coefficients.Length;
        if (step.StartState.Length != n || (Count > 0 && (step.Start != End || size != stride)))
        {
            throw new ArgumentException("The step does not go on from the last one.", nameof(step));
        }

        stride = size;
        if (Count == starts.Length)
        {
            Array.Resize(ref starts, 2 * Count);
            Array.Resize(ref widths, 2 * Count);
        }

        if (numbers.Length < (Count + 1) * stride) Array.Resize(ref numbers, starts.Length * stride);
        starts[Count] = step.Start;
        widths[Count] = step.Width;
        step.StartState.CopyTo(numbers.AsSpan(Count * stride));
        step.Coefficients.CopyTo(numbers.AsSpan(Count * stride + n));
        End = step.End;
        Count++;
    }

    /// <inheritdoc/>
    public void Pass(int index, double time, ReadOnlySpan<double> state) => passed.Add(new(index, time));

    /// <summary>The state at a time, held to the start and end. Where two runs meet, the state of the later one.</summary>
    public void StateAt(double time, Span<double> state) => Step(Find(time, before: false)).StateAt(Held(time), state);

    /// <summary>As <see cref="StateAt"/>, but where two runs meet the state of the earlier one.</summary>
    public void StateBefore(double time, Span<double> state) => Step(Find(time, before: true)).StateAt(Held(time), state);

    /// <summary>The rate of change of the state at a time, held to the start and end.</summary>
    public void RateAt(double time, Span<double> rate) => Step(Find(time, before: false)).RateAt(Held(time), rate);

    /// <summary>One step as it was recorded.</summary>
    public DenseStep Step(int step)
    {
        InRange(step);
        var own = numbers.AsSpan(step * stride, stride);
        return new(starts[step], widths[step], step + 1 < Count ? starts[step + 1] : End, own[..n], own[n..]);
    }

    private double Held(double time) => Start <= End ? Math.Clamp(time, Start, End) : Math.Clamp(time, End, Start);

    private int Find(double time, bool before)
    {
        if (Count == 0) throw new InvalidOperationException("The solution has no steps.");
        var direction = Math.Sign(End - Start);
        var (low, high) = (0, Count);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            var past = (time - starts[middle]) * direction;
            if (past > 0 || (past == 0 && !before)) low = middle;
            else high = middle;
        }

        return low;
    }

    private int InRange(int step)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(step);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(step, Count);
        return step;
    }
}
