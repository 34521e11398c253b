using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using static Scribeline.Engine.Recovery.OpeningEquations;

namespace Scribeline.Engine.Recovery;

/// <summary>Runs an opening, filling by filling.</summary>
internal static class OpeningFlow
{
    // A fill time is cut into at least so many steps, and each is looked at so often: the peak between two looks is then within 1e-5.
    private const int Steps = 25, Looks = 8;

    private static readonly StepControl Control = new() { RelativeTolerance = 1e-8, AbsoluteTolerance = [1e-9] };

    public static Opening Run(OpeningInputs inputs, List<(double Time, double Force)>? looks)
    {
        double[] y = new double[Size];
        (y[Along], y[Down]) = (inputs.Speed * Math.Cos(inputs.PathAngle), inputs.Speed * Math.Sin(inputs.PathAngle));
        double time = 0, peak = 0, peakTime = 0;
        double small = inputs.InitialFraction * inputs.DragArea, first = 0;

        void Fly(double duration, double fill, double from, double to, bool straight = false)
        {
            if (duration <= 0) return;
            var equations = new OpeningEquations(inputs, time, fill, from, to, straight);
            var trajectory = new Trajectory(Size);
            new OdeIntegrator<Tsitouras54>(Size, Control with { MaxStep = duration / Steps }).Integrate(equations, time, time + duration, y, [], default(NoEvents), trajectory);
            (peak, peakTime) = Greatest(equations, trajectory, peak, peakTime, looks);
            time += duration;
        }

        if (inputs.Reef is { } reef)
        {
            // Reefed and full filling take the root of their share of the growth (Knacke 1991, 5.4, from memory).
            var held = reef.Share * inputs.DragArea;
            first = Fill(inputs, y) * Math.Sqrt(reef.Share);
            Fly(first, first, small, held);
            Fly(reef.Until - time, 0, held, held);
            var rest = Fill(inputs, y) * Math.Sqrt(1 - reef.Share);
            Fly(rest, rest, held, inputs.Overshoot * inputs.DragArea);
        }
        else
        {
            first = Fill(inputs, y);
            Fly(first, first, small, inputs.Overshoot * inputs.DragArea);
        }

        var (full, speed, fall, lost) = (time, double.Hypot(y[Along], y[Down]), y[Fall], Lost(inputs, y));
        if (inputs.Overshoot > 1) Fly(first, first, inputs.Overshoot * inputs.DragArea, inputs.DragArea, straight: true);
        return new(inputs, peak, peakTime, first, full, speed, fall, lost);
    }

    // As the flight has it: a canopy let go nearly at rest falls into its filling.
    private static double Fill(OpeningInputs inputs, double[] y) =>
        Inflation.FillTimeOver(inputs.FillConstant * inputs.NominalDiameter, double.Hypot(y[Along], y[Down]), inputs.Gravity);

    private static (double Peak, double Time) Greatest(OpeningEquations equations, Trajectory trajectory, double peak, double peakTime, List<(double Time, double Force)>? looks)
    {
        Span<double> y = stackalloc double[Size];
        for (var i = 0; i < trajectory.Count; i++)
        {
            var step = trajectory.Step(i);

            // The end too: a peak at full inflation lies there.
            for (var look = 0; look <= Looks; look++)
            {
                var time = step.Start + ((step.End - step.Start) * look / Looks);
                step.StateAt(time, y);
                var force = equations.Force(time, y);
                looks?.Add((time, force));
                if (force > peak) (peak, peakTime) = (force, time);
            }
        }

        return (peak, peakTime);
    }

    private static double Lost(OpeningInputs inputs, double[] y)
    {
        if (inputs.AddedMass != 0) return double.NaN;
        var gained = inputs.Mass / 2 * ((y[Along] * y[Along]) + (y[Down] * y[Down]) - (inputs.Speed * inputs.Speed));
        return gained - (y[WeightWork] - y[CanopyWork] - y[BodyWork]);
    }
}
