using MathNet.Numerics.LinearAlgebra;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>
/// A linear filter with measurements taken one by one (Kalman, J. Basic Eng. 82 (1960) 35), and the smoother that runs back over what it kept
/// (Rauch, Tung and Striebel, AIAA J. 3 (1965) 1445). Measurements whose errors are independent give the same taken singly as together.
/// </summary>
public sealed class KalmanFilter
{
    private readonly List<Step> steps = [];
    private Matrix<double>? transition;
    private Vector<double> predicted;
    private Matrix<double> predictedCovariance;

    /// <param name="state">What is believed at the first time.</param>
    /// <param name="covariance">How surely, symmetric.</param>
    public KalmanFilter(Vector<double> state, Matrix<double> covariance) =>
        (State, Covariance, predicted, predictedCovariance) = (state, covariance, state, covariance);

    /// <summary>What is believed now.</summary>
    public Vector<double> State { get; private set; }

    /// <summary>How surely.</summary>
    public Matrix<double> Covariance { get; private set; }

    /// <summary>Logarithm of the likelihood of every measurement taken so far.</summary>
    public double LogLikelihood { get; private set; }

    /// <summary>Goes on to the next time. What was believed until now is kept for the smoother.</summary>
    /// <param name="motion">F: the state then from the state now.</param>
    /// <param name="noise">Q: what the motion leaves out.</param>
    public void Predict(Matrix<double> motion, Matrix<double> noise)
    {
        Keep();
        transition = motion;
        (State, Covariance) = (motion * State, (motion * Covariance * motion.Transpose()) + noise);
        (predicted, predictedCovariance) = (State, Covariance);
    }

    /// <summary>What a measurement says against what is believed; nothing changes.</summary>
    /// <param name="reads">H: the measured sum of the state's parts.</param>
    /// <param name="value">Measured.</param>
    /// <param name="variance">R: of its error, more than 0.</param>
    public Innovation Look(Vector<double> reads, double value, double variance) =>
        new(value - (reads * State), (reads * (Covariance * reads)) + variance);

    /// <summary>Takes a measurement, in the form of Joseph that keeps the covariance symmetric.</summary>
    /// <param name="reads">H: the measured sum of the state's parts.</param>
    /// <param name="value">Measured.</param>
    /// <param name="variance">R: of its error, more than 0.</param>
    public Innovation Take(Vector<double> reads, double value, double variance)
    {
        var seen = Look(reads, value, variance);
        var gain = Covariance * reads / seen.Variance;
        var left = Matrix<double>.Build.DenseIdentity(State.Count) - gain.OuterProduct(reads);
        State += gain * seen.Difference;
        Covariance = (left * Covariance * left.Transpose()) + (gain.OuterProduct(gain) * variance);
        LogLikelihood -= 0.5 * (seen.Squared + Math.Log(2 * Math.PI * seen.Variance));
        return seen;
    }

    /// <summary>Every time again with all measurements known, the first first.</summary>
    public ValueList<Belief> Smooth()
    {
        Keep();
        var smooth = new Belief[steps.Count];
        smooth[^1] = steps[^1].Filtered;
        for (var k = steps.Count - 2; k >= 0; k--)
        {
            var (next, now) = (steps[k + 1], steps[k].Filtered);

            // C = P F' (P-)^-1, by solving with the symmetric P-.
            var gain = next.Predicted.Covariance.Cholesky().Solve(next.Motion! * now.Covariance).Transpose();
            smooth[k] = new(
                now.State + (gain * (smooth[k + 1].State - next.Predicted.State)),
                now.Covariance + (gain * (smooth[k + 1].Covariance - next.Predicted.Covariance) * gain.Transpose()));
        }

        steps.RemoveAt(steps.Count - 1);
        return smooth.ToValueList();
    }

    private void Keep() => steps.Add(new(transition, new(predicted, predictedCovariance), new(State, Covariance)));

    private sealed record Step(Matrix<double>? Motion, Belief Predicted, Belief Filtered);
}

/// <summary>A state and how surely it is known.</summary>
/// <param name="State">Most likely.</param>
/// <param name="Covariance">Symmetric.</param>
public sealed record Belief(Vector<double> State, Matrix<double> Covariance);

/// <summary>A measurement against what was believed before it.</summary>
/// <param name="Difference">Measured less expected.</param>
/// <param name="Variance">Of that difference.</param>
public readonly record struct Innovation(double Difference, double Variance)
{
    /// <summary>Normalised innovation squared: 1 on average where the filter's uncertainties are right.</summary>
    public double Squared => Difference * Difference / Variance;
}
