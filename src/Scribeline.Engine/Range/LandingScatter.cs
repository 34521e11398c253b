using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Range;

/// <summary>Where one body of many flights came down: mean, covariance, ellipses. Shares are counted, never read off an ellipse.</summary>
public sealed record LandingScatter
{
    /// <param name="points">Two or more.</param>
    public LandingScatter(ValueList<LandingPoint> points)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points.Count, 2);
        Points = points;
        double east = 0, north = 0;
        foreach (var p in points) (east, north) = (east + p.East, north + p.North);
        Mean = new(east / points.Count, north / points.Count);
        foreach (var p in points)
        {
            double e = p.East - Mean.East, n = p.North - Mean.North;
            (EastVariance, NorthVariance, Covariance) = (EastVariance + (e * e), NorthVariance + (n * n), Covariance + (e * n));
        }

        var free = points.Count - 1;
        (EastVariance, NorthVariance, Covariance) = (EastVariance / free, NorthVariance / free, Covariance / free);
    }

    /// <summary>The landings.</summary>
    public ValueList<LandingPoint> Points { get; }

    /// <summary>Their mean.</summary>
    public LandingPoint Mean { get; }

    /// <summary>m², over n − 1.</summary>
    public double EastVariance { get; }

    /// <summary>m², over n − 1.</summary>
    public double NorthVariance { get; }

    /// <summary>m², over n − 1.</summary>
    public double Covariance { get; }

    /// <summary>
    /// The ellipse that holds a share of a normal scatter with this mean and covariance: half axes √λ √(−2 ln(1 − p)), λ the eigenvalues
    /// of the covariance (chi-square with 2 degrees of freedom).
    /// </summary>
    /// <param name="content">0 to 1.</param>
    public LandingEllipse Ellipse(double content)
    {
        double middle = (EastVariance + NorthVariance) / 2, half = double.Hypot((EastVariance - NorthVariance) / 2, Covariance);
        var factor = LandingEllipse.Factor(content);

        // From east, anticlockwise, to from north, clockwise.
        var azimuth = (Math.PI / 2) - (0.5 * Math.Atan2(2 * Covariance, EastVariance - NorthVariance));
        azimuth -= Math.PI * Math.Floor(azimuth / Math.PI);
        return new(Mean, factor * Math.Sqrt(middle + half), factor * Math.Sqrt(Math.Max(middle - half, 0)), azimuth, content);
    }

    /// <summary>Share of the landings inside an ellipse, counted: tells how normal the scatter is.</summary>
    public double Inside(LandingEllipse ellipse) => (double)Points.Count(ellipse.Contains) / Points.Count;
}
