using System.Globalization;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Air;

/// <summary>What is wrong with a wind as entered, all of it at once. Speeds to 150 m/s hold every jet stream.</summary>
public static class WindProblems
{
    private const double HighestSpeed = 150, HighestExponent = 1;

    /// <summary>The problems of a winds-aloft table; empty when a <see cref="LayeredWind"/> can be made of it.</summary>
    /// <param name="rows">The table.</param>
    /// <param name="exponent">α of the power law below its lowest row.</param>
    public static ValueList<string> In(ValueList<WindLayer> rows, double exponent)
    {
        List<string> problems = [];
        if (rows.Count == 0) problems.Add("A winds-aloft table needs a row or more.");
        CheckExponent(problems, exponent);
        for (var i = 0; i < rows.Count; i++)
        {
            var (height, speed, from) = rows[i];
            Require(problems, height is >= 0 and <= 80_000, $"The height {height:0.#} m above ground is outside 0 to 80000 m.");
            CheckSpeed(problems, speed, height);
            Require(problems, double.IsFinite(from), $"The direction at {height:0.#} m is not a number.");
            if (i > 0) Require(problems, height > rows[i - 1].Height, $"Heights must rise: {height:0.#} m follows {rows[i - 1].Height:0.#} m.");
        }
        return problems.ToValueList();
    }

    /// <summary>The problems of any wind; empty when it can be flown in.</summary>
    public static ValueList<string> In(Wind wind)
    {
        if (wind is LayeredWind layered) return In(layered.Rows, layered.Exponent);
        List<string> problems = [];
        switch (wind)
        {
            case PowerLawWind power:
                CheckSpeed(problems, power.Speed, power.ReferenceHeight);
                CheckExponent(problems, power.Exponent);
                Require(problems, double.IsFinite(power.From), $"The direction is not a number.");
                Require(problems, power.ReferenceHeight is >= 2 and <= 300, $"The reference height {power.ReferenceHeight:0.#} m is outside 2 to 300 m.");
                Require(problems, power.TopHeight >= power.ReferenceHeight, $"The top height {power.TopHeight:0.#} m lies below the reference height.");
                break;
            case LogWind log:
                CheckSpeed(problems, log.Speed, log.ReferenceHeight);
                Require(problems, double.IsFinite(log.From), $"The direction is not a number.");
                Require(problems, log.Roughness is >= 1e-5 and <= 5, $"The roughness {log.Roughness} m is outside 0.00001 to 5 m.");
                Require(problems, log.Displacement >= 0, $"The displacement {log.Displacement} m must be 0 or more.");
                Require(
                    problems,
                    log.ReferenceHeight > log.Displacement + (2 * log.Roughness),
                    $"The reference height {log.ReferenceHeight:0.#} m must be well above displacement and roughness.");
                Require(problems, log.TopHeight >= log.ReferenceHeight, $"The top height {log.TopHeight:0.#} m lies below the reference height.");
                break;
        }
        return problems.ToValueList();
    }

    private static void CheckSpeed(List<string> problems, double speed, double height) =>
        Require(problems, speed is >= 0 and <= HighestSpeed, $"The wind {speed:0.#} m/s at {height:0.#} m is outside 0 to {HighestSpeed} m/s.");

    private static void CheckExponent(List<string> problems, double exponent) =>
        Require(problems, exponent is >= 0 and <= HighestExponent, $"The exponent {exponent:0.###} of the power law is outside 0 to {HighestExponent}.");

    private static void Require(List<string> problems, bool holds, FormattableString message)
    {
        if (!holds) problems.Add(message.ToString(CultureInfo.InvariantCulture));
    }
}
