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
    public static ValueList<Problem> In(ValueList<WindLayer> rows, double exponent)
    {
        List<Problem> problems = [];
        if (rows.Count == 0) problems.Add(new("", "A winds-aloft table needs a row or more."));
        CheckExponent(problems, exponent);
        for (var i = 0; i < rows.Count; i++)
        {
            var (height, speed, from) = rows[i];
            var at = string.Create(CultureInfo.InvariantCulture, $"[{i}]");
            Require(problems, at, height is >= 0 and <= 80_000, $"The height {height:0.#} m above ground is outside 0 to 80000 m.");
            CheckSpeed(problems, at, speed, height);
            Require(problems, at, double.IsFinite(from), $"The direction at {height:0.#} m is not a number.");
            if (i > 0) Require(problems, at, height > rows[i - 1].Height, $"Heights must rise: {height:0.#} m follows {rows[i - 1].Height:0.#} m.");
        }
        return problems.ToValueList();
    }

    /// <summary>The problems of any wind; empty when it can be flown in.</summary>
    public static ValueList<Problem> In(Wind wind)
    {
        if (wind is LayeredWind layered) return In(layered.Rows, layered.Exponent);
        List<Problem> problems = [];
        switch (wind)
        {
            case PowerLawWind power:
                CheckSpeed(problems, "speed", power.Speed, power.ReferenceHeight);
                CheckExponent(problems, power.Exponent);
                Require(problems, "from", double.IsFinite(power.From), $"The direction is not a number.");
                Require(problems, "reference height", power.ReferenceHeight is >= 2 and <= 300, $"The reference height {power.ReferenceHeight:0.#} m is outside 2 to 300 m.");
                Require(problems, "top height", power.TopHeight >= power.ReferenceHeight, $"The top height {power.TopHeight:0.#} m lies below the reference height.");
                break;
            case LogWind log:
                CheckSpeed(problems, "speed", log.Speed, log.ReferenceHeight);
                Require(problems, "from", double.IsFinite(log.From), $"The direction is not a number.");
                Require(problems, "roughness", log.Roughness is >= 1e-5 and <= 5, $"The roughness {log.Roughness} m is outside 0.00001 to 5 m.");
                Require(problems, "displacement", log.Displacement >= 0, $"The displacement {log.Displacement} m must be 0 or more.");
                Require(
                    problems,
                    "reference height",
                    log.ReferenceHeight > log.Displacement + (2 * log.Roughness),
                    $"The reference height {log.ReferenceHeight:0.#} m must be well above displacement and roughness.");
                Require(problems, "top height", log.TopHeight >= log.ReferenceHeight, $"The top height {log.TopHeight:0.#} m lies below the reference height.");
                break;
        }
        return problems.ToValueList();
    }

    private static void CheckSpeed(List<Problem> problems, string at, double speed, double height) =>
        Require(problems, at, speed is >= 0 and <= HighestSpeed, $"The wind {speed:0.#} m/s at {height:0.#} m is outside 0 to {HighestSpeed} m/s.");

    private static void CheckExponent(List<Problem> problems, double exponent) =>
        Require(problems, "exponent", exponent is >= 0 and <= HighestExponent, $"The exponent {exponent:0.###} of the power law is outside 0 to {HighestExponent}.");

    private static void Require(List<Problem> problems, string at, bool holds, FormattableString message)
    {
        if (!holds) problems.Add(new(at, message.ToString(CultureInfo.InvariantCulture)));
    }
}
