using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Air;

/// <summary>Lays the levels of a <see cref="DayAir"/>: temperature by height, then humidity on finer levels near the pad.</summary>
internal static class DayLevels
{
    /// <summary>A row less than this above the one below it, m, is left out at the pad.</summary>
    public const double LeastStep = 1;

    private const double ColdestTemperature = 216.65, StandardFrom = 20_000;

    // Heights above the pad between which the exponential decay of humidity is taken as linear, m. The chords stay within
    // 1.5 % of the pad's excess of the curve: 0.06 K at 30 °C and 80 %.
    private static readonly double[] HumidHeights = [0, 500, 1000, 1500, 2000, 3000, 4000, 6000, 9000, 14_000];
    private const double HumidityScaleHeight = 2000;

    public static AirLevel[] Of(DayAir day)
    {
        var dry = Dry(day);
        if (day.RelativeHumidity == 0) return [.. dry];

        var foot = dry[0].Height;
        var excess = Humidity.VirtualTemperature(day.Temperature, day.StationPressure, day.RelativeHumidity) - day.Temperature;
        double ExcessAt(double height)
        {
            for (var k = 0; k + 1 < HumidHeights.Length; k++)
            {
                var (low, high) = (HumidHeights[k], HumidHeights[k + 1]);
                if (height - foot > high) continue;
                var top = k + 2 == HumidHeights.Length ? 0 : Math.Exp(-high / HumidityScaleHeight);
                var bottom = Math.Exp(-low / HumidityScaleHeight);
                return excess * (bottom + ((top - bottom) * (height - foot - low) / (high - low)));
            }
            return 0;
        }

        var heights = dry.Select(l => l.Height).Concat(HumidHeights.Select(h => foot + h)).Distinct().Order();
        return [.. heights.Select(h => LevelAt(dry, h) with { VapourExcess = ExcessAt(h) })];
    }

    private static List<AirLevel> Dry(DayAir day)
    {
        List<AirLevel> levels = [new(day.Geopotential.Height<Scalar>(day.Elevation), day.Temperature, 0, day.StationPressure)];
        foreach (var row in day.Aloft)
            if (row.Height > levels[0].Height + LeastStep) levels.Add(new(row.Height, row.Temperature, 0, row.Pressure));

        var last = levels[^1];
        if (last.Height < StandardFrom)
        {
            var fall = Math.Max(last.Temperature - ColdestTemperature, 0);
            var coldFrom = day.LapseRate > 0 && last.Temperature > ColdestTemperature
                ? last.Height + (fall / day.LapseRate)
                : double.PositiveInfinity;
            if (coldFrom < StandardFrom) levels.Add(new(coldFrom, ColdestTemperature));
            var steady = coldFrom < StandardFrom || last.Temperature <= ColdestTemperature;
            levels.Add(new(
                StandardFrom,
                steady ? levels[^1].Temperature : last.Temperature - (day.LapseRate * (StandardFrom - last.Height))));
        }
        foreach (var (height, temperature) in StandardAbove)
            if (height > levels[^1].Height) levels.Add(new(height, temperature));
        return levels;
    }

    private static readonly (double Height, double Temperature)[] StandardAbove =
        [(32_000, 228.65), (47_000, 270.65), (51_000, 270.65), (71_000, 214.65), (84_852, 186.946)];

    private static AirLevel LevelAt(List<AirLevel> levels, double height)
    {
        var above = levels.FindIndex(l => l.Height >= height);
        if (above < 0) return levels[^1] with { Height = height, Pressure = null };
        if (levels[above].Height == height) return levels[above];
        var (low, high) = (levels[above - 1], levels[above]);
        return new(height, low.Temperature + ((high.Temperature - low.Temperature) * (height - low.Height) / (high.Height - low.Height)));
    }
}
