using System.Runtime.InteropServices;

namespace Scribeline.Engine.Numerics;

/// <summary>One step of a solution as a polynomial in time.</summary>
public readonly ref struct DenseStep
{
    internal DenseStep(double start, double width, double end, ReadOnlySpan<double> state, ReadOnlySpan<double> coefficients)
    {
        Start = start;
        Width = width;
        End = end;
        StartState = state;
        Coefficients = coefficients;
    }

    /// <summary>Time at the start.</summary>
    public double Start { get; }

    /// <summary>Width of the step as taken: theta is (t - start)/width. Negative backward.</summary>
    public double Width { get; }

    /// <summary>Time up to which the step is valid: start + width, or earlier where an event cut it off.</summary>
    public double End { get; }

    /// <summary>State at the start.</summary>
    public ReadOnlySpan<double> StartState { get; }

    /// <summary>For each power of theta from 1, one coefficient per component.</summary>
    public ReadOnlySpan<double> Coefficients { get; }

    /// <summary>The state at a time within the step.</summary>
    public void StateAt(double time, Span<double> state) => RungeKuttaStep.Evaluate(
        (Scalar)((time - Start) / Width), Scalars(StartState), Scalars(Coefficients), MemoryMarshal.Cast<double, Scalar>(state));

    /// <summary>The rate of change of the state at a time within the step, one order less accurate than the state.</summary>
    public void RateAt(double time, Span<double> rate)
    {
        var n = StartState.Length;
        var degree = Coefficients.Length / n;
        var theta = (time - Start) / Width;
        for (var i = 0; i < n; i++)
        {
            var sum = 0.0;
            for (var power = degree; power >= 1; power--) sum = sum * theta + power * Coefficients[(power - 1) * n + i];
            rate[i] = sum / Width;
        }
    }

    private static ReadOnlySpan<Scalar> Scalars(ReadOnlySpan<double> values) => MemoryMarshal.Cast<double, Scalar>(values);
}
