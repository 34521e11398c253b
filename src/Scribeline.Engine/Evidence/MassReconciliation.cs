using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Evidence;

/// <summary>
/// Masses and balance points of parts brought into agreement with those of what they make up, by weighted least squares: each reading gives way
/// as the square of its uncertainty. Written in masses and moments (mass times station), in which wholes are sums of parts, so that one linear
/// step is exact. Linear least squares with known covariances: Aitken, Proc. Roy. Soc. Edinburgh 55 (1935) 42; here as the update of the parts
/// by the wholes, which is the same.
/// </summary>
/// <param name="Parts">As they are most likely, in the order given.</param>
/// <param name="ChiSquared">How far parts and wholes are apart, in squares of what was to be expected.</param>
/// <param name="Freedom">Number of readings of wholes.</param>
public sealed record MassReconciliation(ValueList<MassReading> Parts, double ChiSquared, int Freedom)
{
    /// <summary>Chance that readings as good as stated are this far apart or farther.</summary>
    public double Chance => Freedom == 0 ? 1 : SpecialFunctions.GammaUpperRegularized(Freedom / 2.0, ChiSquared / 2);

    /// <summary>Brings parts and wholes together.</summary>
    /// <param name="parts">Each known by itself.</param>
    /// <param name="wholes">Each weighed, balanced or both.</param>
    public static MassReconciliation Of(ValueList<MassReading> parts, ValueList<MassSum> wholes)
    {
        var rows = wholes.SelectMany(w => Rows(w, parts)).ToArray();
        if (rows.Length == 0) return new(parts, 0, 0);
        var x = Vector<double>.Build.Dense(2 * parts.Count, i => i % 2 == 0 ? parts[i / 2].Mass : parts[i / 2].Placed ? parts[i / 2].Moment : 0);
        var covariance = Matrix<double>.Build.Dense(2 * parts.Count, 2 * parts.Count);
        for (var i = 0; i < parts.Count; i++) covariance.SetSubMatrix(2 * i, 2 * i, Covariance(parts[i]));

        var sums = Matrix<double>.Build.DenseOfRowVectors(rows.Select(r => r.Sums));
        var read = Vector<double>.Build.DenseOfEnumerable(rows.Select(r => r.Value));
        var noise = Matrix<double>.Build.Dense(rows.Length, rows.Length);
        for (var i = 0; i < rows.Length; i++)
        {
            noise[i, i] = rows[i].Variance;
            if (rows[i].WithLast is var shared && shared != 0) noise[i, i - 1] = noise[i - 1, i] = shared;
        }

        var apart = read - (sums * x);
        var expected = (sums * covariance * sums.Transpose()) + noise;
        var weighed = expected.Cholesky().Solve(apart);
        var gain = covariance * sums.Transpose();
        x += gain * weighed;
        covariance -= gain * expected.Cholesky().Solve(gain.Transpose());
        return new(Enumerable.Range(0, parts.Count).Select(i => Reading(parts[i], x, covariance, 2 * i)).ToValueList(), apart * weighed, rows.Length);
    }

    private readonly record struct Row(Vector<double> Sums, double Value, double Variance, double WithLast);

    // A balance is read as a moment, which shares the uncertainty of its mass. Without a mass of its own, that the moments about it are nil.
    private static IEnumerable<Row> Rows(MassSum whole, ValueList<MassReading> parts)
    {
        Vector<double> Sum(int which, double minus = 0) => Vector<double>.Build.Dense(
            2 * parts.Count, i => !whole.Parts.Contains(i / 2) ? 0 : i % 2 == which ? 1 : -minus);
        var reading = whole.Reading;
        if (!double.IsNaN(reading.Mass)) yield return new(Sum(0), reading.Mass, reading.MassSigma * reading.MassSigma, 0);
        if (!reading.Placed || whole.Parts.Any(p => !parts[p].Placed)) yield break;
        if (double.IsNaN(reading.Mass))
        {
            var spread = whole.ExpectedMass * reading.StationSigma;
            yield return new(Sum(1, reading.Station), 0, spread * spread, 0);
        }
        else
        {
            var own = Covariance(reading);
            yield return new(Sum(1), reading.Moment, own[1, 1], own[0, 1]);
        }
    }

    // Of mass m and moment m x.
    private static Matrix<double> Covariance(MassReading r)
    {
        double m = r.MassSigma * r.MassSigma, x = r.StationSigma * r.StationSigma;
        if (!r.Placed) return Matrix<double>.Build.DenseOfArray(new[,] { { m, 0 }, { 0, 0 } });
        return Matrix<double>.Build.DenseOfArray(new[,] { { m, r.Station * m }, { r.Station * m, (r.Station * r.Station * m) + (r.Mass * r.Mass * x) } });
    }

    private static MassReading Reading(MassReading part, Vector<double> x, Matrix<double> covariance, int i)
    {
        if (!part.Placed) return part with { Mass = x[i], MassSigma = Math.Sqrt(Math.Max(0, covariance[i, i])) };
        double mass = x[i], station = x[i + 1] / mass;
        var spread = covariance[i + 1, i + 1] - (2 * station * covariance[i, i + 1]) + (station * station * covariance[i, i]);
        return new(part.Name, mass, Math.Sqrt(Math.Max(0, covariance[i, i])), station, Math.Sqrt(Math.Max(0, spread)) / Math.Abs(mass));
    }
}

/// <summary>A mass with its balance point and how sure both are.</summary>
/// <param name="Name">Of what.</param>
/// <param name="Mass">kg; NaN where it was not weighed.</param>
/// <param name="MassSigma">Standard uncertainty, kg.</param>
/// <param name="Station">m; NaN where it was not balanced.</param>
/// <param name="StationSigma">Standard uncertainty, m.</param>
public sealed record MassReading(string Name, double Mass, double MassSigma, double Station = double.NaN, double StationSigma = 0)
{
    /// <summary>Whether its balance point is known.</summary>
    public bool Placed => !double.IsNaN(Station);

    /// <summary>About station 0, kg·m.</summary>
    public double Moment => Mass * Station;
}

/// <summary>Parts weighed together.</summary>
/// <param name="Parts">Their indices.</param>
/// <param name="Reading">What scale and edge said of them together.</param>
/// <param name="ExpectedMass">Sum of their masses, kg, for a balance without a weighing.</param>
public sealed record MassSum(ValueList<int> Parts, MassReading Reading, double ExpectedMass);
