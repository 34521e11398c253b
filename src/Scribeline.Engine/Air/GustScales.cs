using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Air;

/// <summary>
/// Length scales and intensities of Dryden turbulence at one height (MIL-F-8785C, 1980).
/// Up to 1000 ft: L_w = h, L_u = h/(0.177 + 0.000823 h)^1.2, σ_w = 0.1 W20, σ_u = σ_w/(0.177 + 0.000823 h)^0.4, h in ft and at
/// least 10 (figures 10 and 11). From 2000 ft: L = 1750 ft and σ of figure 7 (table <c>turbulence-intensity.csv</c>), whose curves
/// light, moderate and severe stand for winds at 20 ft of 15, 30 and 45 kt, linear between them and from none in calm. Linear
/// between 1000 and 2000 ft. Figure 7 is read by height above ground. The lateral scale and intensity equal those along the wind.
/// </summary>
/// <param name="LengthAlong">L_u = L_v, m.</param>
/// <param name="LengthVertical">L_w, m.</param>
/// <param name="SigmaAlong">σ_u = σ_v, m/s.</param>
/// <param name="SigmaVertical">σ_w, m/s.</param>
public readonly record struct GustScales(double LengthAlong, double LengthVertical, double SigmaAlong, double SigmaVertical)
{
    private const double Foot = 0.3048, Knot = 1852.0 / 3600;
    private static readonly double[] CurveWinds = [0, 15 * Knot, 30 * Knot, 45 * Knot];
    private static readonly (double Altitude, double[] Sigma)[] Figure7 = Read();

    /// <summary>Height of the wind that measures turbulence: 20 ft, m.</summary>
    public const double ReferenceHeight = 20 * Foot;

    /// <summary>Scales at a height, m above ground, for a mean wind at 20 ft, m/s.</summary>
    public static GustScales At(double heightAboveGround, double windAt20Feet)
    {
        var h = heightAboveGround / Foot;
        if (h <= 1000) return Low(h, windAt20Feet);
        if (h >= 2000) return High(h, windAt20Feet);
        var (low, high, share) = (Low(1000, windAt20Feet), High(2000, windAt20Feet), (h - 1000) / 1000);
        double Blend(double a, double b) => a + ((b - a) * share);
        return new(
            Blend(low.LengthAlong, high.LengthAlong),
            Blend(low.LengthVertical, high.LengthVertical),
            Blend(low.SigmaAlong, high.SigmaAlong),
            Blend(low.SigmaVertical, high.SigmaVertical));
    }

    private static GustScales Low(double feet, double wind)
    {
        var h = Math.Max(feet, 10);
        var shape = 0.177 + (0.000823 * h);
        var sigma = 0.1 * wind;
        return new(Foot * h / Math.Pow(shape, 1.2), Foot * h, sigma / Math.Pow(shape, 0.4), sigma);
    }

    private static GustScales High(double feet, double wind)
    {
        var above = Array.FindIndex(Figure7, r => r.Altitude >= feet);
        double Sigma(int curve)
        {
            if (curve == 0) return 0;
            if (above < 0) return Figure7[^1].Sigma[curve - 1];
            var (low, high) = (Figure7[above - 1], Figure7[above]);
            var share = (feet - low.Altitude) / (high.Altitude - low.Altitude);
            return low.Sigma[curve - 1] + ((high.Sigma[curve - 1] - low.Sigma[curve - 1]) * share);
        }

        var c = Math.Min((int)(wind / CurveWinds[1]), 2);
        var along = Math.Min((wind - CurveWinds[c]) / CurveWinds[1], 1);
        var sigma = Foot * (Sigma(c) + ((Sigma(c + 1) - Sigma(c)) * along));
        return new(1750 * Foot, 1750 * Foot, sigma, sigma);
    }

    private static (double, double[])[] Read() =>
        [.. EmbeddedTable.Rows("turbulence-intensity", 5).Select(cells => (EmbeddedTable.Number(cells[0]), cells[1..4].Select(EmbeddedTable.Number).ToArray()))];
}
