namespace Scribeline.Store.Logs;

/// <summary>Units of an altimeter's columns, and what values tell where no unit is given.</summary>
internal static class LogUnits
{
    private const double Gravity = 9.80665, Foot = 0.3048;

    private static readonly Dictionary<LogMeaning, Dictionary<string, double>> All = new()
    {
        [LogMeaning.Time] = new() { ["s"] = 1, ["sec"] = 1, ["secs"] = 1, ["second"] = 1, ["seconds"] = 1, ["ms"] = 1e-3, ["msec"] = 1e-3, ["millis"] = 1e-3, ["milliseconds"] = 1e-3, ["us"] = 1e-6, ["µs"] = 1e-6, ["min"] = 60 },
        [LogMeaning.Pressure] = new() { ["pa"] = 1, ["hpa"] = 100, ["mbar"] = 100, ["mb"] = 100, ["kpa"] = 1000, ["bar"] = 1e5, ["inhg"] = 3386.389, ["mmhg"] = 133.322387415, ["psi"] = 6894.7573, ["psia"] = 6894.7573, ["atm"] = 101325 },
        [LogMeaning.Height] = new() { ["m"] = 1, ["meter"] = 1, ["meters"] = 1, ["metre"] = 1, ["metres"] = 1, ["ft"] = Foot, ["foot"] = Foot, ["feet"] = Foot, ["cm"] = 0.01, ["km"] = 1000 },
        [LogMeaning.Acceleration] = new() { ["m/s2"] = 1, ["m/s²"] = 1, ["m/s^2"] = 1, ["mps2"] = 1, ["ms2"] = 1, ["ms-2"] = 1, ["g"] = Gravity, ["gs"] = Gravity, ["gee"] = Gravity, ["gees"] = Gravity, ["mg"] = Gravity / 1000, ["ft/s2"] = Foot, ["ft/s²"] = Foot, ["ft/s^2"] = Foot, ["fps2"] = Foot },
        [LogMeaning.Voltage] = new() { ["v"] = 1, ["volt"] = 1, ["volts"] = 1, ["mv"] = 1e-3 },
        [LogMeaning.Fired] = [],
        [LogMeaning.Other] = [],
    };

    /// <summary>Whether a word is a unit of something.</summary>
    internal static bool Known(string word) => All.Values.Any(u => u.ContainsKey(Plain(word)));

    /// <summary>SI for one of a unit; null where the word is no unit of that meaning.</summary>
    internal static double? Factor(LogMeaning meaning, string word) => All[meaning].TryGetValue(Plain(word), out var factor) ? factor : null;

    /// <summary>Units of a meaning, in words to type.</summary>
    internal static string Words(LogMeaning meaning) => meaning switch
    {
        LogMeaning.Time => "s, ms or us",
        LogMeaning.Pressure => "Pa, hPa, kPa, inHg, mmHg, psi or atm",
        LogMeaning.Height => "m or ft",
        LogMeaning.Acceleration => "m/s2, g, mg or ft/s2",
        _ => "V or mV",
    };

    /// <summary>Unit of a column by its values, the first of them on the pad; null where several fit or none.</summary>
    /// <param name="meaning">What it holds.</param>
    /// <param name="values">As written; none missing.</param>
    internal static string? Guess(LogMeaning meaning, IReadOnlyList<double> values)
    {
        if (values.Count < 3) return null;
        var pad = Middle(values.Take(20));
        return meaning switch
        {
            LogMeaning.Time => Middle(values.Zip(values.Skip(1), (a, b) => b - a)) switch { <= 0 => null, < 1 => "s", < 1000 => "ms", _ => "us" },
            LogMeaning.Pressure => pad switch
            {
                >= 65_000 and <= 108_500 => "Pa",
                > 814 and <= 1085 => "hPa",
                >= 488 and < 650 => "mmHg",
                >= 65 and <= 108.5 => "kPa",
                >= 19.2 and <= 32 => "inHg",
                >= 9.4 and <= 15.7 => "psi",
                >= 0.64 and <= 1.07 => "atm",
                _ => null,
            },
            LogMeaning.Acceleration => Math.Abs(pad) switch { > 0.8 and < 1.2 => "g", > 8.5 and < 11 => "m/s2", > 28 and < 36 => "ft/s2", > 850 and < 1150 => "mg", _ => null },
            LogMeaning.Voltage => pad is >= 2 and <= 30 ? "V" : pad is >= 2000 and <= 30_000 ? "mV" : null,
            _ => null,
        };
    }

    /// <summary>Plain spelling: without brackets and spaces, small.</summary>
    internal static string Plain(string word) => word.Trim().Trim('(', ')', '[', ']', '{', '}', '"', ',', ';').Trim().Replace('·', ' ').Replace(" ", "", StringComparison.Ordinal).ToLowerInvariant();

    private static double Middle(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        return sorted.Length == 0 ? double.NaN : sorted[sorted.Length / 2];
    }
}
