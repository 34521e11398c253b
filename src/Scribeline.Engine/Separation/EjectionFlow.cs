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
        var y = new double[Count];
        y[Web] = inputs.Powder.GrainRadius;
        y[BayAir] = inputs.AirMass;
        y[Temperature] = inputs.AmbientTemperature;
        return Run(inputs, tolerance, beyond, y, EjectionPhase.Held, 0, Longest);
    }

    /// <summary>Another charge into what the first left.</summary>
    public static Ejection Next(Ejection before, double gap, double mass, double grainRadius, double tolerance)
    {
        var inputs = before.Inputs;
        var y = before.StateAt(gap);
        var phase = gap >= before.End && !before.Parted ? EjectionPhase.Held : PhaseAt(before, gap, y);

        // A joint that stayed shut cools and leaks until then, and may yet go where powder was left to burn.
        if (phase == EjectionPhase.Held && gap > before.End)
        {
            y[Speed] = 0;
            var cooling = Run(inputs, tolerance, false, y, phase, before.End, gap);
            y = cooling.StateAt(gap);
            phase = cooling.ReleaseTime is null ? phase : PhaseAt(cooling, gap, y);
        }

        // Out of the tube the volume no longer counts: the mouth stands as wide open as it may.
        if (phase == EjectionPhase.Free) y[Travel] = Math.Min(y[Travel], inputs.Stroke + inputs.Bore);
        var left = inputs.ChargeMass * Math.Pow(Math.Max(y[Web], 0) / inputs.Powder.GrainRadius, 3);
        if (left < 1e-3 * inputs.ChargeMass) left = 0;
        y[Web] = grainRadius;
        y[Heat] = y[Enthalpy] = y[GasWork] = y[Resisted] = 0;
        return Run(inputs with { ChargeMass = mass + left, Powder = inputs.Powder with { GrainRadius = grainRadius } }, tolerance, false, y, phase, 0, Longest);
    }

    private static EjectionPhase PhaseAt(Ejection ejection, double time, double[] y) =>
        ejection.ReleaseTime is not { } released || time < released || (y[Speed] <= 0 && !ejection.Parted) ? EjectionPhase.Held
        : ejection.PartingTime is { } parted && time >= parted ? EjectionPhase.Free
        : y[Travel] < ejection.Inputs.PinTravel ? EjectionPhase.Shearing
        : EjectionPhase.Sliding;

    private static Ejection Run(EjectionInputs inputs, double tolerance, bool beyond, double[] from, EjectionPhase phase, double time, double end)
    {
        double[] y = [.. from];
        var webLeft = inputs.Powder.GrainRadius * Math.Cbrt(Math.Max(0, 1 - inputs.BurntShare));
        var integrator = new OdeIntegrator<Tsitouras54>(Count, Control(tolerance));
        var trajectory = new Trajectory(Count);
        double? released = phase == EjectionPhase.Held ? null : time, burntOut = null, parted = phase == EjectionPhase.Free ? time : null;
        bool burning = inputs.ChargeMass > 0 && y[Web] > webLeft, stopped = false;
        var last = end;
        ulong just = 0;
        double[] stops = [inputs.FlameSpread];
        if (phase == EjectionPhase.Held && !double.IsPositiveInfinity(inputs.PinForce) && new EjectionEquations(inputs, phase, burning).NetForce(y) >= 0)
            (phase, released) = (Next(phase, inputs, y), time);
        if (phase == EjectionPhase.Free) end = Math.Min(end, time + Afterwards);

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
                    if (phase == EjectionPhase.Held && last == Longest) end = time + Afterwards;
                    break;
                case EjectionEvents.NextPhase:
                    if (phase == EjectionPhase.Held) (released, end) = (time, last);
                    phase = Next(phase, inputs, y);
                    if (phase == EjectionPhase.Free) (parted, end, stopped) = (time, time + Afterwards, !beyond && new EjectionEvents(equations, webLeft, beyond).Unevenness(y) <= 0);
                    break;
                default:
                    stopped = true;
                    break;
            }
        }

        // Barely out and sucked back by the thin gas behind it: it did not come apart.
        if (phase == EjectionPhase.Free && y[Speed] <= 0) parted = null;
        return new(inputs, trajectory, from, [.. y]) { ReleaseTime = released, BurnoutTime = burntOut, PartingTime = parted };
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

    // A joint that stopped with its pins cut slides on from there.
    private static EjectionPhase Next(EjectionPhase phase, EjectionInputs inputs, double[] y) => phase switch
    {
        EjectionPhase.Held when y[Travel] < Math.Min(inputs.PinTravel, inputs.Stroke) => EjectionPhase.Shearing,
        EjectionPhase.Held => EjectionPhase.Sliding,
        EjectionPhase.Shearing when inputs.PinTravel < inputs.Stroke => EjectionPhase.Sliding,
        _ => EjectionPhase.Free,
    };
}
