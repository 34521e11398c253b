namespace Scribeline.Engine.Evidence;

/// <summary>
/// A body hung from two equal upright lines and twisted a little about the upright: its moment of inertia about that axis is m g d² T²/(16 π² L)
/// (bifilar pendulum; Jardin and Mueller, AIAA 2007-6822). Lines at unequal distances a and b from the balance point give m g a b T²/(4 π² L).
/// A swing of 10° takes less than 0.2 % longer than a small one.
/// </summary>
/// <param name="Mass">kg.</param>
/// <param name="First">Balance point to the first line, m.</param>
/// <param name="Second">Balance point to the second line, m.</param>
/// <param name="Lines">Length of each line, m.</param>
/// <param name="Period">One swing there and back, s.</param>
/// <param name="Gravity">m/s².</param>
public sealed record Swing(double Mass, double First, double Second, double Lines, double Period, double Gravity = 9.80665)
{
    /// <summary>kg·m².</summary>
    public double Inertia => Mass * Gravity * First * Second * Period * Period / (4 * Math.PI * Math.PI * Lines);

    /// <summary>Standard uncertainty of the inertia as a share of it: that of d counts twice, that of T twice.</summary>
    /// <param name="mass">Standard uncertainty, kg.</param>
    /// <param name="apart">Of the distance between the lines, m.</param>
    /// <param name="lines">Of their length, m.</param>
    /// <param name="period">s.</param>
    public double Uncertainty(double mass, double apart, double lines, double period)
    {
        double m = mass / Mass, d = 2 * apart / (First + Second), l = lines / Lines, t = 2 * period / Period;
        return Math.Sqrt((m * m) + (d * d) + (l * l) + (t * t));
    }

    /// <summary>Share by which a swing of some amplitude takes longer than a small one, by the series of the period to its second power.</summary>
    /// <param name="amplitude">rad.</param>
    public double Excess(double amplitude)
    {
        var share = (First + Second) / 2 / Lines;
        return amplitude * amplitude / 16 * (1 - (3 * share * share));
    }
}
