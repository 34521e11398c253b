using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Scribeline.Engine.Numerics;

/// <summary>
/// The arithmetic of one explicit Runge-Kutta step, written once for one system or a pack of them. Stages are stored
/// one after another, each as long as the state. Every lane has its own time and step.
/// </summary>
/// <remarks>
/// For a single system the components are taken four at a time, in the same order of operations, so that one system
/// and the same one in a pack agree to the bit.
/// </remarks>
public static class RungeKuttaStep
{
    /// <summary>
    /// Fills stages 1 to s - 1 from stage 0 (already holding f at the start) and leaves the new state in
    /// <paramref name="next"/>; the last stage is f there.
    /// </summary>
    /// <param name="system">The equations.</param>
    /// <param name="start">Time at the start.</param>
    /// <param name="width">Step h; negative backward.</param>
    /// <param name="end">The time given to stages at the end of the step.</param>
    /// <param name="state">State at the start.</param>
    /// <param name="stages">s times as long as the state.</param>
    /// <param name="next">State at the end, order <see cref="IRungeKuttaPair.Order"/>.</param>
    public static void Take<T, TPair, TSystem>(
        ref TSystem system, T start, T width, T end, ReadOnlySpan<T> state, Span<T> stages, Span<T> next)
        where T : struct, IReal<T>
        where TPair : struct, IRungeKuttaPair
        where TSystem : IOdeSystem<T>
    {
        CheckLengths(state.Length, TPair.Stages, stages.Length, next.Length);
        var nodes = TPair.Nodes;
        var matrix = TPair.Matrix;
        for (var stage = 1; stage < TPair.Stages; stage++)
        {
            var weights = matrix.Slice(stage * (stage - 1) / 2, stage);
            var done = typeof(T) == typeof(Scalar) ? Combine<T, Wide4>(0, state, width, weights, stages, next) : 0;
            Combine<T, T>(done, state, width, weights, stages, next);
            var time = nodes[stage] == 1 ? end : start + T.From(nodes[stage]) * width;
            system.Derivative(time, next, stages.Slice(stage * state.Length, state.Length));
        }
    }

    /// <summary>
    /// The error of a step against its tolerance: the root mean square over the components of
    /// e_i/(atol_i + rtol max(|y_i|, |next_i|)), 1 being just acceptable. Hairer, Norsett and Wanner I, equation II.4.11.
    /// </summary>
    /// <param name="width">Step h.</param>
    /// <param name="state">State at the start.</param>
    /// <param name="next">State at the end.</param>
    /// <param name="stages">The stages of the step.</param>
    /// <param name="relative">Relative tolerance.</param>
    /// <param name="absolute">Absolute tolerance of each component.</param>
    /// <param name="work">As long as the state; overwritten.</param>
    public static T Error<T, TPair>(
        T width, ReadOnlySpan<T> state, ReadOnlySpan<T> next, ReadOnlySpan<T> stages, T relative, ReadOnlySpan<T> absolute, Span<T> work)
        where T : struct, IReal<T>
        where TPair : struct, IRungeKuttaPair
    {
        CheckLengths(state.Length, TPair.Stages, stages.Length, Math.Min(next.Length, Math.Min(absolute.Length, work.Length)));
        var done = typeof(T) == typeof(Scalar)
            ? Squares<T, Wide4, TPair>(0, Spread<T, Wide4>(width), state, next, stages, Spread<T, Wide4>(relative), absolute, work)
            : 0;
        Squares<T, T, TPair>(done, width, state, next, stages, relative, absolute, work);
        var total = T.From(0);
        for (var i = 0; i < state.Length; i++) total += work[i];
        return T.Sqrt(total / T.From(state.Length));
    }

    /// <summary>
    /// The dense output of a step as polynomials in theta = (t - start)/h without constant term: for each power from 1,
    /// one coefficient per component.
    /// </summary>
    public static void Interpolant<T, TPair>(T width, ReadOnlySpan<T> stages, Span<T> coefficients)
        where T : struct, IReal<T>
        where TPair : struct, IRungeKuttaPair
    {
        var degree = TPair.DenseDegree;
        var dense = TPair.Dense;
        var n = coefficients.Length / degree;
        CheckLengths(n, TPair.Stages, stages.Length, n);
        for (var power = 0; power < degree; power++)
        {
            var row = coefficients.Slice(power * n, n);
            var weights = dense[power..];
            var done = typeof(T) == typeof(Scalar) ? Blend<T, Wide4>(0, width, weights, degree, stages, row) : 0;
            Blend<T, T>(done, width, weights, degree, stages, row);
        }
    }

    /// <summary>The state at theta by the polynomials of <see cref="Interpolant"/>.</summary>
    public static void Evaluate<T>(T theta, ReadOnlySpan<T> state, ReadOnlySpan<T> coefficients, Span<T> result)
        where T : struct, IReal<T>
    {
        CheckLengths(state.Length, 0, 0, result.Length);
        var done = typeof(T) == typeof(Scalar) ? Polynomial<T, Wide4>(0, Spread<T, Wide4>(theta), state, coefficients, result) : 0;
        Polynomial<T, T>(done, theta, state, coefficients, result);
    }

    private static int Combine<T, TPack>(
        int i, ReadOnlySpan<T> state, T width, ReadOnlySpan<double> weights, ReadOnlySpan<T> stages, Span<T> result)
        where T : struct, IReal<T>
        where TPack : struct, IReal<TPack>
    {
        var n = state.Length;
        var h = Spread<T, TPack>(width);
        for (; i + TPack.Width / T.Width <= n; i += TPack.Width / T.Width)
        {
            var sum = TPack.From(weights[0]) * Read<T, TPack>(stages, i);
            for (int stage = 1, at = i + n; stage < weights.Length; stage++, at += n)
            {
                sum += TPack.From(weights[stage]) * Read<T, TPack>(stages, at);
            }

            Write(result, i, Read<T, TPack>(state, i) + h * sum);
        }

        return i;
    }

    private static int Squares<T, TPack, TPair>(
        int i, TPack h, ReadOnlySpan<T> state, ReadOnlySpan<T> next, ReadOnlySpan<T> stages, TPack relative, ReadOnlySpan<T> absolute, Span<T> result)
        where T : struct, IReal<T>
        where TPack : struct, IReal<TPack>
        where TPair : struct, IRungeKuttaPair
    {
        var n = state.Length;
        var weights = TPair.ErrorWeights;
        for (; i + TPack.Width / T.Width <= n; i += TPack.Width / T.Width)
        {
            var sum = TPack.From(weights[0]) * Read<T, TPack>(stages, i);
            for (int stage = 1, at = i + n; stage < weights.Length; stage++, at += n)
            {
                sum += TPack.From(weights[stage]) * Read<T, TPack>(stages, at);
            }

            var size = TPack.Max(TPack.Abs(Read<T, TPack>(state, i)), TPack.Abs(Read<T, TPack>(next, i)));
            // The floor lets a component that is zero, stays zero and has no absolute tolerance pass.
            var scale = TPack.Max(Read<T, TPack>(absolute, i) + relative * size, TPack.From(1e-300));
            var ratio = h * sum / scale;
            Write(result, i, ratio * ratio);
        }

        return i;
    }

    private static int Blend<T, TPack>(
        int i, T width, ReadOnlySpan<double> weights, int stride, ReadOnlySpan<T> stages, Span<T> result)
        where T : struct, IReal<T>
        where TPack : struct, IReal<TPack>
    {
        var n = result.Length;
        var h = Spread<T, TPack>(width);
        for (; i + TPack.Width / T.Width <= n; i += TPack.Width / T.Width)
        {
            var sum = TPack.From(weights[0]) * Read<T, TPack>(stages, i);
            for (int entry = stride, at = i + n; entry < weights.Length; entry += stride, at += n)
            {
                sum += TPack.From(weights[entry]) * Read<T, TPack>(stages, at);
            }

            Write(result, i, h * sum);
        }

        return i;
    }

    private static int Polynomial<T, TPack>(int i, TPack theta, ReadOnlySpan<T> state, ReadOnlySpan<T> coefficients, Span<T> result)
        where T : struct, IReal<T>
        where TPack : struct, IReal<TPack>
    {
        var n = state.Length;
        for (; i + TPack.Width / T.Width <= n; i += TPack.Width / T.Width)
        {
            var sum = TPack.From(0);
            for (var at = coefficients.Length - n + i; at >= 0; at -= n) sum = (sum + Read<T, TPack>(coefficients, at)) * theta;
            Write(result, i, Read<T, TPack>(state, i) + sum);
        }

        return i;
    }

    // The loops above read beyond what a span's own check sees; their lengths are checked once here.
    private static void CheckLengths(int n, int count, int stages, int others)
    {
        if (stages < n * count || others < n) throw new ArgumentException("The arrays of a step are too short.");
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TPack Spread<T, TPack>(T value)
        where T : struct, IReal<T>
        where TPack : struct, IReal<TPack> =>
        typeof(T) == typeof(TPack) ? Unsafe.BitCast<T, TPack>(value) : TPack.From(T.Lane(value, 0));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TPack Read<T, TPack>(ReadOnlySpan<T> from, int index) =>
        Unsafe.As<T, TPack>(ref Unsafe.Add(ref MemoryMarshal.GetReference(from), index));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Write<T, TPack>(Span<T> to, int index, TPack value) =>
        Unsafe.As<T, TPack>(ref Unsafe.Add(ref MemoryMarshal.GetReference(to), index)) = value;
}
