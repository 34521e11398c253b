using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Tests;

/// <summary>Answers of every shape, made by hand, so that the faces can be tested without an engine.</summary>
internal static class ExampleAnswers
{
    private static readonly Limit RailSpeed = new("rail-exit.speed", 15.24, Sense.AtLeast, 1.5, true, "common practice");
    private static readonly Limit Ceiling = new("how-high.ceiling", 914.4, Sense.AtMost, 30, true, "the site");

    /// <summary>Clear with spread, watch, stop, open, and a name too long for any column.</summary>
    public static IReadOnlyList<Answer> All { get; } =
    [
        new(
            new Asked("rail-exit", "Is it fast enough when it leaves the rail?", Place.Desk),
            [
                Finding.Of("speed when the last guide leaves the rail", 21.34, Unit.Speed, RailSpeed).With(new Spread(21.3, 20.1, 22.6, 0.9999, 200)),
                Finding.Of("angle to the oncoming air", 0.0872664626, Unit.Angle).With(new Spread(0.09, 0.01, 0.2, null, 200)),
            ],
            Basis.Measured,
            RailWorking(),
            [],
            ["The wind is the mean wind of the day; a gust at the moment of leaving the rail turns the rocket further."],
            []),
        new(
            new Asked("how-high", "How high does it go?", Place.Desk),
            [Finding.Of("apogee above the pad", 905, Unit.Height, Ceiling), Finding.Of("time to apogee", 13.37, Unit.Time)],
            Basis.Estimated,
            new Working(),
            [],
            [],
            [])
        {
            Tables =
            [
                new(
                    "height by motor",
                    [new("motor"), new("apogee", Unit.Height), new("what it means")],
                    [
                        TableRow.Of(Verdict.Clear, "K521", 905.0, "below the ceiling"),
                        TableRow.Of(Verdict.Stop, "L1053", 1204.0, "above the ceiling that the site states, so it cannot be flown there on any day"),
                        TableRow.Of(null, "none", (double?)null, ""),
                    ]),
            ],
        },
        new(
            new Asked("lands-soft", "How hard does each piece land?", Place.Desk),
            [
                Finding.Of(
                    "energy of the nose cone with its ballast, the tracker, the shock cord and everything else that still hangs on it",
                    131,
                    Unit.Energy,
                    new Limit("lands-soft.energy", 101.686, Sense.AtMost, 10, false, "programme limit")),
            ],
            Basis.Estimated,
            new Working(),
            [],
            [],
            []),
        Answer.Open(new Asked("today", "What does today change?", Place.Field), "the wind near the ground: type weather: {wind: 3 m/s from 270 deg}"),
    ];

    private static Working RailWorking()
    {
        var working = new Working();
        var a = working.Given("a", 63.2, "m/s²", "mean acceleration along the rail", "flight");
        var L = working.Given("L", 3.6, "m", "run on the rail until the last guide leaves it", "design file");
        working.Step("v", Math.Sqrt(2 * a * L), "m/s", "speed at rail exit", "constant acceleration");
        working.Simulated("v_flight", 21.34, "m/s", "the same from the whole flight", "Dormand and Prince (1980)");
        return working;
    }

    private sealed class Asked(string id, string text, Place place) : Question(id, text, place)
    {
        protected override Answer Work(Study study) => throw new NotSupportedException("answers are made by hand here");
    }
}
