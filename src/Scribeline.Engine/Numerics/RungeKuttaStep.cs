namespace Scribeline.Engine.Numerics;

/// <summary>
/// The arithmetic of one explicit Runge-Kutta step, written once for one system or a pack of them. Stages are stored
/// one after another, each as long as the state. Every lane has its own time and step.
/// </summary>
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
        var nodes = TPair.Nodes;
        var matrix = TPair.Matrix;
        for (var stage = 1; stage < TPair.Stages; stage++)
        {
            Combine(state, width, matrix.Slice(stage * (stage - 1) / 2, stage), stages, next);
            var time = nodes[stage] == 1 ? end : start + T.From(nodes[stage]) * width;
            system.Derivative(time, next, stages.Slice(stage * state.Length, state.Length));
        }
    }

    /// <summary>
    /// The error of a step against its tolerance: the root mean square over the components of
    /// e_i/(atol_i + rtol max(|y_i|, |next_i|)), 1 being just acceptable. Hairer, Norsett and Wanner I, equation II.4.11.
    /// </summary>
    public static T Error<T, TPair>(
        T width, ReadOnlySpan<T> state, ReadOnlySpan<T> next, ReadOnlySpan<T> stages, double relative, ReadOnlySpan<double> absolute)
        where T : struct, IReal<T>
        where TPair : struct, IRungeKuttaPair
    {
        var weights = TPair.ErrorWeights;
        var n = state.Length;
        var total = T.From(0);
        var rtol = T.From(relative);
        for (var i = 0; i < n; i++)
        {
            var sum = T.From(weights[0]) * stages[i];
            for (int stage = 1, at = i + n; stage < weights.Length; stage++, at += n) sum += T.From(weights[stage]) * stages[at];
            var scale = T.From(absolute[i]) + rtol * T.Max(T.Abs(state[i]), T.Abs(next[i]));
            // The floor lets a component that is zero, stays zero and has no absolute tolerance pass.
            var ratio = width * sum / T.Max(scale, T.From(1e-300));
            total += ratio * ratio;
        }

        return T.Sqrt(total / T.From(n));
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
        for (var power = 0; power < degree; power++)
        {
            var row = coefficients.Slice(power * n, n);
            row.Clear();
            for (var stage = 0; stage < TPair.Stages; stage++)
            {
                if (dense[stage * degree + power] == 0) continue;
                var weight = width * T.From(dense[stage * degree + power]);
                var k = stages.Slice(stage * n, n);
                for (var i = 0; i < row.Length; i++) row[i] += weight * k[i];
            }
        }
    }

    /// <summary>result = state + h (w_0 k_0 + w_1 k_1 + ...).</summary>
    private static void Combine<T>(ReadOnlySpan<T> state, T width, ReadOnlySpan<double> weights, ReadOnlySpan<T> stages, Span<T> result)
        where T : struct, IReal<T>
    {
        var n = state.Length;
        for (var i = 0; i < n; i++)
        {
            var sum = T.From(weights[0]) * stages[i];
            for (int stage = 1, at = i + n; stage < weights.Length; stage++, at += n) sum += T.From(weights[stage]) * stages[at];
            result[i] = state[i] + width * sum;
        }
    }
}
