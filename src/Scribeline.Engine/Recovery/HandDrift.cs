using MathNet.Numerics.Integration;
using Scribeline.Engine.Air;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Recovery;

/// <summary>
/// Drift by hand: a thing that falls at a steady rate moves with the wind of every layer it falls through, X = ∫ w(z)/v(z) dz. For checks
/// and quick looks; the flight integrates the motion itself. The lag behind a change of wind, v/g, is left out.
/// </summary>
public static class HandDrift
{
    private const int Order = 20;

    /// <summary>East and north, m, of a fall between two heights.</summary>
    /// <param name="wind">Mean wind.</param>
    /// <param name="low">m above ground.</param>
    /// <param name="high">m above ground, more than <paramref name="low"/>.</param>
    /// <param name="rate">Descent rate at a height above ground, m/s.</param>
    /// <param name="layers">Equal layers the fall is cut into, 1 or more: enough that the wind is smooth in each.</param>
    public static (double East, double North) Through(Wind wind, double low, double high, Func<double, double> rate, int layers = 64)
    {
        double east = 0, north = 0;
        var depth = (high - low) / layers;
        var rule = new GaussLegendreRule(0, depth, Order);
        for (var layer = 0; layer < layers; layer++)
        {
            for (var i = 0; i < Order; i++)
            {
                var z = low + (layer * depth) + rule.Abscissas[i];
                var at = wind.At<Scalar>(z);
                var weight = rule.Weights[i] / rate(z);
                east += at.East * weight;
                north += at.North * weight;
            }
        }

        return (east, north);
    }
}
