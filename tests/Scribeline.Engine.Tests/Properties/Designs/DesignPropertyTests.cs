using CsCheck;
using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Resolving;
using UnitsNet;

namespace Scribeline.Engine.Tests.Properties.Designs;

public class DesignPropertyTests
{
    [Fact]
    public void Ten_thousand_random_designs_give_no_value_that_is_not_a_number() =>
        RandomDesign.Any.Sample(
            n =>
            {
                var resolution = DesignResolver.Resolve(RandomDesign.Of(n), Draws.Nominal);
                Assert.Empty(resolution.Problems);
                Assert.Empty(resolution.Missing);
                var study = new Study(resolution.Rocket!, resolution.Motor, resolution.Day, resolution.Missing);
                var loaded = study.Loaded;
                double[] values =
                [
                    loaded.Mass, loaded.Station, loaded.Inertia.Xx, loaded.Inertia.Yy, loaded.Inertia.Zz, study.Burnt.Mass, study.Burnt.Station,
                    .. study.Bays.Select(b => b.Volume), .. study.LandingPieces.Select(p => study.PieceProperties(p).Mass),
                ];
                Assert.All(values, v => Assert.True(double.IsFinite(v) && v > 0, $"{v}"));
                var air = AeroBreakdown.Of(study.Shape, 0.3 + (2.5 * n.Parameter), 1e6 + (5e6 * n.Parameter));
                Assert.True(double.IsFinite(air.TotalDrag) && air.TotalDrag > 0);
                Assert.True(double.IsFinite(air.CentreOfPressure));
            },
            iter: 10_000,
            threads: 2);

    [Fact]
    public void Random_designs_fly_to_the_ground_or_say_why_not() =>
        RandomDesign.Any.Sample(
            n =>
            {
                var studies = Studies.Of(RandomDesign.Of(n));
                var flight = studies.Nominal!.Flight;
                Assert.True(flight.Failure is FlightFailure.None or FlightFailure.NoLiftOff, $"{flight.Failure}");
                foreach (var question in Questionnaire.All)
                {
                    var answer = question.Ask(studies.Nominal!);
                    Assert.All(answer.Findings, f => Assert.True(!double.IsNaN(f.Value) || f.Verdict is Verdict.Open or Verdict.Stop, $"{question.Id}: {f.Name}"));
                }
            },
            iter: 150,
            threads: 2);

    // 1 in = 25.4 mm exactly, so only the rounding of the division is left.
    [Fact]
    public void Typing_inches_instead_of_millimetres_changes_nothing() =>
        RandomDesign.Any.Sample(
            n =>
            {
                var metric = DesignResolver.Resolve(RandomDesign.Of(n), Draws.Nominal).Rocket!.Vehicle;
                var inch = DesignResolver.Resolve(RandomDesign.Of(n, inch: true), Draws.Nominal).Rocket!.Vehicle;
                Assert.Equal(metric.Length, inch.Length, 1e-12);
                var (a, b) = (metric.Masses().Of(metric.Whole), inch.Masses().Of(inch.Whole));
                Assert.Equal(1, b.Mass / a.Mass, 1e-9);
                Assert.Equal(a.Station, b.Station, 1e-9);
                Assert.Equal(1, b.Inertia.Yy / a.Inertia.Yy, 1e-9);
            },
            iter: 300,
            threads: 2);

    [Fact]
    public void Doubling_a_tolerance_doubles_every_deviation()
    {
        var once = Measure.Read<Mass>("412 g ± 5 g", at: "parts[0].mass").Value!;
        var twice = Measure.Read<Mass>("412 g ± 10 g", at: "parts[0].mass").Value!;
        for (var i = 0; i < 50; i++)
        {
            var (a, b) = (Draws.Case(7, i)(once) - once.Si, Draws.Case(7, i)(twice) - twice.Si);
            Assert.NotEqual(0, a);
            Assert.Equal(2, b / a, 1e-9);
        }
    }

    // The standard deviation is half of what follows ±; over 4000 draws its own standard error is 1.1 %.
    [Fact]
    public void Draws_have_half_the_tolerance_as_standard_deviation()
    {
        var measure = Measure.Read<Mass>("412 g ± 5 g", at: "parts[0].mass").Value!;
        var draws = Enumerable.Range(0, 4000).Select(i => Draws.Case(3, i)(measure)).ToArray();
        var mean = draws.Average();
        var deviation = Math.Sqrt(draws.Sum(x => (x - mean) * (x - mean)) / (draws.Length - 1));
        Assert.Equal(0.412, mean, 0.0002);
        Assert.Equal(0.0025, deviation, 0.0001);
    }

    [Fact]
    public void Another_measure_in_the_file_leaves_a_draw_as_it_is()
    {
        var first = Measure.Read<Mass>("412 g ± 5 g", at: "parts[0].mass").Value!;
        var second = Measure.Read<Mass>("412 g ± 5 g", at: "parts[1].mass").Value!;
        var draw = Draws.Case(1, 1);
        var alone = draw(first);
        Assert.NotEqual(alone, draw(second));
        Assert.Equal(alone, draw(first));
    }
}
