using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Scribeline.Engine.Evidence;

/// <summary>
/// Least squares of a model that is not linear (Levenberg 1944; Marquardt, SIAM J. 11 (1963) 431): steps between Gauss and Newton's and the
/// steepest descent, each solved by QR with the diagonal scaled.
/// </summary>
/// <param name="Parameters">Where the sum is least.</param>
/// <param name="Sum">Of squared residuals there.</param>
/// <param name="Jacobian">Of the residuals there.</param>
/// <param name="Converged">Whether it came to rest; otherwise the parameters are no answer.</param>
public sealed record LeastSquares(Vector<double> Parameters, double Sum, Matrix<double> Jacobian, bool Converged)
{
    private const double Rest = 1e-10;

    /// <summary>Covariance of the parameters where residuals are in units of their standard uncertainty: (J'J)^-1.</summary>
    public Matrix<double> Covariance => (Jacobian.Transpose() * Jacobian).Inverse();

    /// <summary>Degrees of freedom.</summary>
    public int Freedom => Jacobian.RowCount - Jacobian.ColumnCount;

    /// <summary>Seeks the least sum.</summary>
    /// <param name="residuals">Residuals, in units of their uncertainty, at parameters.</param>
    /// <param name="jacobian">Their derivatives, a row for each residual.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="most">Steps after which it is given up.</param>
    public static LeastSquares Fit(Func<Vector<double>, Vector<double>> residuals, Func<Vector<double>, Matrix<double>> jacobian, Vector<double> start, int most = 200)
    {
        var (at, damping) = (start, 1e-3);
        var r = residuals(at);
        var sum = r * r;
        var J = jacobian(at);
        for (var step = 0; step < most; step++)
        {
            var change = Step(J, r, damping);
            var next = at + change;
            var tried = residuals(next);
            var less = tried * tried;
            var small = change.L2Norm() <= Rest * (at.L2Norm() + Rest);
            if (less <= sum && double.IsFinite(less))
            {
                var still = small || sum - less <= 1e-15 * sum;
                (at, r, sum, damping) = (next, tried, less, damping / 10);
                J = jacobian(at);
                if (still && Offset(J, r) < 1e-6) return new(at, sum, J, true);
            }
            else
            {
                if (small && damping < 1e12 && Offset(J, r) < 1e-6) return new(at, sum, J, true);
                damping *= 10;
                if (damping > 1e20) return new(at, sum, J, false);
            }
        }

        return new(at, sum, J, false);
    }

    /// <summary>One step: the least of |J d + r|² + damping |D d|², D² the diagonal of J'J. No damping gives Gauss and Newton's.</summary>
    /// <param name="jacobian">J.</param>
    /// <param name="residuals">r.</param>
    /// <param name="damping">0 or more.</param>
    public static Vector<double> Step(Matrix<double> jacobian, Vector<double> residuals, double damping)
    {
        var scales = Vector<double>.Build.Dense(jacobian.ColumnCount, j => Math.Max(jacobian.Column(j).L2Norm(), double.MinValue));
        var whole = jacobian.Stack(Matrix<double>.Build.DiagonalOfDiagonalVector(scales * Math.Sqrt(damping)));
        var right = Vector<double>.Build.Dense(whole.RowCount, i => i < residuals.Count ? -residuals[i] : 0);
        return whole.QR(QRMethod.Thin).Solve(right);
    }

    /// <summary>Derivatives by central differences.</summary>
    /// <param name="residuals">At parameters.</param>
    /// <param name="steps">How far to go for each parameter.</param>
    public static Func<Vector<double>, Matrix<double>> Differences(Func<Vector<double>, Vector<double>> residuals, IReadOnlyList<double> steps) => at =>
    {
        var columns = new Vector<double>[at.Count];
        Parallel.For(0, at.Count, j =>
        {
            var (up, down) = (at.Clone(), at.Clone());
            up[j] += steps[j];
            down[j] -= steps[j];
            columns[j] = (residuals(up) - residuals(down)) / (2 * steps[j]);
        });
        return Matrix<double>.Build.DenseOfColumnVectors(columns);
    };

    // How much of the residuals still lies in the directions that parameters can take: Bates and Watts' relative offset, without the freedoms.
    private static double Offset(Matrix<double> J, Vector<double> r)
    {
        var length = r.L2Norm();
        if (length == 0) return 0;
        var moved = J * Step(J, r, 0);
        return moved.L2Norm() / length;
    }
}
