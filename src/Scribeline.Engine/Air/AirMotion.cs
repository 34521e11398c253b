using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>All that moves the air of one flight: the mean wind, a frozen field of turbulence, one discrete gust.</summary>
/// <param name="Mean">Mean wind.</param>
/// <param name="Turbulence">Turbulence, or null for none.</param>
/// <param name="Gust">A discrete gust, or null for none.</param>
public sealed record AirMotion(Wind Mean, GustField? Turbulence = null, DiscreteGust? Gust = null)
{
    /// <summary>Velocity of the air, m/s, at a height in m above ground.</summary>
    public (T East, T North, T Up) At<T>(T heightAboveGround)
        where T : struct, IReal<T>
    {
        var (east, north) = Mean.At(heightAboveGround);
        var up = T.From(0);
        if (Turbulence is not null)
        {
            (var e, var n, up) = Turbulence.At(heightAboveGround);
            (east, north) = (east + e, north + n);
        }
        if (Gust is not null)
        {
            var (e, n) = Gust.At(heightAboveGround);
            (east, north) = (east + e, north + n);
        }
        return (east, north, up);
    }
}
