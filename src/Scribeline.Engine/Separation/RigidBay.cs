namespace Scribeline.Engine.Separation;

/// <summary>
/// Closed forms of an ejection whose powder burns at once and loses nothing: the bay rigid until burnt, then an isentropic, frictionless
/// stroke. Checks for the integrated ejection and a bound on its pressure.
/// </summary>
/// <param name="inputs">As for the integrated ejection; pins, friction, heat and vents are left out.</param>
public readonly struct RigidBay(EjectionInputs inputs)
{
    private double Gas => (inputs.AirMass * EjectionInputs.AirGasConstant) + (inputs.ChargeMass * inputs.Powder.GasConstant);

    private double AirCapacity => inputs.AirMass * EjectionInputs.AirGasConstant / (EjectionInputs.AirHeatRatio - 1);

    private double Capacity => AirCapacity + (inputs.ChargeMass * inputs.Powder.HeatCapacity);

    /// <summary>After mixing, K.</summary>
    public double Temperature =>
        ((AirCapacity * inputs.AmbientTemperature) + (inputs.ChargeMass * inputs.Powder.HeatCapacity * inputs.Powder.FlameTemperature)) / Capacity;

    /// <summary>After mixing, absolute, Pa.</summary>
    public double Pressure => Gas * Temperature / inputs.FreeVolume;

    /// <summary>Pa.</summary>
    public double GaugePressure => Pressure - inputs.AmbientPressure;

    /// <summary>γ of the mixture.</summary>
    public double HeatRatio => 1 + (Gas / Capacity);

    /// <summary>Absolute, at the end of the stroke, Pa.</summary>
    public double PressureAtEnd => Pressure * Math.Pow(Expansion, HeatRatio);

    /// <summary>Work of the stroke less that against the outside air, J.</summary>
    public double NetWork =>
        (Pressure * inputs.FreeVolume / (HeatRatio - 1) * (1 - Math.Pow(Expansion, HeatRatio - 1)))
        - (inputs.AmbientPressure * inputs.Area * inputs.Stroke);

    /// <summary>Of the pieces from one another at the end of the stroke, m/s.</summary>
    public double Speed => Math.Sqrt(2 * NetWork / inputs.ReducedMass);

    /// <summary>The same if the customary pressure stayed constant, m/s.</summary>
    public double SpeedAtConstantPressure => Math.Sqrt(
        2 * StaticCharge.GaugePressure(inputs.ChargeMass, inputs.FreeVolume) * inputs.Area * inputs.Stroke / inputs.ReducedMass);

    /// <summary>Time in which the gas would cool to 1/e of its excess, s.</summary>
    public double CoolingTime => Capacity / (inputs.HeatTransfer * inputs.WallArea);

    private double Expansion => inputs.FreeVolume / (inputs.FreeVolume + (inputs.Area * inputs.Stroke));
}
