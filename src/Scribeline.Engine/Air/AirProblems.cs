using System.Globalization;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Air;

/// <summary>
/// What is wrong with a day's air as entered. Ranges hold every launch field on Earth with room to spare; they catch slips of unit
/// and pressures reduced to sea level, not unusual weather.
/// </summary>
public static class AirProblems
{
    /// <summary>The problems of the inputs of a <see cref="DayAir"/>, in its order and units; empty when it can be made of them.</summary>
    public static ValueList<Problem> In(
        double elevation,
        double stationPressure,
        double temperature,
        double relativeHumidity,
        double lapseRate,
        double? latitude,
        ValueList<SoundingLevel> aloft)
    {
        List<Problem> problems = [];
        void Require(string at, bool holds, FormattableString message)
        {
            if (!holds) problems.Add(new(at, message.ToString(CultureInfo.InvariantCulture)));
        }

        Require("elevation", elevation is >= -450 and <= 6000, $"The pad's elevation {elevation:0.#} m is outside -450 to 6000 m.");
        Require("temperature", temperature is >= 200 and <= 340, $"The pad's temperature {temperature:0.#} K is outside 200 to 340 K.");
        Require("humidity", relativeHumidity is >= 0 and <= 1, $"The relative humidity {relativeHumidity:0.###} is outside 0 to 1.");
        Require("lapse", lapseRate is >= -0.05 and <= 0.03, $"The lapse rate {1000 * lapseRate:0.##} K/km is outside -50 to 30 K/km.");
        Require("latitude", latitude is null or (>= -Math.PI / 2 and <= Math.PI / 2), $"The latitude {latitude * 180 / Math.PI:0.###}° is outside -90 to 90°.");
        if (elevation is >= -450 and <= 6000)
        {
            var usual = StandardAtmosphere.At<Scalar>(elevation).Pressure.Value;
            Require(
                "pressure",
                stationPressure > 0.9 * usual && stationPressure < 1.1 * usual,
                $"{stationPressure / 100:0.#} hPa is not a station pressure at {elevation:0} m, where about {usual / 100:0} hPa is usual; a sea-level or altimeter setting must be converted first.");
        }
        for (var i = 0; i < aloft.Count; i++)
        {
            var (height, kelvin, _) = aloft[i];
            var at = string.Create(CultureInfo.InvariantCulture, $"aloft[{i}]");
            Require(at, height is >= -500 and <= 80_000, $"The height {height:0.#} m aloft is outside -500 to 80000 m.");
            Require(at, kelvin is >= 150 and <= 340, $"The temperature {kelvin:0.#} K at {height:0} m aloft is outside 150 to 340 K.");
            if (i > 0) Require(at, height > aloft[i - 1].Height, $"The heights aloft must rise: {height:0} m follows {aloft[i - 1].Height:0} m.");
        }

        // Only a table that is sound so far can be asked whether its pressures fit.
        if (problems.Count == 0) problems.AddRange(Unbalanced(elevation, stationPressure, temperature, aloft));
        return problems.ToValueList();
    }

    // Pressures aloft that ask for a mean temperature more than 5 % off the one given: more than humidity and rounding can do.
    private static IEnumerable<Problem> Unbalanced(
        double elevation, double stationPressure, double temperature, ValueList<SoundingLevel> aloft)
    {
        const double hydrostatic = AirConstants.StandardGravity / AirConstants.GasConstant;
        var (foot, footPressure) = (Geopotential.Standard.Height<Scalar>(elevation).Value, stationPressure);
        var (last, lastTemperature, kelvinMetres) = (foot, temperature, 0.0);
        for (var i = 0; i < aloft.Count; i++)
        {
            var (height, kelvin, pressure) = aloft[i];
            if (height <= last + DayLevels.LeastStep) continue;
            kelvinMetres += (height - last) * (kelvin + lastTemperature) / 2;
            (last, lastTemperature) = (height, kelvin);
            if (pressure is not { } given) continue;
            var mean = kelvinMetres / (height - foot);
            var expected = footPressure * Math.Exp(-hydrostatic * (height - foot) / mean);
            var asked = hydrostatic * (height - foot) / Math.Log(footPressure / given);

            // A thin layer turns a rounded pressure into a wild temperature: half a hectopascal is let pass.
            if (!(Math.Abs(asked - mean) < 0.05 * mean) && !(Math.Abs(given - expected) < 50))
            {
                yield return new(
                    string.Create(CultureInfo.InvariantCulture, $"aloft[{i}].pressure"),
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{given / 100:0.#} hPa at {height:0} m aloft does not fit the temperatures below it, which lead to {expected / 100:0.#} hPa."));
            }
            (foot, footPressure, kelvinMetres) = (height, given, 0);
        }
    }
}
