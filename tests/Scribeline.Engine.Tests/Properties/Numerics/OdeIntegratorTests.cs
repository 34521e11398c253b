using CsCheck;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Tests.Published.Numerics;

namespace Scribeline.Engine.Tests.Properties.Numerics;

/// <summary>What every integration must do, whatever the pair.</summary>
public class OdeIntegratorTests
{
    [Fact]
    public void Going_back_returns_to_the_start()
    {
        Check<DormandPrince54>(1e-10);
        Check<Tsitouras54>(1e-10);
        Check<BogackiShampine32>(1e-8);

        static void Check<TPair>(double tolerance)
            where TPair : struct, IRungeKuttaPair => Gen.Select(Gen.Double[0.0, 0.6], Gen.Double[0.1, 8]).Sample((eccentricity, time) =>
            {
                var control = new StepControl { RelativeTolerance = tolerance, AbsoluteTolerance = [tolerance] };
                var integrator = new OdeIntegrator<TPair>(4, control);
                var start = DetestD.Start(eccentricity);
                var y = DetestD.Start(eccentricity);
                Assert.Equal(time, integrator.Integrate(new DetestD(), 0, time, y).Time);
                Assert.Equal(0, integrator.Integrate(new DetestD(), time, 0, y).Time);
                for (var i = 0; i < 4; i++) Assert.Equal(start[i], y[i], 2000 * tolerance);
            }, iter: 20);
    }

    /// <summary>Against the exact solution exp(sin t): a hundredth of the tolerance gives less than a tenth of the error.</summary>
    [Fact]
    public void A_tighter_tolerance_lowers_the_error()
    {
        Check<DormandPrince54>();
        Check<Tsitouras54>();
        Check<BogackiShampine32>();

        static void Check<TPair>()
            where TPair : struct, IRungeKuttaPair
        {
            var last = double.PositiveInfinity;
            foreach (var tolerance in (double[])[1e-4, 1e-6, 1e-8, 1e-10])
            {
                double[] y = [1];
                new OdeIntegrator<TPair>(1, new StepControl { RelativeTolerance = tolerance, AbsoluteTolerance = [tolerance] })
                    .Integrate(new CosineGrowth(), 0, 10, y);
                var error = Math.Abs(y[0] - Math.Exp(Math.Sin(10)));
                Assert.True(error < last / 10, $"{typeof(TPair).Name} at {tolerance}: {error}");
                Assert.True(error < 100 * tolerance);
                last = error;
            }
        }
    }

    [Fact]
    public void The_same_run_gives_the_same_bits()
    {
        static double[] Run()
        {
            var y = Arenstorf.Start;
            new OdeIntegrator<Tsitouras54>(4, new StepControl()).Integrate(new Arenstorf(), 0, 5, y);
            return y;
        }

        Assert.Equal(Run(), Run());
    }

    [Fact]
    public void Steps_allocate_nothing()
    {
        var integrator = new OdeIntegrator<DormandPrince54>(4, new StepControl { RelativeTolerance = 1e-9 });
        var y = Arenstorf.Start;
        integrator.Integrate(new Arenstorf(), 0, 17, y, [1, 2], new Crossings(), new CountingSink());
        y = Arenstorf.Start;
        double[] stops = [1, 2];
        var sink = new CountingSink();
        var before = GC.GetAllocatedBytesForCurrentThread();
        integrator.Integrate(new Arenstorf(), 0, 17, y, stops, new Crossings(), sink);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sink.Steps > 300 && sink.Passes > 3);
    }

    /// <summary>A step up to a stop sees the equations before it, one from it those after: jumps cost no rejected step.</summary>
    [Theory]
    [InlineData(0, 3, 2 + 10)]
    [InlineData(3, 0, -(2 + 10))]
    public void Stops_keep_jumps_out_of_the_steps(double from, double to, double change)
    {
        double[] y = [0], stops = from < to ? [1, 2] : [2, 1];
        var end = new OdeIntegrator<DormandPrince54>(1, new StepControl()).Integrate(new Staircase(), from, to, y, stops, default(NoEvents), default(NoSink));
        Assert.Equal(0, end.Rejected);
        Assert.Equal(change, y[0], 1e-12);
    }

    [Fact]
    public void A_solution_is_continuous_and_repeats_its_run()
    {
        var y = Arenstorf.Start;
        var solution = new Trajectory(4);
        new OdeIntegrator<DormandPrince54>(4, new StepControl { RelativeTolerance = 1e-9 })
            .Integrate(new Arenstorf(), 0, 10, y, [], default(NoEvents), solution);
        double[] a = new double[4], b = new double[4], rate = new double[4];
        for (var i = 1; i < solution.Count; i++)
        {
            var time = solution.StepStart(i);
            solution.StateBefore(time, a);
            solution.StateAt(time, b);
            for (var j = 0; j < 4; j++) Assert.Equal(b[j], a[j], 1e-12);
            solution.RateAt(time, rate);
            new Arenstorf().Derivative(time, b, a);
            for (var j = 0; j < 4; j++) Assert.Equal(a[j], rate[j], 1e-9 * (1 + Math.Abs(a[j])));
        }

        solution.StateAt(10, a);
        for (var j = 0; j < 4; j++) Assert.Equal(y[j], a[j], 1e-12);
        Assert.Equal((0.0, 10.0), (solution.Start, solution.End));
    }

    /// <summary>Upward from 0 at v: the height h is passed at (v -+ sqrt(v^2 - 2 g h))/g, the top at v/g, the ground at 2 v/g.</summary>
    [Fact]
    public void Events_come_in_order_with_their_direction() => Gen.Select(Gen.Double[20, 200], Gen.Double[0.1, 0.9]).Sample((speed, part) =>
    {
        const double G = 9.80665;
        var height = part * speed * speed / (2 * G);
        var root = Math.Sqrt(speed * speed - 2 * G * height);
        double[] y = [0, speed];
        var solution = new Trajectory(2);
        var control = new StepControl { MaxStep = speed / G, EventTolerance = 1e-12 };
        var end = new OdeIntegrator<Tsitouras54>(2, control).Integrate(new Falling(), 0, 1000, y, [], new Arc(height), solution);
        Assert.Equal((IntegrationOutcome.Event, 3), (end.Outcome, end.Event));
        Assert.Equal(2 * speed / G, end.Time, 1e-9);
        Assert.Equal(end.Time, solution.End);
        Assert.Equal(-speed, y[1], 1e-8);
        Assert.Equal([0, 1, 2], solution.Passed.Select(e => e.Index));
        double[] times = [(speed - root) / G, speed / G, (speed + root) / G];
        for (var i = 0; i < 3; i++) Assert.Equal(times[i], solution.Passed[i].Time, 1e-9);
    }, iter: 50);

    [Fact]
    public void Two_crossings_in_one_step_are_both_seen()
    {
        double[] y = [0, 100];
        var solution = new Trajectory(2);
        var control = new StepControl { FirstStep = 25, RelativeTolerance = 1 };
        new OdeIntegrator<DormandPrince54>(2, control).Integrate(new Falling(), 0, 25, y, [], new Arc(450), solution);
        Assert.Equal(1, solution.Count);
        Assert.Equal([0, 1, 2], solution.Passed.Select(e => e.Index));
    }

    /// <summary>Two events with one zero end the run together, and neither is met again when the run goes on.</summary>
    [Fact]
    public void Events_at_one_time_are_told_together_and_not_again()
    {
        double[] y = [10, 0];
        var integrator = new OdeIntegrator<DormandPrince54>(2, new StepControl());
        var end = integrator.Integrate(new Falling(), 0, 5, y, [], new Twins(), default(NoSink));
        Assert.Equal((0, 0b11UL), (end.Event, end.Events));
        end = integrator.Integrate(new Falling(), end.Time, 5, y, [], new Twins(), default(NoSink), end.Events);
        Assert.Equal((IntegrationOutcome.Reached, 5.0), (end.Outcome, end.Time));
    }

    [Fact]
    public void Events_are_found_backward_too()
    {
        double[] y = [-90.3325, -49.03325];
        var end = new OdeIntegrator<DormandPrince54>(2, new StepControl { EventTolerance = 1e-12 })
            .Integrate(new Falling(), 5, -5, y, [], new Twins(), default(NoSink));
        Assert.Equal(IntegrationOutcome.Event, end.Outcome);
        Assert.True(end.Time < 5);
        Assert.Equal(0, y[0], 1e-9);
    }

    [Fact]
    public void Failures_are_values()
    {
        double[] y = [1];
        var end = new OdeIntegrator<DormandPrince54>(1, new StepControl { MaxSteps = 3 }).Integrate(new CosineGrowth(), 0, 100, y);
        Assert.Equal((IntegrationOutcome.TooManySteps, 3), (end.Outcome, end.Accepted + end.Rejected));
        Assert.False(end.Succeeded);

        // y' = y^2 from 1 leaves every bound at t = 1.
        y = [1];
        end = new OdeIntegrator<DormandPrince54>(1, new StepControl()).Integrate(new Runaway(), 0, 2, y);
        Assert.Equal(IntegrationOutcome.StepTooSmall, end.Outcome);
        Assert.Equal(1, end.Time, 1e-3);

        y = [double.NaN];
        end = new OdeIntegrator<DormandPrince54>(1, new StepControl()).Integrate(new Runaway(), 0, 2, y);
        Assert.Equal(IntegrationOutcome.NotFinite, end.Outcome);
    }

    [Fact]
    public void Steps_stay_below_the_longest_allowed()
    {
        double[] y = [0, 5];
        var solution = new Trajectory(2);
        new OdeIntegrator<DormandPrince54>(2, new StepControl { MaxStep = 0.25 }).Integrate(new Falling(), 0, 7, y, [], default(NoEvents), solution);
        for (var i = 0; i < solution.Count; i++) Assert.InRange(solution.Step(i).Width, 0, 0.25 * 1.01);
    }

    [Fact]
    public void A_system_over_scalars_gives_the_same_bits()
    {
        double[] a = [1], b = [1];
        new OdeIntegrator<DormandPrince54>(1, new StepControl()).Integrate(new OverScalar<Decay>(new Decay()), 0, 3, a);
        new OdeIntegrator<DormandPrince54>(1, new StepControl()).Integrate(new Falloff(), 0, 3, b);
        Assert.Equal(a, b);
    }

    private readonly struct Falloff : IOdeSystem
    {
        public int Dimension => 1;

        public void Derivative(double time, ReadOnlySpan<double> state, Span<double> rate) => rate[0] = -state[0];
    }

    private readonly struct Runaway : IOdeSystem
    {
        public int Dimension => 1;

        public void Derivative(double time, ReadOnlySpan<double> state, Span<double> rate) => rate[0] = state[0] * state[0];
    }

    /// <summary>1 before t = 1, 10 before t = 2, then 1.</summary>
    private readonly struct Staircase : IOdeSystem
    {
        public int Dimension => 1;

        public void Derivative(double time, ReadOnlySpan<double> state, Span<double> rate) => rate[0] = time is >= 1 and < 2 ? 10 : 1;
    }

    private readonly struct Crossings : IEventFunctions
    {
        public int Count => 2;

        public EventRule Rule(int index) => new(Crossing.Either, Terminal: false);

        public double Value(int index, double time, ReadOnlySpan<double> state) => state[index];
    }

    /// <summary>Height upward, top, height downward, ground (which ends the run).</summary>
    private readonly struct Arc(double height) : IEventFunctions
    {
        public int Count => 4;

        public EventRule Rule(int index) => new(index == 0 ? Crossing.Rising : Crossing.Falling, Terminal: index == 3);

        public double Value(int index, double time, ReadOnlySpan<double> state) => index switch
        {
            1 => state[1],
            3 => state[0],
            _ => state[0] - height,
        };
    }

    private readonly struct Twins : IEventFunctions
    {
        public int Count => 2;

        public EventRule Rule(int index) => new(Crossing.Either, Terminal: true, Guard: 1e-6);

        public double Value(int index, double time, ReadOnlySpan<double> state) => (1 + index) * state[0];
    }

    private sealed class CountingSink : IStepSink
    {
        public int Steps { get; private set; }

        public int Passes { get; private set; }

        public void Accept(DenseStep step) => Steps++;

        public void Pass(int index, double time, ReadOnlySpan<double> state) => Passes++;
    }
}
