namespace Scribeline.Engine.Flight;

/// <summary>
/// Accepted steps of an integration, each with its polynomial: y(θ) = y0 + θ c1 + θ² c2 + θ³ c3 + θ⁴ c4, θ from 0 to 1 over the step
/// length, cut where an event ended the step.
/// </summary>
internal sealed class Trajectory(int size)
{
    private const int Terms = 5;
    private readonly List<Span> spans = [];
    private double[] coefficients = new double[256 * Terms * size];

    public int Size => size;

    public int Count => spans.Count;

    public double Start => spans[0].Start;

    public double End => spans[^1].End;

    /// <summary>Beginning, end and full length of a step. Mark is whatever the owner wants to know again about it.</summary>
    public readonly record struct Span(double Start, double End, double Length, int Mark);

    public Span this[int step] => spans[step];

    /// <summary>Room for the polynomial of the next step.</summary>
    public Span<double> Next()
    {
        int at = spans.Count * Terms * size;
        if (at + Terms * size > coefficients.Length) Array.Resize(ref coefficients, 2 * coefficients.Length);
        return coefficients.AsSpan(at, Terms * size);
    }

    /// <summary>Keeps the step whose polynomial was written to <see cref="Next"/>.</summary>
    public void Keep(Span span) => spans.Add(span);

    /// <summary>Keeps one state as a step of no length, so that there is always something to look at.</summary>
    public void KeepState(double time, ReadOnlySpan<double> y, int mark)
    {
        Span<double> polynomial = Next();
        polynomial.Clear();
        y.CopyTo(polynomial);
        Keep(new(time, time, 0, mark));
    }

    /// <summary>State at a time within a step.</summary>
    public void Evaluate(int step, double time, Span<double> y)
    {
        Span s = spans[step];
        Evaluate(coefficients.AsSpan(step * Terms * size, Terms * size), s.Length > 0 ? (time - s.Start) / s.Length : 0, y);
    }

    /// <summary>State at θ of a polynomial.</summary>
    public static void Evaluate(ReadOnlySpan<double> polynomial, double theta, Span<double> y)
    {
        int n = y.Length;
        for (int i = 0; i < n; i++)
        {
            y[i] = polynomial[i] + theta * (polynomial[n + i] + theta * (polynomial[2 * n + i]
                + theta * (polynomial[3 * n + i] + theta * polynomial[4 * n + i])));
        }
    }

    /// <summary>The step that holds a time: the later one at a boundary, the first or last outside.</summary>
    public int Find(double time)
    {
        int low = 0, high = spans.Count - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (spans[middle].Start <= time) low = middle;
            else high = middle - 1;
        }

        return low;
    }
}
