using Scribeline.Engine.Numerics;
using static System.Math;

namespace Scribeline.Engine.Separation;

/// <summary>
/// The gas of the bay and the motion of the pieces: uniform gas of air and products, spheres of powder burning from outside, heat to the
/// walls, flow through vents and past the coupler once it is out, pins that let go over a short travel, friction over the engagement.
/// First law of an open system (Bejan, Advanced Engineering Thermodynamics, from memory); nozzle flow after Saint-Venant and Wantzel
/// (Shapiro 1953, from memory).
/// </summary>
internal readonly struct EjectionEquations(EjectionInputs inputs, EjectionPhase phase, bool burning) : IOdeSystem
{
    // Components of the state. Heat, enthalpy that left and the two works are kept so that energy can be balanced.
    public const int Web = 0, BayAir = 1, Products = 2, Temperature = 3, Travel = 4, Speed = 5, Heat = 6, Enthalpy = 7, GasWork = 8, Resisted = 9;
    public const int Count = 10;

    private const double AirCapacity = EjectionInputs.AirGasConstant / (EjectionInputs.AirHeatRatio - 1);

    public int Dimension => Count;

    public EjectionInputs Inputs => inputs;

    public EjectionPhase Phase => phase;

    public bool Burning => burning;

    public double Pressure(ReadOnlySpan<double> y) =>
        ((y[BayAir] * EjectionInputs.AirGasConstant) + (y[Products] * inputs.Powder.GasConstant)) * y[Temperature]
        / (inputs.FreeVolume + (inputs.Area * y[Travel]));

    public double Capacity(ReadOnlySpan<double> y) => (y[BayAir] * AirCapacity) + (y[Products] * inputs.Powder.HeatCapacity);

    /// <summary>Force that parts the joint less what resists, N.</summary>
    public double NetForce(ReadOnlySpan<double> y) => ((Pressure(y) - inputs.AmbientPressure) * inputs.Area) + inputs.OutsideForce - Resistance(y);

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate)
    {
        var powder = inputs.Powder;
        double p = Pressure(y), T = y[Temperature], v = y[Speed], x = y[Travel], mass = y[BayAir] + y[Products], capacity = Capacity(y);
        double gas = ((y[BayAir] * EjectionInputs.AirGasConstant) + (y[Products] * powder.GasConstant)) / mass;

        double regress = burning ? Spread(time) * powder.RateAt(Max(p, inputs.CanPressure)) : 0;
        double burnt = inputs.ChargeMass * 3 * y[Web] * y[Web] / Pow(powder.GrainRadius, 3) * regress;

        double area = inputs.VentArea + (phase == EjectionPhase.Free ? PI * inputs.Bore * Max(0, x - inputs.Stroke) : 0);
        double outward = p > inputs.AmbientPressure
            ? inputs.Discharge * area * p * Flow(inputs.AmbientPressure / p, 1 + (mass * gas / capacity)) / Sqrt(gas * T) : 0;
        double inward = p < inputs.AmbientPressure
            ? inputs.Discharge * area * inputs.AmbientPressure * Flow(p / inputs.AmbientPressure, EjectionInputs.AirHeatRatio)
              / Sqrt(EjectionInputs.AirGasConstant * inputs.AmbientTemperature)
            : 0;
        double heat = inputs.HeatTransfer * (inputs.WallArea + (PI * inputs.Bore * x)) * (T - inputs.AmbientTemperature);
        double inflowEnthalpy = (AirCapacity + EjectionInputs.AirGasConstant) * inputs.AmbientTemperature;
        double work = p * inputs.Area * v;

        rate[Web] = -regress;
        rate[BayAir] = inward - (y[BayAir] / mass * outward);
        rate[Products] = burnt - (y[Products] / mass * outward);
        rate[Temperature] = ((burnt * powder.HeatCapacity * (powder.FlameTemperature - T)) - work - heat - (outward * gas * T)
            + (inward * (inflowEnthalpy - (AirCapacity * T)))) / capacity;
        rate[Travel] = v;
        rate[Speed] = phase == EjectionPhase.Held ? 0 : NetForce(y) / inputs.ReducedMass;
        rate[Heat] = heat;
        rate[Enthalpy] = (outward * ((capacity / mass) + gas) * T) - (inward * inflowEnthalpy);
        rate[GasWork] = work;
        rate[Resisted] = phase == EjectionPhase.Held ? 0 : Resistance(y) * v;
    }

    /// <summary>Friction and what the pins still pull, N.</summary>
    private double Resistance(ReadOnlySpan<double> y) => phase switch
    {
        // A joint that stopped on its way is held by what is left of its pins.
        EjectionPhase.Held => (y[Travel] < inputs.PinTravel ? inputs.PinForce * (1 - (y[Travel] / inputs.PinTravel)) : 0) + inputs.StaticFriction,
        EjectionPhase.Shearing => Min(inputs.SlidingFriction, inputs.StaticFriction) + (inputs.PinForce * (1 - (y[Travel] / inputs.PinTravel))),
        EjectionPhase.Sliding => Min(inputs.SlidingFriction, inputs.StaticFriction),
        _ => 0,
    };

    private double Spread(double time) => inputs.FlameSpread > 0 ? Min(1, time / inputs.FlameSpread) : 1;

    /// <summary>Ψ of the nozzle flow, choked below the critical ratio.</summary>
    private static double Flow(double ratio, double gamma)
    {
        var critical = Pow(2 / (gamma + 1), gamma / (gamma - 1));
        return ratio <= critical
            ? Sqrt(gamma) * Pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)))
            : Sqrt(2 * gamma / (gamma - 1) * Max(0, Pow(ratio, 2 / gamma) - Pow(ratio, (gamma + 1) / gamma)));
    }
}

/// <summary>What a joint is doing.</summary>
internal enum EjectionPhase
{
    /// <summary>Pins and friction hold.</summary>
    Held,

    /// <summary>The pins are being cut.</summary>
    Shearing,

    /// <summary>The coupler slides out.</summary>
    Sliding,

    /// <summary>It is out of the tube.</summary>
    Free,
}
