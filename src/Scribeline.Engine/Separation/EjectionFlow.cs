using Scribeline.Engine.Numerics;
using static Scribeline.Engine.Separation.EjectionEquations;

namespace Scribeline.Engine.Separation;

/// <summary>Runs an ejection from ignition, phase by phase, until the gas is out or the joint has stayed shut.</summary>
internal static class EjectionFlow
{
    /// <summary>Longest after the coupler is out, and after burnout where it never is, s.</summary>
    private const double Afterwards = 0.02;

    /// <summary>Longest run, s; by then a bay has cooled many times over.</summary>
    private const double Longest = 2;

    public static Ejection Fire(EjectionInputs inputs, double tolerance, bool beyond)
    {
        double[] y = new double[Count];
        y[Web] = inputs.Powder.GrainRadius;
        y[BayAir] = inputs.AirMass;
        y[Temperature] = inputs.AmbientTemperature;
        var webLeft = inputs.Powder.GrainRadius * Math.Cbrt(Math.Max(0, 1 - inputs.BurntShare));
        var integrator = new OdeIntegrator<Tsitouras54>(Count, Control(tolerance));
        var trajectory = new Trajectory(Count);
        var phase = EjectionPhase.Held;
        double? released = null, burntOut = null, parted = null;
        bool burning = inputs.ChargeMass > 0, stopped = false;
        double time = 0, end = Longest;
        ulong just = 0;
        double[] stops = [inputs.FlameSpread];
        if (!double.IsPositiveInfinity(inputs.PinForce) && new EjectionEquations(inputs, phase, burning).NetForce(y) >= 0)
            (phase, released) = (EjectionPhase.Shearing, 0);

        while (time < end && !stopped)
        {
            var equations = new EjectionEquations(inputs, phase, burning);
            var run = integrator.Integrate(equations, time, end, y, stops, new EjectionEvents(equations, webLeft, beyond), trajectory, just);
            time = run.Time;
            if (run.Outcome != IntegrationOutcome.Event) break;
            just = run.Event == EjectionEvents.BurntOut ? run.Events : 0;
            switch (run.Event)
            {
                case EjectionEvents.BurntOut:
                    (burning, burntOut) = (false, time);
                    if (phase == EjectionPhase.Held) end = time + Afterwards;
                    break;
                case EjectionEvents.NextPhase:
                    phase = Next(phase, inputs);
                    if (phase == EjectionPhase.Shearing) (released, end) = (time, Longest);
                    if (phase == EjectionPhase.Free) (parted, end, stopped) = (time, time + Afterwards, !beyond && new EjectionEvents(equations, webLeft, beyond).Unevenness(y) <= 0);
                    break;
                default:
                    stopped = true;
                    break;
            }
        }

        return new(inputs, trajectory, [.. y]) { ReleaseTime = released, BurnoutTime = burntOut, PartingTime = parted };
    }

    // Absolute tolerances belong to the sizes at hand: webs of 0.1 mm, grams, kelvins, centimetres, joules.
    private static StepControl Control(double tolerance)
    {
        var scale = tolerance / 1e-8;
        return new()
        {
            RelativeTolerance = tolerance,
            AbsoluteTolerance =
            [
                1e-13 * scale, 1e-13 * scale, 1e-13 * scale, 1e-6 * scale, 1e-11 * scale, 1e-9 * scale, 1e-7 * scale, 1e-7 * scale, 1e-7 * scale,
                1e-7 * scale,
            ],
            FirstStep = 1e-6,
            MaxStep = 1e-3,
        };
    }

    private static EjectionPhase Next(EjectionPhase phase, EjectionInputs inputs) => phase switch
    {
        EjectionPhase.Held => EjectionPhase.Shearing,
        EjectionPhase.Shearing when inputs.PinTravel < inputs.Stroke => EjectionPhase.Sliding,
        _ => EjectionPhase.Free,
    };
}
