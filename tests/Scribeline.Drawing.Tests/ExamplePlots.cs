using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;

namespace Scribeline.Drawing.Tests;

/// <summary>Plots of every shape a question may hand over.</summary>
internal static class ExamplePlots
{
    /// <summary>Height under constant gravity: up 200 m/s, h = v t - g t²/2.</summary>
    public static Plot Height { get; } = new(
        "Height through the flight",
        new Axis("time after ignition", Unit.Time),
        new Axis("height above the pad", Unit.Height),
        [Line("height", 40.8, t => (200 * t) - (0.5 * 9.80665 * t * t))],
        [new("rail exit", 0.4), new("burnout", 1.9), new("apogee", 20.39), new("drogue", 20.6), new("main", 38)],
        1800);

    /// <summary>Several lines, gaps where nothing is known, a limit, values below zero.</summary>
    public static Plot Margins { get; } = new(
        "Pull on each joint against what holds it",
        new Axis("time after ignition", Unit.Time),
        new Axis("pull along the axis", Unit.Force),
        [
            Line("nose and payload: pull", 20, t => 120 * Math.Sin(t / 3)),
            Line("nose and payload: pins hold at least", 20, _ => 356),
            Line("bay and booster: pull", 20, t => t is > 8 and < 10 ? double.NaN : -80 + (t * t / 4)),
            Line("bay and booster: pins hold at least", 20, _ => 178),
            Line("drag difference", 20, t => 30 - t),
            Line("bay pressure", 20, t => 20 * Math.Exp(-t / 5)),
        ],
        [],
        300);

    /// <summary>Nothing known.</summary>
    public static Plot Empty { get; } = new(
        "Nothing", new Axis("time", Unit.Time), new Axis("speed", Unit.Speed), [new Series("speed", [0, 1], [double.NaN, double.NaN])], []);

    /// <summary>One value only.</summary>
    public static Plot Flat { get; } = new(
        "One value", new Axis("time", Unit.Time), new Axis("speed", Unit.Speed), [new Series("speed", [2], [31])], [new Mark("then", 2)]);

    /// <summary>All of them.</summary>
    public static TheoryData<string> Names => ["Height", "Margins", "Empty", "Flat"];

    /// <summary>One of them.</summary>
    public static Plot Named(string name) => name switch { "Height" => Height, "Margins" => Margins, "Empty" => Empty, _ => Flat };

    private static Series Line(string name, double end, Func<double, double> of)
    {
        var x = Enumerable.Range(0, 401).Select(i => i * end / 400).ToValueList();
        return new Series(name, x, x.Select(of).ToValueList());
    }
}
