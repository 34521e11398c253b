using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>
/// The U.S. Standard Atmosphere 1976 (NOAA-S/T 76-1562) from 5 km below the sea to 86 km geometric height; identical with ISO 2533
/// below 32 km. Temperature is the molecular-scale temperature: above 80 km it exceeds the kinetic one by up to 0.04 %, which
/// reaches only viscosity and the temperature itself. Above 86 km (84.852 km geopotential) the air is taken as isothermal.
/// </summary>
public static class StandardAtmosphere
{
    private static readonly AirColumn Column = new(
    [
        new(0, 288.15, 0, AirConstants.SeaLevelPressure), new(11_000, 216.65), new(20_000, 216.65), new(32_000, 228.65),
        new(47_000, 270.65), new(51_000, 270.65), new(71_000, 214.65), new(84_852, 186.946),
    ]);

    /// <summary>Density at sea level, kg/m³: p0/(R T0).</summary>
    public const double SeaLevelDensity = AirConstants.SeaLevelPressure / (AirConstants.GasConstant * AirConstants.SeaLevelTemperature);

    // R L/(g0 - R L): density goes with temperature to the power g0/(R L) - 1.
    private const double DensityExponent = AirConstants.GasConstant * AirConstants.LapseRate
        / (AirConstants.StandardGravity - (AirConstants.GasConstant * AirConstants.LapseRate));

    /// <summary>Air at a geometric height, m above sea.</summary>
    public static AirState<T> At<T>(T heightAboveSea)
        where T : struct, IReal<T> => Column.At(Geopotential.Standard.Height(heightAboveSea));

    /// <summary>Air at a geopotential height, m above sea.</summary>
    public static AirState<T> AtGeopotential<T>(T height)
        where T : struct, IReal<T> => Column.At(height);

    /// <summary>Pressure altitude: the geopotential height, m, at which the standard has the given pressure, Pa.</summary>
    public static T PressureAltitude<T>(T pressure)
        where T : struct, IReal<T> => Column.HeightAt(pressure);

    /// <summary>
    /// Density altitude: the geopotential height, m, at which the standard has the given density, kg/m³.
    /// Lowest layer only: up to 11 km, 0.3639 kg/m³.
    /// </summary>
    public static double DensityAltitude(double density) =>
        AirConstants.SeaLevelTemperature / AirConstants.LapseRate * (1 - Math.Pow(density / SeaLevelDensity, DensityExponent));
}
