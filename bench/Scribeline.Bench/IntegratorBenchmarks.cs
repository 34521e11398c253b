using System.Runtime.InteropServices;
using BenchmarkDotNet.Attributes;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;
using MathNet.Numerics.OdeSolvers;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Bench;

/// <summary>
/// The coast from burnout to apogee by our integrator and by the fourth-order Runge-Kutta of MathNet.Numerics: the same equations of motion,
/// the same accuracy of the height at the end. Steps of the latter are doubled until it is as near to a far finer solution as ours is.
/// </summary>
[MemoryDiagnoser]
public class IntegratorBenchmarks
{
    private const double Tolerance = 1e-8;

    private readonly double[] begin = new double[FlightState<Scalar>.Size];
    private WholeMotion<RocketModel> motion;
    private double[] scale = [];
    private double from;
    private double to;
    private int steps = 64;

    [GlobalSetup]
    public void Prepare()
    {
        var study = NightHeron.Fresh();
        var model = new RocketModel(NightHeron.Inputs(study), study.Aero);
        motion = new(new(model), FlightPhase.Coast, false, default, new Watch(false, null));
        scale = FlightTolerance.Whole(model.TotalImpulse);
        var burnout = study.Flight.Burnout!;
        (from, to) = (burnout.Time, study.Flight.Apogee!.Time);
        new FlightState<Scalar>(burnout.Position, burnout.Velocity, burnout.Attitude, burnout.Rate, model.TotalImpulse)
            .Write(MemoryMarshal.Cast<double, Scalar>(begin.AsSpan()));

        var truth = Adaptive(1e-12);
        var ours = Math.Abs(Adaptive(Tolerance) - truth);
        // Too few steps end in NaN, which is not near either.
        while (!(Math.Abs(FixedSteps(steps) - truth) <= ours) && steps < 1 << 20) steps *= 2;
        Console.WriteLine($"// height at apogee: ours within {ours:E1} m; fixed steps within {Math.Abs(FixedSteps(steps) - truth):E1} m in {steps} steps");
    }

    [Benchmark(Baseline = true, Description = "ours, 1e-8")]
    public double Ours() => Adaptive(Tolerance);

    [Benchmark(Description = "MathNet.Numerics, Runge-Kutta 4, as accurate")]
    public double MathNet() => FixedSteps(steps);

    private double Adaptive(double tolerance)
    {
        var integrator = new OdeIntegrator<Tsitouras54>(
            begin.Length, new StepControl { RelativeTolerance = tolerance, AbsoluteTolerance = [.. scale.Select(s => tolerance * s)] });
        var state = (double[])begin.Clone();
        integrator.Integrate(motion, from, to, state);
        return state[2];
    }

    private double FixedSteps(int count)
    {
        var path = RungeKutta.FourthOrder(DenseVector.OfArray(begin), from, to, count + 1, Rate);
        return path[^1][2];
    }

    private Vector<double> Rate(double time, Vector<double> state)
    {
        var rate = new double[state.Count];
        motion.Derivative(time, state.AsArray(), rate);
        return new DenseVector(rate);
    }
}
