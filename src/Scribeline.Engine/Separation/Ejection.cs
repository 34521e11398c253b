using Scribeline.Engine.Numerics;
using static Scribeline.Engine.Separation.EjectionEquations;

namespace Scribeline.Engine.Separation;

/// <summary>One firing from ignition until the gas is out, or until the joint has stayed shut.</summary>
public sealed class Ejection
{
    // Looks per step of the solution: the peak between two looks is then under a hundred-thousandth higher.
    private const int Looks = 8;

    private readonly Trajectory trajectory;
    private readonly EjectionEquations gas;
    private readonly double[] first;
    private readonly double[] last;

    internal Ejection(EjectionInputs inputs, Trajectory trajectory, double[] first, double[] last)
    {
        (Inputs, this.trajectory, this.first, this.last) = (inputs, trajectory, first, last);
        gas = new(inputs, EjectionPhase.Free, false);
        End = trajectory.End;
        Final = Of(End, last);
        var peak = Final;
        double hottest = 0;
        Span<double> y = stackalloc double[Count];
        for (var i = 0; i < trajectory.Count; i++)
        {
            var step = trajectory.Step(i);
            for (var look = 0; look < Looks; look++)
            {
                var time = step.Start + ((step.End - step.Start) * look / Looks);
                step.StateAt(time, y);
                hottest = Math.Max(hottest, y[Temperature]);
                if (gas.Pressure(y) > peak.Pressure) peak = Of(time, y);
            }
        }

        (Peak, PeakTemperature) = (peak, hottest);
        EnergyLost = Residual();
    }

    /// <summary>What was fired.</summary>
    public EjectionInputs Inputs { get; }

    /// <summary>When the pins let go, s after ignition; null where they hold.</summary>
    public double? ReleaseTime { get; internal init; }

    /// <summary>When the powder is burnt, s; null where it is not within the run.</summary>
    public double? BurnoutTime { get; internal init; }

    /// <summary>When the coupler leaves the tube, s; null where it never does or is sucked back: did not part.</summary>
    public double? PartingTime { get; internal init; }

    /// <summary>Whether the joint comes apart.</summary>
    public bool Parted => PartingTime is not null;

    /// <summary>At the highest pressure.</summary>
    public EjectionState Peak { get; }

    /// <summary>Highest pressure over that outside, Pa.</summary>
    public double PeakGauge => Peak.Pressure - Inputs.AmbientPressure;

    /// <summary>K.</summary>
    public double PeakTemperature { get; }

    /// <summary>Last state computed: when the gas is out, 20 ms after parting at the latest.</summary>
    public EjectionState Final { get; }

    /// <summary>Where the run ends, s.</summary>
    public double End { get; }

    /// <summary>Speed of the pieces from one another as the coupler leaves the tube, m/s; 0 where it never does.</summary>
    public double PartingSpeed => PartingTime is { } time ? At(time).Speed : 0;

    /// <summary>The same once the gas is out, m/s; 0 where they never part.</summary>
    public double SeparationSpeed => Parted ? Final.Speed : 0;

    /// <summary>Of the piece ahead, once the gas is out, m/s forward.</summary>
    public double ForwardSpeed => SeparationSpeed * Inputs.ForwardShare;

    /// <summary>Of the piece behind, once the gas is out, m/s aft.</summary>
    public double AftSpeed => SeparationSpeed - ForwardSpeed;

    /// <summary>Energy of the pieces' motion from one another, J.</summary>
    public double KineticEnergy => Inputs.ReducedMass * SeparationSpeed * SeparationSpeed / 2;

    /// <summary>Energy that the computation lost or made, as a share of what the gas held at most: a measure of its accuracy.</summary>
    public double EnergyLost { get; }

    /// <summary>The state at a time, held to the run.</summary>
    /// <param name="time">s after ignition.</param>
    public EjectionState At(double time)
    {
        Span<double> y = stackalloc double[Count];
        trajectory.StateAt(time, y);
        return Of(Math.Clamp(time, 0, End), y);
    }

    /// <summary>
    /// Fires another charge of the same bay while this one's gas is still there, or once the joint moves or stands open: into the volume that is
    /// left, against what is left of the pins. What of this charge has not burnt by then burns with it.
    /// </summary>
    /// <param name="gap">s from this ignition to the next, 0 or more; the next ejection counts its time from its own ignition.</param>
    /// <param name="mass">Of the next charge, kg, 0 or more.</param>
    /// <param name="grainRadius">Of its grains, m.</param>
    /// <param name="tolerance">Relative error allowed in a step.</param>
    public Ejection Next(double gap, double mass, double grainRadius, double tolerance = 1e-8) => EjectionFlow.Next(this, gap, mass, grainRadius, tolerance);

    /// <summary>All components at a time within the run.</summary>
    internal double[] StateAt(double time)
    {
        if (time >= End) return [.. last];
        var y = new double[Count];
        trajectory.StateAt(time, y);
        return y;
    }

    /// <summary>States at equal steps, the end included.</summary>
    /// <param name="step">s, more than 0.</param>
    public IEnumerable<EjectionState> Series(double step)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step);
        var count = (int)Math.Ceiling(End / step);
        return Enumerable.Range(0, count + 1).Select(i => At(Math.Min(i * step, End)));
    }

    private EjectionState Of(double time, ReadOnlySpan<double> y) => new(
        time, y[Travel], y[Speed], gas.Pressure(y), y[Temperature], 1 - Math.Pow(Math.Max(y[Web], 0) / Inputs.Powder.GrainRadius, 3));

    // The worse of two balances: of the gas, and of the pieces.
    private double Residual()
    {
        var powder = Inputs.Powder;
        var (x, v, before) = (last[Travel] - first[Travel], last[Speed], first[Speed]);
        var air = gas.Capacity(first) * first[Temperature];
        var burnt = Inputs.ChargeMass * Final.Burnt * powder.HeatCapacity * powder.FlameTemperature;
        var ofGas = air + burnt - (gas.Capacity(last) * last[Temperature]) - last[Heat] - last[Enthalpy] - last[GasWork];
        var moving = Inputs.ReducedMass * ((v * v) - (before * before)) / 2;
        var ofPieces = last[GasWork] + (Inputs.OutsideForce * x) - (Inputs.AmbientPressure * Inputs.Area * x) - moving - last[Resisted];
        return Math.Max(Math.Abs(ofGas), Math.Abs(ofPieces)) / (air + burnt);
    }
}

/// <summary>One moment of an ejection.</summary>
/// <param name="Time">s after ignition.</param>
/// <param name="Travel">Of the pieces from one another, m.</param>
/// <param name="Speed">Of the pieces from one another, m/s.</param>
/// <param name="Pressure">In the bay, absolute, Pa.</param>
/// <param name="Temperature">Of the gas, K.</param>
/// <param name="Burnt">Share of the charge, 0 to 1.</param>
public readonly record struct EjectionState(double Time, double Travel, double Speed, double Pressure, double Temperature, double Burnt);
