using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Scribeline.Engine.Evidence;

/// <summary>The top of a parabola through heights near apogee, by least squares.</summary>
/// <param name="Time">Of the top, s.</param>
/// <param name="Height">Of the top, m.</param>
/// <param name="Bend">Second derivative, m/s²; far from that of free fall it tells of drag, of a canopy or of wrong units.</param>
public sealed record ParabolaFit(double Time, double Height, double Bend)
{
    /// <summary>Fits.</summary>
    /// <param name="times">s, three or more.</param>
    /// <param name="heights">m, as many.</param>
    public static ParabolaFit Of(IReadOnlyList<double> times, IReadOnlyList<double> heights)
    {
        // About the middle, where powers of time stay small.
        var middle = times.Average();
        var powers = Matrix<double>.Build.Dense(times.Count, 3, (i, j) => Math.Pow(times[i] - middle, j));
        var c = powers.QR(QRMethod.Thin).Solve(Vector<double>.Build.DenseOfEnumerable(heights));
        var top = -c[1] / (2 * c[2]);
        return new(middle + top, c[0] + (c[1] * top) + (c[2] * top * top), 2 * c[2]);
    }
}
