using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Numerics;

/// <summary>Integrators earn their order: y' = y cos t, y = exp(sin t), with fixed steps.</summary>
public class ConvergenceTests
{
    /// <summary>
    /// Errors at t = 4 with 40, 80 and 160 steps, computed independently from the published coefficients: 5(4) of Dormand
    /// and Prince 9.30e-10, 3.22e-11, 1.05e-12; 3(2) of Bogacki and Shampine -1.79e-5, -2.20e-6, -2.73e-7. Three digits are
    /// given; the last of the first row feels rounding.
    /// </summary>
    [Fact]
    public void Errors_are_those_computed_independently()
    {
        var exact = Math.Exp(Math.Sin(4));
        Check<DormandPrince54>([(40, 9.30e-10), (80, 3.22e-11), (160, 1.05e-12)], 0.005);
        Check<BogackiShampine32>([(40, -1.79e-5), (80, -2.20e-6), (160, -2.73e-7)], 0.005);

        void Check<TPair>((int Steps, double Error)[] rows, double relative)
            where TPair : struct, IRungeKuttaPair
        {
            foreach (var (steps, error) in rows)
            {
                Assert.Equal(error, Solve<TPair>(steps, 4).End - exact, relative * Math.Abs(error) + 1e-14);
            }
        }
    }

    [Fact]
    public void Halving_the_step_divides_the_error_by_two_to_the_order()
    {
        Assert.InRange(Order<DormandPrince54>(steps => EndError<DormandPrince54>(steps)), 4.8, 5.2);
        Assert.InRange(Order<Tsitouras54>(steps => EndError<Tsitouras54>(steps)), 4.8, 5.3);
        Assert.InRange(Order<BogackiShampine32>(steps => EndError<BogackiShampine32>(steps)), 2.9, 3.1);
    }

    /// <summary>
    /// A dense output whose own error in one step is of order h^(p+1) has order p; the greatest error within the steps is
    /// measured. For the pair 3(2) the cubic is as accurate as the steps themselves.
    /// </summary>
    [Fact]
    public void Dense_output_has_order_four_and_three()
    {
        Assert.InRange(Order<DormandPrince54>(steps => WithinError<DormandPrince54>(steps)), 3.9, 5.2);
        Assert.InRange(Order<Tsitouras54>(steps => WithinError<Tsitouras54>(steps)), 3.9, 5.2);
        Assert.InRange(Order<BogackiShampine32>(steps => WithinError<BogackiShampine32>(steps)), 2.9, 4.1);
    }

    private static double Order<TPair>(Func<int, double> error)
        where TPair : struct, IRungeKuttaPair => Math.Log2(error(40) / error(80));

    private static double EndError<TPair>(int steps)
        where TPair : struct, IRungeKuttaPair => Math.Abs(Solve<TPair>(steps, 4).End - Math.Exp(Math.Sin(4)));

    private static double WithinError<TPair>(int steps)
        where TPair : struct, IRungeKuttaPair
    {
        var solution = Solve<TPair>(steps, 4).Solution;
        var greatest = 0.0;
        Span<double> y = stackalloc double[1];
        for (var i = 0; i <= 2000; i++)
        {
            var t = 4 * i / 2000.0;
            solution.StateAt(t, y);
            greatest = Math.Max(greatest, Math.Abs(y[0] - Math.Exp(Math.Sin(t))));
        }

        return greatest;
    }

    /// <summary>Equal steps by way of stops, with tolerances that accept anything.</summary>
    private static (double End, Trajectory Solution) Solve<TPair>(int steps, double to)
        where TPair : struct, IRungeKuttaPair
    {
        var stops = Enumerable.Range(1, steps - 1).Select(i => to * i / steps).ToArray();
        double[] y = [1];
        var solution = new Trajectory(1);
        var control = new StepControl { RelativeTolerance = 1e6, AbsoluteTolerance = [1e6], FirstStep = to };
        var end = new OdeIntegrator<TPair>(1, control).Integrate(new CosineGrowth(), 0, to, y, stops, default(NoEvents), solution);
        Assert.Equal(steps, end.Accepted);
        return (y[0], solution);
    }
}
