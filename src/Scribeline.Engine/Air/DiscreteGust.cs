using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>
/// A horizontal gust that grows with height as one minus cosine and then stays: V = (V_m/2)(1 - cos(πx/d)), 0 ≤ x ≤ d, V_m beyond
/// (MIL-F-8785C, discrete gust).
/// </summary>
/// <param name="Speed">V_m, m/s.</param>
/// <param name="From">Direction it comes from, rad clockwise from north.</param>
/// <param name="Foot">Height above ground where it begins, m.</param>
/// <param name="Depth">d, m, above 0.</param>
public sealed record DiscreteGust(double Speed, double From, double Foot, double Depth)
{
    /// <summary>Gust, m/s, at a height in m above ground.</summary>
    public WindVector<T> At<T>(T heightAboveGround)
        where T : struct, IReal<T>
    {
        var x = T.Min(T.Max((heightAboveGround - T.From(Foot)) * T.From(1 / Depth), T.From(0)), T.From(1));
        var share = T.From(0.5) * (T.From(1) - T.Cos(T.From(Math.PI) * x));
        var full = WindVector.From(Speed, From);
        return new(T.From(full.East) * share, T.From(full.North) * share);
    }
}
