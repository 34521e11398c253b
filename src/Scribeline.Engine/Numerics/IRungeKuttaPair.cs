namespace Scribeline.Engine.Numerics;

/// <summary>
/// An embedded explicit Runge-Kutta pair whose last stage is the first of the next step, with a dense output.
/// Notation of Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I (2nd ed. 1993), sections II.4-II.6.
/// </summary>
public interface IRungeKuttaPair
{
    /// <summary>Number of stages s, the shared one included.</summary>
    static abstract int Stages { get; }

    /// <summary>Order of the solution that is carried on; the embedded one is one lower.</summary>
    static abstract int Order { get; }

    /// <summary>Degree of the dense output polynomial, which is also its order.</summary>
    static abstract int DenseDegree { get; }

    /// <summary>Nodes c, one per stage; the last is 1.</summary>
    static abstract ReadOnlySpan<double> Nodes { get; }

    /// <summary>
    /// Stage matrix a, strictly lower triangle row by row: stage i (from 1) has i numbers beginning at i (i - 1)/2.
    /// Its last row is the weights b of the solution.
    /// </summary>
    static abstract ReadOnlySpan<double> Matrix { get; }

    /// <summary>Weights of the solution less those of the embedded one, one per stage.</summary>
    static abstract ReadOnlySpan<double> ErrorWeights { get; }

    /// <summary>
    /// Dense output p, <see cref="DenseDegree"/> numbers for each stage:
    /// y(t + theta h) = y + h sum over i of k_i (p_i1 theta + p_i2 theta^2 + ...).
    /// </summary>
    static abstract ReadOnlySpan<double> Dense { get; }
}
