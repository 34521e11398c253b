using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Tables;
using Scribeline.Store;
using UnitsNet;
using Scalar = Scribeline.Engine.Numerics.Scalar;

namespace Scribeline.App.Tests.Examples;

/// <summary>Failures flown in full, against hand computations and against what must be true of any of them.</summary>
public class FailureTests
{
    private const double G = 9.80665, AirConstant = 287.053;

    private static readonly Study Heron = Example.Nominal("night-heron");

    private static FailureOutcome Row(Study study, string name) => study.FailureOutcomes.Single(o => o.Failure.Name == name);

    private static FailureOutcome Row(string name) => Row(Heron, name);

    private static RocketDesign Design(string example) => DesignFile.Read(Path.Combine(AppContext.BaseDirectory, "examples", example)).Design!;

    private static Study Changed(Func<RocketDesign, RocketDesign> change) => Studies.Of(change(Design("night-heron"))).Nominal!;

    private static Measure<T> M<T>(string text)
        where T : struct, IQuantity => Measure.Read<T>(text).Value!;

    private static double Value(Answer answer, string finding) => answer.Findings.Single(f => f.Name.StartsWith(finding, StringComparison.Ordinal)).Value;

    private static Answer Ask(Study study) => Questionnaire.Named("if-it-fails")!.Ask(study);

    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Every_failure_differs_from_the_plan_in_what_it_names_and_nothing_else(string example)
    {
        var study = Example.Nominal(example);
        var rocket = study.Rocket;
        Assert.Equal(rocket, FailedRocket.Of(rocket, Failure.None, study.PinTemperature));
        Assert.InRange(rocket.Failures.Count, 10, 20);
        foreach (var f in rocket.Failures)
        {
            Assert.True(f.Things > 0, f.Name);
            Assert.False(string.IsNullOrWhiteSpace(f.Source), f.Name);
            var failed = FailedRocket.Of(rocket, f, study.PinTemperature);
            Assert.Equal(rocket, failed with { Firings = rocket.Firings, Separation = rocket.Separation });
            Assert.Equal(rocket.Separation, failed.Separation with { Joints = rocket.Separation.Joints, Charges = rocket.Separation.Charges });
            Assert.Equal(!f.StrongestPins, failed.Separation.Joints.Equals(rocket.Separation.Joints));
            Assert.Equal(f.Powder == 1 && f.Together.Count == 0, failed.Separation.Charges.Equals(rocket.Separation.Charges));
            Assert.Equal(f.Dead.Count + f.Unfired.Count + f.Unopened.Count + f.LetsGo.Count + f.Together.Count == 0 && f.Late == 0, failed.Firings.Equals(rocket.Firings));
            Assert.Equal(!f.ChangesMotor, ReferenceEquals(study.Motor, f.Of(study.Motor)));
        }
    }

    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Where_nothing_fails_it_is_the_flight_as_planned(string example)
    {
        var study = Example.Nominal(example);
        var outcome = study.FailureOutcomes[0];
        if (outcome.Events.All(e => e.What.EndsWith("opens", StringComparison.Ordinal)))
        {
            Assert.Equal(study.Flight.Landings, outcome.Pieces.Select(p => p.Landing).Distinct());
            var soft = Questionnaire.Named("lands-soft")!.Ask(study);
            Assert.All(outcome.Pieces, p => Assert.Equal(Value(soft, $"{p.Name}: energy at its descent rate"), p.Energy, 1e-9));
        }
        else
        {
            // A joint or cord that does not last is told even as planned.
            Assert.NotEmpty(outcome.Broken);
        }
    }

    // Whatever fails, all of the rocket comes down: every part in one piece, and the pieces weigh what it weighs burnt out.
    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void Every_part_comes_down_once(string example)
    {
        var study = Example.Nominal(example);
        Assert.All(study.FailureOutcomes, o =>
        {
            Assert.True(o.Computed, o.Failure.Name);
            Assert.Equal(study.Burnt.Mass, o.Pieces.Sum(p => p.Mass), 1e-6);
            Assert.All(o.Pieces, p => Assert.InRange(p.Landing.At.Height, -1e-3, 1e-3));
            Assert.Equal(o.Pieces.Select(p => p.Landing.Body).Distinct().Sum(b => o.Pieces.First(p => p.Landing.Body == b).Landing.Mass), o.Pieces.Sum(p => p.Mass), 1e-6);
        });
    }

    // Any set of things that fail at once is flown to its end, and says what it breaks.
    [Fact]
    public void Any_mixture_of_failures_comes_to_the_ground()
    {
        var gear = Heron.Rocket.Separation.Charges.Select(c => c.Name).ToArray();
        string[] canopies = ["Drogue", "Main"], altimeters = ["Primary", "Backup"];
        for (var seed = 0; seed < 40; seed++)
        {
            var random = new Random(seed);
            ValueList<string> Some(string[] names) => names.Where(_ => random.Next(3) == 0).ToValueList();
            var failure = new Failure($"Mixture {seed}", "test")
            {
                Dead = Some(altimeters),
                Unfired = Some(gear),
                Unopened = Some(canopies),
                LetsGo = Heron.Rocket.Failures.SelectMany(f => f.LetsGo).Where(_ => random.Next(5) == 0).ToValueList(),
                StrongestPins = random.Next(2) == 0,
                Powder = 0.05 + random.NextDouble(),
                Late = random.Next(3) == 0 ? 6 * random.NextDouble() : 0,
                BurnTime = 0.8 + (0.4 * random.NextDouble()),
                Impulse = 0.8 + (0.3 * random.NextDouble()),
            };
            var outcome = Heron.Fail(failure);
            Assert.True(outcome.Computed, failure.Says);
            Assert.Equal(Heron.Burnt.Mass, outcome.Pieces.Sum(p => p.Mass), 1e-6);
            Assert.Equal(outcome.Verdict == Verdict.Stop, !outcome.WithinLimits);
            Assert.True(outcome.Hardest!.Landing.DescentRate > 4, failure.Says);
            Assert.Equal(outcome.Events.OrderBy(e => e.Time), outcome.Events);
        }
    }

    [Fact]
    public void One_failure_flown_alone_is_its_row_of_the_table()
    {
        var alone = Heron.Fail(Heron.Rocket.Failures.Single(f => f.Name == "Main does not open"));
        Assert.Equal(Row("Main does not open").Pieces, alone.Pieces);
        Assert.Equal(Row("Main does not open").Judged, alone.Judged);
    }

    // Integrated here by the classical fourth-order Runge-Kutta method in the plane of the flight, without attitude, Earth's turning or wind
    // aloft, in air by the hydrostatic equation: what a dive needs. The drag coefficient is the table's at no incidence.
    [Fact]
    public void A_dive_against_an_independent_integration_of_a_falling_body()
    {
        var study = Changed(d => d with { Weather = new(null, d.Weather!.Value! with { WindSpeed = null, WindFrom = null, Gust = null, Layers = [] }) });
        var dive = Assert.Single(Row(study, "Every altimeter dead").Pieces);
        var top = study.Flight.Apogee!;
        double mass = top.Mass, area = study.Aero.ReferenceArea, ground = study.Air.Elevation;
        double[] y = [0, top.Height, Math.Sqrt((top.Velocity.X * top.Velocity.X) + (top.Velocity.Y * top.Velocity.Y)), 0];
        const double Step = 0.01;
        while (y[1] > 0)
        {
            var a = Rate(y);
            var b = Rate(Moved(a, Step / 2));
            var c = Rate(Moved(b, Step / 2));
            var e = Rate(Moved(c, Step));
            y = [.. y.Select((x, i) => x + (Step / 6 * (a[i] + (2 * b[i]) + (2 * c[i]) + e[i])))];
        }

        // Nose first, a rocket swings a little and so falls a little slower than a body without attitude: two parts in a hundred.
        Assert.Equal(-y[3], dive.Landing.DescentRate, 0.02 * -y[3]);
        Assert.Equal(0.5 * mass * y[3] * y[3], dive.Energy, 0.04 * dive.Energy);
        Assert.Equal("Night Heron", dive.Name);

        double[] Moved(double[] rate, double step) => [.. y.Select((x, i) => x + (step * rate[i]))];

        double[] Rate(double[] s)
        {
            var warm = study.Air.Temperature - (0.0065 * s[1]);
            var pressure = study.Air.StationPressure * Math.Pow(warm / study.Air.Temperature, G / (AirConstant * 0.0065));
            var density = pressure / (AirConstant * warm);
            double speed = Math.Sqrt((s[2] * s[2]) + (s[3] * s[3])), sound = Math.Sqrt(1.4 * AirConstant * warm);
            var viscosity = 1.458e-6 * Math.Pow(warm, 1.5) / (warm + 110.4);
            double drag = study.Aero.At<Scalar>(speed / sound, 0, density * speed / viscosity, 0).Axial;
            var k = density * drag * area * speed / (2 * mass);
            return [s[2], s[3], -k * s[2], (-k * s[3]) - G];
        }
    }

    // v² = 2 m g/(ρ CdS) with the drag areas typed by hand from the design: 1.05 on 66 in for the main, 0.75 on 18 in for the drogue,
    // bodies 0.66 d L (half of it for the nose) and fins 1.1 A/π each; ρ of moist air from 28.55 inHg, 74 °F and 45 % (e 1.29 kPa).
    [Theory]
    [InlineData("Drogue does not open", 0.88, 74)]
    [InlineData("Main does not open", 0.75, 18)]
    public void The_steady_speed_under_one_canopy_by_hand(string failure, double coefficient, double inches)
    {
        const double Inch = 0.0254;
        var canopy = coefficient * Math.PI / 4 * inches * Inch * inches * Inch;
        var bodies = 0.66 * 3.12 * Inch * Inch * ((15 / 2.0) + 21.5 + 1 + 36);
        var fins = 3 * 1.1 / Math.PI * (8.5 + 3.25) / 2 * 4 * Inch * Inch;
        var density = (28.55 * 3386.389 - (0.378 * 1290)) / (AirConstant * (273.15 + ((74 - 32) / 1.8)));
        var piece = Row(failure).Pieces[0];
        var mass = piece.Landing.Mass;
        var byHand = Math.Sqrt(2 * mass * G / (density * (canopy + bodies + fins)));
        Assert.Equal(byHand, piece.Landing.DescentRate, 0.01 * byHand);
        Assert.All(Row(failure).Pieces, p => Assert.Equal(0.5 * p.Mass * byHand * byHand, p.Energy, 0.02 * p.Energy));
    }

    // Layer time of an exponential atmosphere, t = (2H/v0)(1 - exp(-h/2H)), H 10.4 km: a fit good to a few parts in a hundred.
    [Fact]
    public void A_main_from_apogee_takes_its_time()
    {
        var piece = Row("Main joint opens at apogee").Pieces[0];
        var byHand = 2 * 10_400 / piece.Landing.DescentRate * (1 - Math.Exp(-Heron.Flight.Apogee!.Height / (2 * 10_400)));
        Assert.Equal(byHand, piece.Landing.At.Time - Heron.Flight.Apogee.Time, 0.03 * byHand);
    }

    // In a wind alike at every height a canopy goes with it: the drift is the wind times the time, and twice the wind drifts twice as far.
    [Theory]
    [InlineData("Main joint opens at apogee")]
    [InlineData("As planned")]
    public void Drift_is_linear_in_a_uniform_wind(string failure)
    {
        var (calm, light, fresh) = (Drift(0), Drift(3), Drift(6));
        Assert.Equal(2 * (light.Drift - calm.Drift), fresh.Drift - calm.Drift, 0.02 * fresh.Drift);

        // The climb leans into the wind and arrives at apogee moving against it, which a drogue takes some seconds to stop.
        Assert.Equal(6 * fresh.Time, fresh.Drift - calm.Drift, 0.05 * fresh.Drift);

        (double Drift, double Time) Drift(double wind)
        {
            LayerDesign Layer(string height) => new() { Height = M<Length>(height), WindSpeed = M<Speed>($"{wind} m/s"), WindFrom = M<Angle>("270 deg") };
            var study = Changed(d => d with { Weather = new(null, d.Weather!.Value! with { WindSpeed = M<Speed>($"{wind} m/s"), WindFrom = M<Angle>("270 deg"), MeasuredAt = M<Length>("2 m"), Gust = null, Layers = [Layer("3 m"), Layer("4000 m")] }) });
            var (landing, top) = (Row(study, failure).Pieces[0].Landing, study.Flight.Apogee!);
            return (landing.East - top.Position.X, landing.At.Time - top.Time);
        }
    }

    // Free fall past apogee: the vertical speed grows by g t, the horizontal one stays, drag takes next to nothing of so slow a rocket.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_late_charge_meets_the_airspeed_of_a_fall(double late)
    {
        var opens = Heron.Fail(new Failure("Late", "test") { Late = late }).Events.First(e => e.What == "Drogue opens");
        var top = Heron.Flight.Apogee!;
        var byHand = Math.Sqrt((top.Airspeed * top.Airspeed) + (G * late * G * late));
        Assert.Equal(top.Time + late, opens.Time, 1e-6);
        Assert.Equal(byHand, opens.Airspeed, 0.03 * byHand);
    }

    [Fact]
    public void Powder_too_weak_for_every_joint_ends_as_every_altimeter_dead()
    {
        var outcome = Heron.Fail(new Failure("Damp powder", "test") { Powder = 0.02 });
        Assert.Equal(Row("Every altimeter dead").Pieces, outcome.Pieces);
        Assert.Empty(outcome.Unburnt);
        Assert.Equal(4, outcome.Events.Count(e => e.What.Contains("stays shut", StringComparison.Ordinal)));
        Assert.False(outcome.WithinLimits);
    }

    [Fact]
    public void Charges_that_burn_together_are_one_of_their_sum()
    {
        var failure = Heron.Rocket.Failures.Single(f => f.Name == "Drogue charges at once");
        var failed = FailedRocket.Of(Heron.Rocket, failure, Heron.PinTemperature);
        var one = failed.Separation.Charges.Single(c => c.Name == "Drogue A and Drogue B");
        Assert.Equal(Heron.Rocket.Separation.Charges.Where(c => c.Name.StartsWith("Drogue", StringComparison.Ordinal)).Sum(c => c.Mass), one.Mass);
        Assert.Equal(["Primary: Drogue A and Drogue B", "Primary: Main A", "Backup: Main B"], failed.Firings.Select(f => f.Name));

        // Harder on everything than either alone: the pins of the main have less in hand than as planned.
        double Hold(FailureOutcome o) => o.Judged.Single(f => f.Name == "Nose to Payload may be jerked open").Value;
        Assert.True(Hold(Row("Drogue charges at once")) < Hold(Row("As planned")));
        Assert.Contains(Row("Drogue charges at once").Judged, f => f.Limit!.Id == "bursts-nothing.margin");
    }

    [Fact]
    public void A_cord_that_breaks_lets_the_pieces_fall_apart()
    {
        var study = Changed(d => d with { Stowed = d.Stowed.Select(s => s.Cord is { Name: "Lower harness" } c ? s with { Cord = c with { Strength = M<Force>("10 N"), Stretch = M<Ratio>("20 %") } } : s).ToValueList() });
        var planned = study.FailureOutcomes[0];
        Assert.Contains(planned.Events, e => e.What == "Lower harness breaks as it runs out after Drogue A");
        Assert.True(planned.Pieces.Select(p => p.Landing.Body).Distinct().Count() > 1);
        Assert.Contains(planned.Broken, f => f.Name == "Lower harness breaks");
        Assert.Contains(Ask(study).Notes, n => n.StartsWith("As planned, without any failure, it breaks: ", StringComparison.Ordinal));
    }

    [Fact]
    public void Pins_too_weak_for_the_jerk_bring_the_main_out_at_apogee()
    {
        var study = Changed(d => d with { Joints = [d.Joints[0] with { Fit = null, Pins = d.Joints[0].Pins! with { Count = 1, Clock = [], FromEdge = [], Strength = M<Force>("5 N") } }, .. d.Joints.Skip(1)] });
        var planned = study.FailureOutcomes[0];
        Assert.Contains(planned.Events, e => e.What.StartsWith("Nose to Payload is jerked open", StringComparison.Ordinal));
        Assert.Equal(Row(study, "Main joint opens at apogee").Pieces[0].Landing.At.Time, planned.Pieces[0].Landing.At.Time, 1);
        Assert.Equal(Verdict.Stop, planned.Verdict);

        // What lies in the bay comes out, also where its own charges never burn.
        Assert.Contains(Row(study, "No main charge").Events, e => e.What == "Main opens");
        Assert.DoesNotContain(Row(study, "Main does not open").Events, e => e.What == "Main opens");
    }

    // A main that opens at the speed of a dive tears; with the strength of ten it breaks its cord instead. Either way it is lost, and that is
    // a limit broken, whatever the landing.
    [Fact]
    public void A_main_that_opens_in_a_dive_is_lost()
    {
        var torn = Row("No drogue charge");
        Assert.Contains(torn.Events, e => e.What == "Main opens and tears; it is taken as lost" && e.Airspeed > 100);
        Assert.Contains(torn.Broken, f => f.Name == "Main tears" && f.Limit!.Id == "load-path.factor");
        Assert.True(torn.Hardest!.Landing.DescentRate > 2 * Row("Drogue does not open").Hardest!.Landing.DescentRate);

        var strong = Changed(d => d with { Stowed = d.Stowed.Select(s => s.Canopy is { Name: "Main" } c ? s with { Canopy = c with { Lines = null, Strength = M<Force>("50 kN") } } : s).ToValueList() });
        var broken = Row(strong, "No drogue charge");
        Assert.Contains(broken.Events, e => e.What == "Main opens and breaks Upper harness; it is taken as lost");
        Assert.Contains(broken.Broken, f => f.Name == "Upper harness breaks");
    }

    [Fact]
    public void The_load_path_is_held_to_its_limit_in_every_flight()
    {
        var answer = Questionnaire.Named("load-path")!.Ask(Heron);
        var planned = Row("As planned").Judged.Single(f => f.Limit!.Id == "load-path.factor");

        // The question takes the hardest charge on each joint, the flight the one that opens it.
        Assert.InRange(planned.Value, answer.Findings[0].Value, 1.5 * answer.Findings[0].Value);
        Assert.All(Heron.FailureOutcomes.Where(o => o.Events.Any(e => e.What.Contains("taken as lost", StringComparison.Ordinal))), o => Assert.Contains(o.Broken, f => f.Limit!.Id == "load-path.factor"));
    }

    [Fact]
    public void Without_a_backup_a_dead_altimeter_is_a_stop()
    {
        var study = Changed(d => d with { Firing = [d.Firing[0]], Charges = d.Charges.Where(c => c.Name.EndsWith('A')).ToValueList() });
        var answer = Ask(study);
        Assert.Equal(Verdict.Stop, answer.Verdict);
        Assert.Equal(1, Value(answer, "altimeters whose death alone"));
        Assert.DoesNotContain(study.Rocket.Failures, f => f.Name is "Every altimeter dead" or "Drogue charges at once" or "Main charges at once");
        Assert.Equal(1, Row(study, "No main charge").Failure.Things);
        Assert.Equal(["Drogue A", "Main A"], Row(study, "Primary dead").Unburnt);
    }

    // One flight, whichever question tells of it. A rocket that stays whole may settle flat at a fifth of the speed of a dive; nothing holds it so.
    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void A_dead_altimeter_is_one_flight_in_both_questions(string example)
    {
        var study = Example.Nominal(example);
        var sequence = Questionnaire.Named("sequence")!.Ask(study);
        foreach (var name in study.Rocket.Firings.Select(f => f.Altimeter).OfType<string>().Distinct())
        {
            var row = study.Fail(study.Dead(name));
            if (row.Failure.Name is { } told && study.FailureOutcomes.FirstOrDefault(o => o.Failure.Name == told) is { } listed) Assert.Same(listed, row);
            Assert.Equal(row.Pieces.Max(p => p.Landing.DescentRate), Value(sequence, $"{name} dead: descent rate at the ground"));
            Assert.Equal(row.Pieces.Max(p => p.Landing.DescentRate), sequence.Working.Steps.Single(s => s.Meaning == $"{name} dead: descent rate at the ground, greatest").Value);
        }
    }

    [Fact]
    public void Left_whole_it_is_told_to_come_down_as_a_falling_body_and_not_flat()
    {
        var study = Changed(d => d with { Firing = [d.Firing[0]], Charges = d.Charges.Where(c => c.Name.EndsWith('A')).ToValueList() });
        var sequence = Questionnaire.Named("sequence")!.Ask(study);
        Assert.Equal(2, Value(sequence, "Primary dead: joints that stay shut"));

        // Without drag it would fall from its apogee at sqrt(2 g h); a slender body loses less than half of that.
        var free = Math.Sqrt(2 * G * study.Flight.Apogee!.Height);
        Assert.InRange(Value(sequence, "Primary dead: descent rate at the ground"), 0.5 * free, free);
    }

    [Fact]
    public void A_piece_that_leaves_the_field_breaks_a_limit()
    {
        // The outline rules where there is one; half the shortest side where there is none; nothing where the site states neither.
        var row = Row("Main joint opens at apogee");
        var outline = Heron.Day.Field!.Boundary;
        Assert.Equal(row.Pieces.Min(p => outline.Inside(new(p.Landing.East, p.Landing.North))), row.Broken.Single(f => f.Limit!.Id == "if-it-fails.outline").Value);

        var plain = Changed(d => d with { Site = new(null, d.Site!.Value! with { Boundary = null }) });
        var far = Row(plain, "Main joint opens at apogee");
        var field = far.Broken.Single(f => f.Limit!.Id == "if-it-fails.field");
        Assert.Equal(3000 * 0.3048, field.Limit!.Value, 1e-9);
        Assert.Equal(far.Pieces.Max(p => p.Away), field.Value);

        var unknown = Changed(d => d with { Site = new(null, d.Site!.Value! with { Boundary = null, ShortestSide = null }) });
        Assert.True(Row(unknown, "Main joint opens at apogee").WithinLimits);
        Assert.Contains(Ask(unknown).Notes, n => n.StartsWith("The site states neither outline nor shortest side", StringComparison.Ordinal));
    }

    [Fact]
    public void A_hot_motor_is_as_strong_and_quicker()
    {
        foreach (var name in new[] { "Hot motor", "Cold motor" })
        {
            var failure = Heron.Rocket.Failures.Single(f => f.Name == name);
            var motor = failure.Of(Heron.Motor);
            Assert.Equal(Heron.Motor.Curve.TotalImpulse, motor.Curve.TotalImpulse, 1e-9 * motor.Curve.TotalImpulse);
            Assert.Equal(failure.BurnTime * Heron.Motor.Curve.BurnTime, motor.Curve.BurnTime, 1e-9);
            Assert.Contains(Row(name).Judged, f => f.Limit!.Id == "rail-exit.speed");
        }

        double Exit(string name) => Row(name).Judged.Single(f => f.Limit!.Id == "rail-exit.speed").Value;
        Assert.True(Exit("Hot motor") > Exit("Cold motor"));
    }

    [Fact]
    public void A_rocket_that_does_not_fly_has_no_table()
    {
        var answer = Ask(Changed(d => d with { Motor = new(null, d.Motor!.Value! with { LoadedMass = M<Mass>("60 kg") }) }));
        Assert.Equal(Verdict.Open, answer.Verdict);
        Assert.Empty(answer.Tables);
        Assert.Contains(answer.Notes, n => n.Contains("does not fly", StringComparison.Ordinal));
    }

    // Without a cord the sides come down apart, each with its own canopy or none.
    [Fact]
    public void Without_cords_every_piece_lands_by_itself()
    {
        var study = Changed(d => d with { Stowed = d.Stowed.Where(s => s.Cord is null).ToValueList() });
        Assert.Equal(3, study.FailureOutcomes[0].Pieces.Select(p => p.Landing.Body).Distinct().Count());
        Assert.Equal(Verdict.Stop, Ask(study).Verdict);
    }

    [Fact]
    public void A_builders_own_failure_is_flown_with_the_others()
    {
        var study = Changed(d => d with
        {
            Failures =
            [
                new() { Name = "Backup dead and main tangled", Dead = ["Backup"], Unopened = ["Main"], Source = "asked for by the club" },
                new() { Name = "Payload lets go", LetsGo = [new() { Between = ["Payload", "Bay"], When = MomentWord.Burnout, After = M<Duration>("2 s") }] },
            ],
        });
        var own = Row(study, "Backup dead and main tangled");
        Assert.Equal(2, own.Failure.Things);
        Assert.Equal(Row("Main does not open").Hardest!.Landing.DescentRate, own.Hardest!.Landing.DescentRate, 1e-6);
        Assert.Equal(["Drogue B", "Main B"], own.Unburnt);

        // The upper harness ties nose to bay, so the four pieces come down together.
        var apart = Row(study, "Payload lets go");
        Assert.Equal(["Nose", "Payload", "Bay", "Booster"], apart.Pieces.Select(p => p.Name));
        Assert.Single(apart.Pieces.Select(p => p.Landing.Body).Distinct());
        Assert.All(Ask(study).Tables.Take(3), t => Assert.Contains(t.Rows, r => r.Cells[0].Words == "Payload lets go"));
    }

    [Fact]
    public void A_name_of_the_standard_set_is_refused()
    {
        var design = Design("night-heron") with { Failures = [new() { Name = "hot motor", Dead = ["Backup"], At = "failures[0]" }] };
        Assert.Contains(Studies.Of(design).Problems, p => p.At == "failures[0].name" && p.Suggestion == "Give it a name of its own.");
    }

    [Theory]
    [MemberData(nameof(Example.Names), MemberType = typeof(Example))]
    public void The_table_tells_what_the_answer_counts(string example)
    {
        var study = Example.Nominal(example);
        var answer = Ask(study);
        var endings = answer.Tables[0];
        Assert.Equal(study.Rocket.Failures.Count + 1, endings.Rows.Count);
        Assert.All(answer.Tables, t => Assert.All(t.Rows, r => Assert.Equal(t.Columns.Count, r.Cells.Count)));
        var singles = study.FailureOutcomes.Where(o => o.Failure.Things == 1).ToArray();
        Assert.Equal(singles.Count(o => o.Verdict is Verdict.Clear or Verdict.Watch), answer.Findings[0].Value);
        Assert.EndsWith($", of {singles.Length}", answer.Findings[0].Name, StringComparison.Ordinal);
        Assert.Equal(singles.Max(o => o.Hardest!.Energy), Value(answer, "hardest landing after one failure"));
        Assert.Contains(answer.Notes, n => n.Contains("fin lost is out of scope", StringComparison.Ordinal));
        Assert.Equal(study.FailureOutcomes.Sum(o => o.Pieces.Count), answer.Tables[2].Rows.Count);
    }

    [Fact]
    public void The_standard_set_names_its_sources() => Assert.All(StandardFailure.All, f => Assert.False(string.IsNullOrWhiteSpace(f.Source)));
}
