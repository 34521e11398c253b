using MathNet.Numerics.LinearAlgebra;

namespace Scribeline.Engine.Evidence;

/// <summary>
/// Derivatives and smooth values of equally spaced samples, by a polynomial through a window of them (Savitzky and Golay, Anal. Chem. 36 (1964)
/// 1627, corrected by Steinier, Termonia and Deltour, 44 (1972) 1906). What it says of a greatest speed is always low.
/// </summary>
public static class SavitzkyGolay
{
    /// <summary>Weights, oldest sample first; divide the sum by the step to the power of the derivative.</summary>
    /// <param name="points">Odd, more than the degree.</param>
    /// <param name="degree">Of the polynomial.</param>
    /// <param name="derivative">0 for the value itself.</param>
    public static double[] Weights(int points, int degree, int derivative)
    {
        var half = points / 2;
        var powers = Matrix<double>.Build.Dense(points, degree + 1, (i, j) => Math.Pow(i - half, j));
        var factorial = Enumerable.Range(1, derivative).Aggregate(1.0, (f, n) => f * n);

        // Row of the pseudo-inverse: what the coefficient of that power owes to each sample.
        return [.. powers.PseudoInverse().Row(derivative).Select(w => w * factorial)];
    }

    /// <summary>The derivative at every sample that has a whole window, NaN at the others and where a sample of the window is missing.</summary>
    /// <param name="values">Equally spaced.</param>
    /// <param name="step">s.</param>
    /// <param name="points">Odd.</param>
    /// <param name="degree">Of the polynomial.</param>
    /// <param name="derivative">0 for the value itself.</param>
    public static double[] Along(IReadOnlyList<double> values, double step, int points, int degree, int derivative)
    {
        var weights = Weights(points, degree, derivative);
        var (half, scale) = (points / 2, Math.Pow(step, derivative));
        var along = Enumerable.Repeat(double.NaN, values.Count).ToArray();
        for (var i = half; i < values.Count - half; i++)
        {
            var sum = 0.0;
            for (var j = 0; j < points; j++) sum += weights[j] * values[i - half + j];
            along[i] = sum / scale;
        }

        return along;
    }
}
