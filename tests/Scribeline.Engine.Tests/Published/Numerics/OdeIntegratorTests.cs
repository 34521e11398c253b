using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Numerics;

/// <summary>
/// Whole integrations against published problems. The integrator runs at tolerances of 1e-13 here, so that what is left
/// is the rounding of the printed values.
/// </summary>
public class OdeIntegratorTests
{
    private static readonly StepControl Tight = new() { RelativeTolerance = 1e-13, AbsoluteTolerance = [1e-15] };

    [Fact]
    public void Arenstorf_orbit_passes_the_published_points_and_closes()
    {
        var y = Arenstorf.Start;
        var integrator = new OdeIntegrator<DormandPrince54>(4, Tight);
        double[] times = [2, 10, 16, Arenstorf.Period];
        string[][] rows = [["N01", "N02"], ["N03", "N04"], ["N05", "N06"], ["N07"]];
        var from = 0.0;
        for (var i = 0; i < times.Length; i++)
        {
            Assert.True(integrator.Integrate(new Arenstorf(), from, times[i], y).Succeeded);
            for (var component = 0; component < rows[i].Length; component++) CheckValues.Holds(rows[i][component], y[component]);
            from = times[i];
        }

        Assert.Equal(0, y[1], 1e-8);
    }

    /// <summary>
    /// Published output of the 5(4) program of Hairer, Norsett and Wanner I (appendix) at rtol = atol = 1e-7: 1442
    /// evaluations, 240 steps, 216 accepted; its count of 22 rejections leaves out those before the first acceptance.
    /// </summary>
    [Fact]
    public void Arenstorf_orbit_takes_the_published_number_of_steps()
    {
        var y = Arenstorf.Start;
        var control = new StepControl { RelativeTolerance = 1e-7, AbsoluteTolerance = [1e-7] };
        var end = new OdeIntegrator<DormandPrince54>(4, control).Integrate(new Arenstorf(), 0, Arenstorf.Period, y);
        Assert.Equal((216, 24, 1442), (end.Accepted, end.Rejected, end.Evaluations));
        Assert.Equal(0.9940021016, y[0], 1e-9);
        Assert.Equal(8.9e-6, y[1], 0.1e-6);
    }

    [Theory]
    [InlineData(1, "N21")]
    [InlineData(2, "N22")]
    [InlineData(3, "N23")]
    [InlineData(4, "N24")]
    public void Scalar_problems_A(int number, string row)
    {
        double[] y = [DetestA.Start(number)];
        new OdeIntegrator<Tsitouras54>(1, Tight with { AbsoluteTolerance = [1e-22] }).Integrate(new DetestA(number), 0, 20, y);
        CheckValues.Holds(row, y[0]);
    }

    /// <summary>-0.788782668896, to the digits printed: an independent computation from the definition of Hull et al.</summary>
    [Fact]
    public void Scalar_problem_A5()
    {
        double[] y = [DetestA.Start(5)];
        new OdeIntegrator<Tsitouras54>(1, Tight).Integrate(new DetestA(5), 0, 20, y);
        Assert.Equal(-0.788782668896, y[0], 1e-11);
    }

    [Fact]
    public void Rigid_body_B5_reaches_the_elliptic_functions_and_keeps_their_invariants()
    {
        double[] y = [0, 1, 1];
        var integrator = new OdeIntegrator<DormandPrince54>(3, Tight);
        integrator.Integrate(new DetestB5(), 0, 20, y);
        CheckValues.Holds("N08", y[0]);
        CheckValues.Holds("N09", y[1]);
        CheckValues.Holds("N10", y[2]);
        Assert.Equal(1, y[0] * y[0] + y[1] * y[1], 1e-11);
        Assert.Equal(1, 0.51 * y[0] * y[0] + y[2] * y[2], 1e-11);

        y = [0, 1, 1];
        integrator.Integrate(new DetestB5(), 0, CheckValues.Value("N11"), y);
        Assert.Equal(0, y[0], 1e-9);
        Assert.Equal(1, y[1], 1e-9);
    }

    [Theory]
    [InlineData(0.1, "N25", "N26")]
    [InlineData(0.5, "N27", "N28")]
    [InlineData(0.9, "N29", "N30")]
    public void Orbits_D(double eccentricity, string first, string second)
    {
        var y = DetestD.Start(eccentricity);
        new OdeIntegrator<DormandPrince54>(4, Tight).Integrate(new DetestD(), 0, 20, y);
        CheckValues.Holds(first, y[0]);
        CheckValues.Holds(second, y[1]);
    }

    /// <summary>33.950914446, 0.276782265967: an independent computation from the definition of Hull et al.</summary>
    [Fact]
    public void Falling_body_E4()
    {
        double[] y = [30, 0];
        new OdeIntegrator<DormandPrince54>(2, Tight).Integrate(new DetestE4(), 0, 20, y);
        Assert.Equal(33.950914446, y[0], 1e-9);
        Assert.Equal(0.276782265967, y[1], 1e-11);
    }

    [Theory]
    [InlineData(false, "N15", "N18")]
    [InlineData(true, "N41", "N44")]
    public void Forced_rigid_body_with_stops_at_its_jumps(bool torque, string atForceOff, string atEnd)
    {
        var solution = new Trajectory(3);
        var y = Eulr.Start;
        var end = new OdeIntegrator<DormandPrince54>(3, Tight)
            .Integrate(new Eulr(torque), 0, 20, y, Eulr.Jumps, default(NoEvents), solution);
        Assert.True(end.Succeeded);
        Rows(atEnd, y);
        solution.StateAt(4 * Math.PI, y);
        Rows(atForceOff, y);
        solution.StateAt(3 * Math.PI, y);
        Rows("N12", y);

        static void Rows(string first, double[] y)
        {
            var number = int.Parse(first.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture);
            for (var i = 0; i < 3; i++) CheckValues.Holds($"N{number + i}", y[i]);
        }
    }

    [Fact]
    public void Bouncing_ball_strikes_when_the_closed_form_says()
    {
        double[] y = [10, 0];
        var integrator = new OdeIntegrator<DormandPrince54>(2, new StepControl { MaxStep = 0.5, EventTolerance = 1e-13 });
        var (time, just) = (0.0, 0UL);
        foreach (var row in (string[])["N37", "N38", "N39", "N40"])
        {
            var end = integrator.Integrate(new Falling(), time, 20, y, [], new Ground(), default(NoSink), just);
            Assert.Equal(IntegrationOutcome.Event, end.Outcome);
            CheckValues.Holds(row, end.Time);
            y[1] *= -0.8;
            (time, just) = (end.Time, end.Events);
        }
    }

    private readonly struct Ground : IEventFunctions
    {
        public int Count => 1;

        public EventRule Rule(int index) => new(Crossing.Falling, Terminal: true);

        public double Value(int index, double time, ReadOnlySpan<double> state) => state[0];
    }
}
