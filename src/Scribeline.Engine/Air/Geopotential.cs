using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>
/// Turns geometric height Z into geopotential height H and back: H = (γ/g0) R Z/(R + Z), where γ is gravity at sea level and R
/// the radius that gives its change with height. <see cref="Standard"/> is that of the U.S. Standard Atmosphere 1976 (γ = g0,
/// R = 6 356 766 m); <see cref="AtLatitude"/> takes WGS 84 normal gravity, whose H differs by up to 0.27 %.
/// </summary>
/// <param name="Ratio">γ/g0.</param>
/// <param name="Radius">R, m.</param>
public readonly record struct Geopotential(double Ratio, double Radius)
{
    /// <summary>The conversion of the U.S. Standard Atmosphere 1976.</summary>
    public static Geopotential Standard { get; } = new(1, AirConstants.EarthRadius);

    /// <summary>
    /// The conversion for WGS 84 normal gravity at a latitude: R = 2γ/|dγ/dh| = a/(1 + f + m - 2 f sin² φ)
    /// (NIMA TR8350.2, equation 4-3, first-order term).
    /// </summary>
    /// <param name="latitude">Geodetic latitude, rad.</param>
    public static Geopotential AtLatitude(double latitude)
    {
        var sin2 = Math.Pow(Math.Sin(latitude), 2);
        return new(
            Gravity.Normal(latitude, 0) / AirConstants.StandardGravity,
            Wgs84.SemiMajorAxis / (1 + Wgs84.Flattening + Wgs84.GravityRatio - (2 * Wgs84.Flattening * sin2)));
    }

    /// <summary>Geopotential height, m, of the geometric height <paramref name="geometric"/>, m above sea.</summary>
    public T Height<T>(T geometric)
        where T : struct, IReal<T> =>
        T.From(Ratio * Radius) * geometric / (T.From(Radius) + geometric);

    /// <summary>Geometric height, m above sea, of the geopotential height <paramref name="geopotential"/>, m.</summary>
    public T Geometric<T>(T geopotential)
        where T : struct, IReal<T> =>
        T.From(Radius) * geopotential / (T.From(Ratio * Radius) - geopotential);
}
