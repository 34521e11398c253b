using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store.Logs;

namespace Scribeline.App.Tests.Examples;

/// <summary>The questions of the log, on an invented flight whose truth is known.</summary>
public class LogTests(ITestOutputHelper output)
{
    private static readonly Lazy<Study> Demo = new(() => WithFlight(File.ReadAllText(Path.Combine(Run.Examples, "night-heron", "flight.csv"))));

    // With SCRIBELINE_APPROVE=1 the file is made anew, as after a change of the model.
    [Fact]
    public void The_demo_file_says_it_is_invented_and_what_its_truth_is()
    {
        var path = Path.Combine(Run.Examples, "night-heron", "flight.csv");
        if (Environment.GetEnvironmentVariable("SCRIBELINE_APPROVE") == "1") File.WriteAllText(path, DemoFlight.Record(DemoFlight.Predicted()));
        var lines = File.ReadLines(path).Take(5).ToArray();
        Assert.StartsWith("# Invented: no rocket flew this.", lines[0], StringComparison.Ordinal);
        Assert.Contains($"# drag {DemoFlight.Drag} of that predicted, impulse {DemoFlight.Impulse}", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void The_record_gives_back_what_it_was_made_from()
    {
        var study = Demo.Value;
        var flown = study.Recorded!;
        var truth = DemoFlight.Flown(DemoFlight.Predicted());
        DescentPath path = new(truth);
        var reading = flown.Reading!;
        foreach (var moment in reading.Moments) output.WriteLine($"{moment.Name}: {reading.Since(moment.Time):F3} ± {moment.Sigma:F3} s, {moment.Height:F1} m");
        Assert.Equal(truth.Apogee!.Height, reading.Apogee!.Height, 3.0);
        Assert.Equal(truth.Apogee.Time - path.LiftOff, reading.Since(reading.Apogee.Time), 0.25);
        Assert.Equal(path.Fastest, reading.Smooth.Speed[reading.Fastest], 2.5);
        Assert.Equal(truth.Burnout!.Time - path.LiftOff, reading.Since(reading.Burnout!.Time), 0.15);
        Assert.Equal(path.End, reading.Since(reading.Landing!.Time), 1.5);
        foreach (var seen in reading.Descents) Assert.Equal(-path.Descending(seen.Fit.Height)!.VerticalSpeed, seen.Fit.Rate, 0.25);
    }

    [Fact]
    public void What_it_teaches_is_the_truth_within_its_uncertainty()
    {
        var lesson = Demo.Value.Recorded!.Lesson!;
        var climb = lesson.Climb!;
        output.WriteLine($"drag {climb.Drag}, impulse {climb.Impulse}, lag {climb.PortLag}, burn {climb.BurnTime}, scatter {climb.Scatter}");
        foreach (var canopy in lesson.Canopies) output.WriteLine($"{canopy.Name}: {canopy.Area.Value / canopy.Planned:F4} ± {canopy.Area.Sigma / canopy.Planned:F4}");
        Within(DemoFlight.Drag, climb.Drag);
        Within(DemoFlight.Impulse, climb.Impulse);
        Within(DemoFlight.PortLag, climb.PortLag!.Value);
        Assert.InRange(climb.Drag.Sigma, 0.001, 0.06);
        Assert.InRange(climb.Scatter, 0.5, 2);
        foreach (var (name, factor) in ((string, double)[])[("Drogue", DemoFlight.Drogue), ("Main", DemoFlight.Main)])
        {
            var canopy = lesson.Canopies.Single(c => c.Name == name);
            Within(factor * canopy.Planned, canopy.Area);
        }
    }

    // Without errors of the instrument the truth comes back nearly exactly.
    [Fact]
    public void A_perfect_record_gives_the_truth_back()
    {
        var study = WithFlight(DemoFlight.Record(DemoFlight.Predicted(), noise: 0));
        var climb = study.Recorded!.Lesson!.Climb!;
        output.WriteLine($"drag {climb.Drag}, impulse {climb.Impulse}, lag {climb.PortLag}, burn {climb.BurnTime}, scatter {climb.Scatter}");
        Assert.Equal(DemoFlight.Drag, climb.Drag.Value, 0.01);
        Assert.Equal(DemoFlight.Impulse, climb.Impulse.Value, 0.003);
        Assert.Equal(DemoFlight.PortLag, climb.PortLag!.Value.Value, 0.004);
        foreach (var canopy in study.Recorded.Lesson.Canopies) Assert.Equal(canopy.Name == "Drogue" ? DemoFlight.Drogue : DemoFlight.Main, canopy.Area.Value / canopy.Planned, 0.02);
    }

    [Fact]
    public void The_questions_answer()
    {
        foreach (var question in Questionnaire.Flown)
        {
            var answer = question.Ask(Demo.Value);
            output.WriteLine($"--- {question.Id} {answer.Verdict}");
            foreach (var finding in answer.Findings) output.WriteLine($"{finding.Name}: {finding.Value:G5} {finding.Verdict}");
            foreach (var note in answer.Notes.Concat(answer.Missing)) output.WriteLine($"  {note}");
            Assert.NotEqual(Verdict.Open, answer.Verdict);
            Assert.NotEmpty(answer.Working.Steps);
        }
    }

    // Drag that flights showed to be more brings Night Heron under a ceiling it would break without: that is a watch, never clear.
    [Fact]
    public void What_flights_taught_turns_no_stop_into_clear()
    {
        Answer Under(string more)
        {
            var design = DemoFlight.Design(more);
            var site = design.Site!.Value! with { Ceiling = Measure.Si<UnitsNet.Length>(2000) };
            var studies = Studies.Of(design with { Site = design.Site with { Value = site } });
            return Enquiry.Ask([Questionnaire.Named("how-high")!], studies.Nominal!, studies.Case, 12, cancel: TestContext.Current.CancellationToken)[0];
        }

        Assert.Equal(Verdict.Stop, Under("").Verdict);
        var flown = Under("drag scale: {value: 1.4, known: flown}");
        Assert.InRange(flown.Findings[0].Value, 1000, 1900);
        Assert.Equal(Verdict.Watch, flown.Verdict);
        Assert.Contains(flown.Notes, n => n.StartsWith("Stop without what flights taught: apogee above ground.", StringComparison.Ordinal));

        // The same typed as measured is the builder's own word, as it always was.
        Assert.Equal(Verdict.Clear, Under("drag scale: {value: 1.4, known: measured}").Verdict);
    }

    // A stop that only the spread of drawn cases gives is kept from clear in the same way.
    [Fact]
    public void Nor_a_stop_by_its_share_of_cases()
    {
        var limit = new Limit("x", 10, Sense.AtMost, 0, Must: true, "test");
        Answer Of(double value, double meets) => new(
            Questionnaire.Named("how-high")!, [Finding.Of("height", value, Unit.Height, limit).With(new Spread(value, value - 1, value + 1, meets, 100))], Basis.Estimated, new(), [], [], []);
        Assert.Equal(Verdict.Stop, Of(9, 0.8).Verdict);
        Assert.Equal(Verdict.Clear, Of(7, 1).Verdict);
        Assert.Equal(Verdict.Watch, Taught.Kept(Of(7, 1), Of(9, 0.8)).Verdict);
        Assert.Equal(Verdict.Stop, Taught.Kept(Of(11, 0), Of(9, 0.8)).Verdict);
        Assert.Equal(Verdict.Clear, Taught.Kept(Of(7, 1), Of(8, 1)).Verdict);
    }

    // Unflown, the questions of the log cost nothing and say how to add a flight.
    [Fact]
    public void Without_a_flight_they_are_open_and_nothing_is_flown()
    {
        var cache = new ResultCache();
        var study = Studies.Of(DemoFlight.Design(), cache: cache).Nominal!;
        foreach (var question in Questionnaire.Flown)
        {
            var answer = question.Ask(study);
            Assert.Equal(Verdict.Open, answer.Verdict);
            Assert.Contains("scribeline log FILE --add flight.csv", Assert.Single(answer.Missing), StringComparison.Ordinal);
        }

        Assert.Equal(0, cache.Made);
    }

    // A flight that contradicts what was known is shown, and moves nothing.
    [Fact]
    public void A_contradiction_is_not_averaged_in()
    {
        Teaching teaching = new("drag-scale", "drag", Unit.Ratio, new(1, 0.1), [new(1, "one", new(1.5, 0.01), new(1.5, 0.04)), new(2, "two", new(1.05, 0.01), new(1.05, 0.05))], 0.04, "drag scale", 1, false);
        Assert.Equal("one", Assert.Single(teaching.Contradicting).Flight);
        Assert.Equal(new Estimate(1, 0.1).With(new(1.05, 0.05)), teaching.Posterior);
        Assert.True(teaching.CanAccept);
        Assert.False((teaching with { Flights = [teaching.Flights[0]] }).CanAccept);
    }

    // Every formula that is shown gives the shown value with the shown inputs.
    [Fact]
    public void Every_shown_formula_gives_its_value()
    {
        foreach (var question in Questionnaire.Flown)
        {
            var answer = question.Ask(Demo.Value);
            Assert.True(FormulaTests.Check(answer) > 0, question.Id);
            Assert.All(answer.Working.Steps, s => Assert.False(string.IsNullOrWhiteSpace(s.Meaning) || string.IsNullOrWhiteSpace(s.Source), $"{question.Id}: {s.Symbol}"));
        }
    }

    // The prediction of a taught design lies on the record.
    [Fact]
    public void What_was_learnt_predicts_the_flight()
    {
        var study = Demo.Value;
        var typed = string.Join('\n', study.Teachings.Where(t => t.Unit == Unit.Ratio).Select(t => $"{t.Path}: {{value: {t.Flights[0].Alone.Value.ToString(System.Globalization.CultureInfo.InvariantCulture)}, known: flown}}"));
        var taught = Studies.Of(DemoFlight.Design(typed)).Nominal!;
        Assert.Equal(study.Recorded!.Reading!.Apogee!.Height, taught.Flight.Apogee!.Height, 6.0);
    }

    private static void Within(double truth, Estimate found) =>
        Assert.True(Math.Abs(found.Value - truth) <= 3 * found.Sigma, $"{found.Value} ± {found.Sigma} is not {truth}");

    /// <summary>A design with a recorded flight of it.</summary>
    internal static Study WithFlight(string file)
    {
        var reading = LogFile.Read(file, []);
        Assert.Empty(reading.Problems);
        var design = DemoFlight.Design();
        FlownFlight flown = new(1, "invented", "flight.csv", () => design, () => reading.Record);
        return Studies.Of(design, flights: [flown]).Nominal!;
    }
}
