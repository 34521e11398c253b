using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>
/// Wind of one direction whose speed goes as a power of height: u = u_r (z/z_r)^α. The law is meant for the lowest 150 to 300 m;
/// the speed is held above <see cref="TopHeight"/> and below 2 m. Typical α: 1/7 neutral, 0.11 mown grass, 0.15 open farmland
/// (Jain, <i>Wind Energy Engineering</i>, table 3-5).
/// </summary>
/// <param name="Speed">Speed at the reference height, m/s, 0 or more.</param>
/// <param name="From">Direction the wind comes from, rad clockwise from north.</param>
/// <param name="Exponent">α, 0 or more; 0 gives the same wind at every height.</param>
/// <param name="ReferenceHeight">z_r, m above ground, 2 or more (10 m: WMO-No. 8).</param>
/// <param name="TopHeight">Height above which the speed is held, m.</param>
public sealed record PowerLawWind(
    double Speed, double From, double Exponent, double ReferenceHeight = 10, double TopHeight = 300) : Wind
{
    internal WindVector<T> Evaluate<T>(T height)
        where T : struct, IReal<T>
    {
        var reference = WindVector.From(Speed, From);
        var z = T.Min(T.Max(height, T.From(2)), T.From(TopHeight));
        var ratio = T.Exp(T.From(Exponent) * T.Log(z / T.From(ReferenceHeight)));
        return new(T.From(reference.East) * ratio, T.From(reference.North) * ratio);
    }
}
