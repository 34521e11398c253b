namespace Scribeline.Engine.Air;

/// <summary>Constants of the World Geodetic System 1984 (NIMA TR8350.2, third edition), SI units.</summary>
public static class Wgs84
{
    /// <summary>a, m.</summary>
    public const double SemiMajorAxis = 6_378_137;

    /// <summary>f.</summary>
    public const double Flattening = 1 / 298.257_223_563;

    /// <summary>b, m.</summary>
    public const double SemiMinorAxis = SemiMajorAxis * (1 - Flattening);

    /// <summary>e², the square of the first eccentricity.</summary>
    public const double EccentricitySquared = Flattening * (2 - Flattening);

    /// <summary>ω, rad/s.</summary>
    public const double RotationRate = 7.292_115e-5;

    /// <summary>GM with the air, m³/s².</summary>
    public const double GravitationalConstant = 3.986_004_418e14;

    /// <summary>Second zonal coefficient J2 as used by NASA/TM-2015-218675 (table 73).</summary>
    public const double J2 = 1.082_629_82e-3;

    /// <summary>Normal gravity at the equator, m/s².</summary>
    public const double EquatorGravity = 9.780_325_3359;

    /// <summary>Normal gravity at the poles, m/s².</summary>
    public const double PoleGravity = 9.832_184_9378;

    /// <summary>k of Somigliana's formula.</summary>
    public const double SomiglianaConstant = 0.001_931_852_652_41;

    /// <summary>m = ω² a² b/GM.</summary>
    public const double GravityRatio = RotationRate * RotationRate * SemiMajorAxis * SemiMajorAxis * SemiMinorAxis / GravitationalConstant;
}
