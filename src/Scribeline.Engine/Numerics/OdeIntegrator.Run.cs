using System.Runtime.InteropServices;

namespace Scribeline.Engine.Numerics;

public sealed partial class OdeIntegrator<TPair>
{
    /// <summary>
    /// The width of the first step, from the sizes of the first two derivatives: Hairer, Norsett and Wanner I, section
    /// II.4, "Starting Step Size".
    /// </summary>
    private double FirstStep<TSystem>(ref ScalarEquations<TSystem> equations, ref Run run, double length, ReadOnlySpan<double> state)
        where TSystem : IOdeSystem
    {
        var most = Math.Min(length, control.MaxStep);
        var rate = stages.AsSpan(0, n);
        double sizeOfState = 0, sizeOfRate = 0, sizeOfChange = 0;
        for (var i = 0; i < n; i++)
        {
            var scale = Scale(i, state);
            sizeOfState += state[i] / scale * (state[i] / scale);
            sizeOfRate += rate[i] / scale * (rate[i] / scale);
        }

        var trial = sizeOfRate <= 1e-10 || sizeOfState <= 1e-10 ? 1e-6 : 0.01 * Math.Sqrt(sizeOfState / sizeOfRate);
        trial = Math.Min(trial, most) * run.Direction;
        for (var i = 0; i < n; i++) next[i] = state[i] + trial * rate[i];
        var rateThere = stages.AsSpan(n, n);
        equations.System.Derivative(run.Time + trial, next, rateThere);
        run.Evaluations++;
        for (var i = 0; i < n; i++)
        {
            var change = (rateThere[i] - rate[i]) / Scale(i, state);
            sizeOfChange += change * change;
        }

        var size = Math.Max(Math.Sqrt(sizeOfChange) / Math.Abs(trial), Math.Sqrt(sizeOfRate));
        var width = size <= 1e-15 ? Math.Max(1e-6, 1e-3 * Math.Abs(trial)) : Math.Pow(0.01 / size, 1.0 / TPair.Order);
        width = Math.Min(width, Math.Min(100 * Math.Abs(trial), most));
        return run.Direction * (double.IsFinite(width) ? width : Math.Abs(trial));
    }

    private double Scale(int index, ReadOnlySpan<double> state) =>
        Math.Max(absolute[index] + control.RelativeTolerance * Math.Abs(state[index]), 1e-300);

    /// <summary>What changes during a run.</summary>
    private struct Run
    {
        public double Time;
        public double Step;
        public int Direction;
        public StepSizeController Controller;
        public int Accepted;
        public int Rejected;
        public int Evaluations;
        public int Event;
        public ulong Events;

        public Run() => Event = -1;

        public readonly IntegrationEnd End(IntegrationOutcome outcome) => new(outcome, Time, Event, Events, Accepted, Rejected, Evaluations);
    }

    /// <summary>A system over doubles as one over scalars.</summary>
    private struct ScalarEquations<TSystem>(TSystem system) : IOdeSystem<Scalar>
        where TSystem : IOdeSystem
    {
        public TSystem System = system;

        public readonly int Dimension => System.Dimension;

        public void Derivative(Scalar time, ReadOnlySpan<Scalar> state, Span<Scalar> rate) =>
            System.Derivative(time, MemoryMarshal.Cast<Scalar, double>(state), MemoryMarshal.Cast<Scalar, double>(rate));
    }
}
