using System.Globalization;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Air;

/// <summary>
/// What is wrong with a day's air as entered. Ranges hold every launch field on Earth with room to spare; they catch slips of unit
/// and pressures reduced to sea level, not unusual weather.
/// </summary>
public static class AirProblems
{
    /// <summary>The problems of the inputs of a <see cref="DayAir"/>, in its order and units; empty when it can be made of them.</summary>
    public static ValueList<string> In(
        double elevation, double stationPressure, double temperature, double relativeHumidity, double lapseRate, ValueList<SoundingLevel> aloft)
    {
        List<string> problems = [];
        void Require(bool holds, FormattableString message)
        {
            if (!holds) problems.Add(message.ToString(CultureInfo.InvariantCulture));
        }

        Require(elevation is >= -450 and <= 6000, $"The pad's elevation {elevation:0.#} m is outside -450 to 6000 m.");
        Require(temperature is >= 200 and <= 340, $"The pad's temperature {temperature:0.#} K is outside 200 to 340 K.");
        Require(relativeHumidity is >= 0 and <= 1, $"The relative humidity {relativeHumidity:0.###} is outside 0 to 1.");
        Require(lapseRate is >= -0.05 and <= 0.03, $"The lapse rate {1000 * lapseRate:0.##} K/km is outside -50 to 30 K/km.");
        if (elevation is >= -450 and <= 6000)
        {
            var usual = StandardAtmosphere.At<Numerics.Scalar>(elevation).Pressure.Value;
            Require(
                stationPressure > 0.9 * usual && stationPressure < 1.1 * usual,
                $"{stationPressure / 100:0.#} hPa is not a station pressure at {elevation:0} m, where about {usual / 100:0} hPa is usual; a sea-level or altimeter setting must be converted first.");
        }
        for (var i = 0; i < aloft.Count; i++)
        {
            Require(
                aloft[i].Temperature is >= 150 and <= 340,
                $"The temperature {aloft[i].Temperature:0.#} K at {aloft[i].Height:0} m aloft is outside 150 to 340 K.");
            if (i == 0) continue;
            Require(
                aloft[i].Height > aloft[i - 1].Height,
                $"The heights aloft must rise: {aloft[i].Height:0} m follows {aloft[i - 1].Height:0} m.");
            if (aloft[i].Pressure is { } upper && aloft[i - 1].Pressure is { } lower && aloft[i].Height > aloft[i - 1].Height)
            {
                var meanTemperature = AirConstants.StandardGravity * (aloft[i].Height - aloft[i - 1].Height)
                    / (AirConstants.GasConstant * Math.Log(lower / upper));
                var given = (aloft[i].Temperature + aloft[i - 1].Temperature) / 2;
                Require(
                    Math.Abs(meanTemperature - given) < 0.05 * given,
                    $"The pressures aloft at {aloft[i - 1].Height:0} and {aloft[i].Height:0} m do not fit the temperatures there: they ask for {meanTemperature:0} K.");
            }
        }
        return problems.ToValueList();
    }
}
