using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>
/// Pressure and height as instruments relate them: altimeter setting, pressure altitude, density altitude, and the height above the
/// pad that a barometric altimeter shows. Altimeters assume the standard atmosphere; the day differs, and on a day with the standard
/// lapse rate the shown height is the true one times T_standard(pad pressure)/T_pad.
/// Source: U.S. Standard Atmosphere 1976; altimeter setting by its definition (from memory).
/// </summary>
public static class Altimetry
{
    private const double Exponent = AirConstants.GasConstant * AirConstants.LapseRate / AirConstants.StandardGravity;

    /// <summary>
    /// Station pressure, Pa, from the altimeter setting Q: (Qⁿ - p0ⁿ L z/T0)^(1/n), n = R L/g0.
    /// </summary>
    /// <param name="setting">Altimeter setting, Pa.</param>
    /// <param name="elevation">Of the station, m above sea.</param>
    public static double StationPressure(double setting, double elevation) =>
        Math.Pow(
            Math.Pow(setting, Exponent)
                - (Math.Pow(AirConstants.SeaLevelPressure, Exponent) * AirConstants.LapseRate * elevation / AirConstants.SeaLevelTemperature),
            1 / Exponent);

    /// <summary>Height above the pad, m, shown by a barometric altimeter zeroed there: difference of pressure altitudes.</summary>
    /// <param name="pressure">At the altimeter, Pa.</param>
    /// <param name="padPressure">At the pad, Pa.</param>
    public static T ShownHeight<T>(T pressure, double padPressure)
        where T : struct, IReal<T> =>
        StandardAtmosphere.PressureAltitude(pressure) - T.From(StandardAtmosphere.PressureAltitude<Scalar>(padPressure));

    /// <summary>Height above the pad, m, shown by a barometric altimeter at a true geometric height above the pad, m.</summary>
    public static T ShownHeight<T>(DayAir day, T trueHeight)
        where T : struct, IReal<T> =>
        ShownHeight(day.At(T.From(day.Elevation) + trueHeight).Pressure, day.StationPressure);

    /// <summary>True geometric height above the pad, m, at which a barometric altimeter shows <paramref name="shownHeight"/>, m.</summary>
    public static T TrueHeight<T>(DayAir day, T shownHeight)
        where T : struct, IReal<T>
    {
        var shownAbove = T.From(StandardAtmosphere.PressureAltitude<Scalar>(day.StationPressure)) + shownHeight;
        return day.HeightAtPressure(StandardAtmosphere.AtGeopotential(shownAbove).Pressure) - T.From(day.Elevation);
    }

    /// <summary>Density altitude of the pad, m: where the standard atmosphere has the density of the day's moist air.</summary>
    public static double DensityAltitude(DayAir day) => StandardAtmosphere.DensityAltitude(day.At<Scalar>(day.Elevation).Density);

    /// <summary>
    /// Thickness of a layer, geopotential m, between two pressures: (R T_v/g0) ln(p_below/p_above) (hypsometric equation).
    /// </summary>
    /// <param name="pressureBelow">Pa.</param>
    /// <param name="pressureAbove">Pa.</param>
    /// <param name="meanVirtualTemperature">K, the mean over the logarithm of pressure.</param>
    public static double Thickness(double pressureBelow, double pressureAbove, double meanVirtualTemperature) =>
        AirConstants.GasConstant * meanVirtualTemperature / AirConstants.StandardGravity * Math.Log(pressureBelow / pressureAbove);
}
