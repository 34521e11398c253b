using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>
/// Wind of one direction after the logarithmic law of the neutral surface layer: u = u_r ln((z - d)/z0)/ln((z_r - d)/z0).
/// The law is meant for the lowest 100 m; the speed is held above <see cref="TopHeight"/> and below d + 10 z0.
/// Typical z0: 0.03 m grass, 0.10 m low crops, 0.5 m parkland (Davenport and Wieringa, WMO-No. 8).
/// </summary>
/// <param name="Speed">Speed at the reference height, m/s, 0 or more.</param>
/// <param name="From">Direction the wind comes from, rad clockwise from north.</param>
/// <param name="Roughness">z0, m, above 0.</param>
/// <param name="ReferenceHeight">z_r, m above ground, above d + z0.</param>
/// <param name="Displacement">d, m: where the wind starts above dense growth.</param>
/// <param name="TopHeight">Height above which the speed is held, m.</param>
public sealed record LogWind(
    double Speed, double From, double Roughness, double ReferenceHeight = 10, double Displacement = 0, double TopHeight = 300) : Wind
{
    internal WindVector<T> Evaluate<T>(T height)
        where T : struct, IReal<T>
    {
        var reference = WindVector.From(Speed, From);
        var z = T.Max(T.Min(height, T.From(TopHeight)) - T.From(Displacement), T.From(10 * Roughness));
        var ratio = T.Log(z / T.From(Roughness)) * T.From(1 / Math.Log((ReferenceHeight - Displacement) / Roughness));
        return new(T.From(reference.East) * ratio, T.From(reference.North) * ratio);
    }
}
