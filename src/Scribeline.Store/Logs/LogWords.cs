using System.Text.RegularExpressions;

namespace Scribeline.Store.Logs;

/// <summary>What a column's name says it holds, by plain words, and the unit it names.</summary>
internal static partial class LogWords
{
    private static readonly (LogMeaning Meaning, string[] Words)[] Said =
    [
        (LogMeaning.Other, ["continuity", "cont", "temp", "temperature", "speed", "velocity", "vel", "lat", "lon", "gps", "count", "number", "index", "sample", "gyro", "gx", "gy", "gz", "mag", "roll", "pitch", "yaw", "filtered", "kalman", "estimated", "truth"]),
        (LogMeaning.Fired, ["fired", "fire", "firing", "pyro", "deploy", "deployed", "channel", "drogue", "main", "apogee", "apo", "event", "ch1", "ch2", "ch3", "ch4"]),
        (LogMeaning.Time, ["time", "t", "timestamp", "elapsed", "clock", "seconds", "sec", "millis"]),
        (LogMeaning.Pressure, ["pressure", "press", "baro", "barometer", "barometric", "p"]),
        (LogMeaning.Height, ["altitude", "alt", "height", "agl", "msl", "h"]),
        (LogMeaning.Acceleration, ["acceleration", "accel", "acc", "a", "ax", "ay", "az"]),
        (LogMeaning.Voltage, ["voltage", "volts", "volt", "battery", "batt", "vbat", "supply"]),
    ];

    /// <summary>What a name says, and its unit; an empty unit where it names none.</summary>
    internal static (LogMeaning Meaning, string Unit) Of(string name)
    {
        var bracket = Bracket().Match(name);
        var words = Word().Matches(bracket.Success ? name.Remove(bracket.Index, bracket.Length) : name).Select(m => m.Value.ToLowerInvariant()).ToArray();
        foreach (var (meaning, said) in Said)
        {
            // A single letter says something only as the whole name: as one of several words it is a unit or an axis.
            var hit = Array.FindIndex(words, w => said.Contains(w) && (w.Length > 1 || words[0] == w));
            if (hit < 0) continue;
            if (bracket.Success && LogUnits.Factor(meaning, bracket.Value) is not null) return (meaning, LogUnits.Plain(bracket.Value));
            for (var i = words.Length - 1; i > 0; i--)
            {
                // Words such as time_s, press hPa, accel m/s2: what comes after the name.
                var rest = string.Concat(words[i..]);
                if (i > hit && LogUnits.Factor(meaning, rest) is not null) return (meaning, rest);
                if (i > hit && LogUnits.Factor(meaning, words[i]) is not null) return (meaning, words[i]);
            }

            if (LogUnits.Factor(meaning, words[hit]) is not null) return (meaning, words[hit]);
            return (meaning, "");
        }

        return (LogMeaning.Other, "");
    }

    /// <summary>The meaning typed by a builder; null where there is none of that name.</summary>
    internal static LogMeaning? Typed(string word) => LogUnits.Plain(word) switch
    {
        "time" => LogMeaning.Time,
        "pressure" => LogMeaning.Pressure,
        "height" or "altitude" => LogMeaning.Height,
        "acceleration" => LogMeaning.Acceleration,
        "voltage" => LogMeaning.Voltage,
        "fired" => LogMeaning.Fired,
        "other" or "nothing" => LogMeaning.Other,
        _ => null,
    };

    [GeneratedRegex(@"[\(\[\{].*[\)\]\}]")]
    private static partial Regex Bracket();

    [GeneratedRegex(@"m/s\^?[2²]|ft/s\^?[2²]|[A-Za-zµ]+[0-9²]*", RegexOptions.IgnoreCase)]
    private static partial Regex Word();
}
