using MathNet.Numerics.Integration;

namespace Scribeline.Engine.Airframe;

/// <summary>Moments of the solid inside a profile, in closed form where there is one and by Gauss quadrature otherwise.</summary>
public static class ProfileVolume
{
    private const int Panels = 4;

    // Nodes and weights on 0..1 of one panel.
    private static readonly double[] Nodes = [.. Enumerable.Range(0, 20).Select(i => new GaussLegendreRule(0, 1, 20).Abscissas[i])];
    private static readonly double[] Weights = [.. Enumerable.Range(0, 20).Select(i => new GaussLegendreRule(0, 1, 20).Weights[i])];

    /// <summary>Moments of the solid within the section's outer surface, about its front.</summary>
    public static RevolutionMoments Moments(this BodySection section)
    {
        double f = section.Front, L = section.Length, r1 = section.FrontDiameter / 2, r2 = section.RearDiameter / 2, k = section.Profile.Parameter;
        if (section.Profile.Shape == BodyShape.Conical || r1 == r2) return RevolutionMoments.Frustum(f, L, r1, r2);
        if (r1 > 0) return Integrate(f, f, f + L, section.RadiusAt);
        return section.Profile.Shape switch
        {
            // r² = R²(2ξ - ξ²)
            BodyShape.Ellipsoid => Scaled(f, L, r2, 2.0 / 3, 5.0 / 12, 3.0 / 10, 8.0 / 15),
            BodyShape.Parabola => Parabola(f, L, r2, k),
            // r² = R² ξ^2n
            BodyShape.Power => Scaled(f, L, r2, 1 / (2 * k + 1), 1 / (2 * k + 2), 1 / (2 * k + 3), 1 / (4 * k + 1)),
            _ => Integrate(f, f, f + L, section.RadiusAt),
        };
    }

    /// <summary>Integrates a radius between two stations; nodes crowd towards both ends, where a profile may turn sharply.</summary>
    /// <param name="origin">Station the moments are about, m.</param>
    /// <param name="front">m.</param>
    /// <param name="rear">m.</param>
    /// <param name="radius">Radius at a station, m.</param>
    public static RevolutionMoments Integrate(double origin, double front, double rear, Func<double, double> radius)
    {
        double r2 = 0, sr2 = 0, s2r2 = 0, r4 = 0, length = rear - front;
        for (int panel = 0; panel < Panels; panel++)
        {
            for (int i = 0; i < Nodes.Length; i++)
            {
                // s = front + length·sin²(πu/2) turns the roots and half powers at tip and base into smooth functions of u.
                double u = (panel + Nodes[i]) / Panels, ds = Weights[i] / Panels * Math.PI / 2 * Math.Sin(Math.PI * u) * length;
                double share = Math.Sin(Math.PI * u / 2);
                double station = front + length * share * share, s = station - origin;
                double square = radius(station);
                square *= square;
                r2 += square * ds;
                sr2 += s * square * ds;
                s2r2 += s * s * square * ds;
                r4 += square * square * ds;
            }
        }

        return new(origin, r2, sr2, s2r2, r4);
    }

    private static RevolutionMoments Scaled(double front, double L, double R, double r2, double sr2, double s2r2, double r4) =>
        new(front, R * R * L * r2, R * R * L * L * sr2, R * R * L * L * L * s2r2, R * R * R * R * L * r4);

    /// <summary>r = R(2ξ - Kξ²)/(2 - K), term by term.</summary>
    private static RevolutionMoments Parabola(double front, double L, double R, double K)
    {
        double q = 1 / ((2 - K) * (2 - K));
        return Scaled(
            front, L, R,
            q * (4.0 / 3 - K + K * K / 5),
            q * (1 - 4 * K / 5 + K * K / 6),
            q * (4.0 / 5 - 2 * K / 3 + K * K / 7),
            q * q * (16.0 / 5 - 16 * K / 3 + 24 * K * K / 7 - K * K * K + K * K * K * K / 9));
    }
}
