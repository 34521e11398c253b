namespace Scribeline.Engine.Air;

/// <summary>Water vapour in air (WMO-No. 8, <i>Guide to Instruments and Methods of Observation</i>), -45 to 60 °C over water.</summary>
public static class Humidity
{
    /// <summary>Saturation vapour pressure over water, Pa: 611.2 exp(17.62 t/(243.12 + t)), t in °C.</summary>
    /// <param name="temperature">K.</param>
    public static double SaturationPressure(double temperature)
    {
        var t = temperature - AirConstants.FreezingPoint;
        return 611.2 * Math.Exp(17.62 * t / (243.12 + t));
    }

    /// <summary>Virtual temperature, K, the temperature at which dry air has the density of the moist air: T/(1 - 0.378 e/p).</summary>
    /// <param name="temperature">K.</param>
    /// <param name="pressure">Pa.</param>
    /// <param name="relativeHumidity">0 to 1.</param>
    public static double VirtualTemperature(double temperature, double pressure, double relativeHumidity) =>
        temperature / (1 - (0.378 * relativeHumidity * SaturationPressure(temperature) / pressure));
}
