namespace Scribeline.Engine.Air;

/// <summary>Constants of the <i>U.S. Standard Atmosphere, 1976</i> (NOAA-S/T 76-1562), SI units.</summary>
public static class AirConstants
{
    /// <summary>Pressure at sea level, Pa.</summary>
    public const double SeaLevelPressure = 101_325;

    /// <summary>Temperature at sea level, K.</summary>
    public const double SeaLevelTemperature = 288.15;

    /// <summary>Gravity that turns geopotential into geopotential height, m/s².</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>Specific gas constant of dry air, J/(kg·K): 8.31432/0.0289644.</summary>
    public const double GasConstant = 8.31432 / 0.0289644;

    /// <summary>Ratio of the specific heats of air.</summary>
    public const double HeatRatio = 1.4;

    /// <summary>Earth radius of the height conversion, m.</summary>
    public const double EarthRadius = 6_356_766;

    /// <summary>Lapse rate of the lowest layer, K per geopotential metre (positive: colder above).</summary>
    public const double LapseRate = 0.0065;

    /// <summary>Sutherland's β, kg/(m·s·K^½).</summary>
    public const double SutherlandFactor = 1.458e-6;

    /// <summary>Sutherland's S, K.</summary>
    public const double SutherlandTemperature = 110.4;

    /// <summary>0 °C in K.</summary>
    public const double FreezingPoint = 273.15;
}
