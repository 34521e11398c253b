using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>A motor in its place, as a mass.</summary>
/// <param name="Name">Designation.</param>
/// <param name="Front">Station of its forward end, m.</param>
/// <param name="Length">m.</param>
/// <param name="Diameter">m.</param>
/// <param name="LoadedMass">kg.</param>
/// <param name="PropellantMass">kg.</param>
/// <param name="BurntBalance">Balance of the burnt motor, m aft of its forward end.</param>
/// <param name="GrainFront">Front of the propellant, m aft of the motor's forward end.</param>
/// <param name="GrainLength">m.</param>
/// <param name="GrainDiameter">m.</param>
/// <param name="CoreDiameter">Of the bore of a grain that burns outwards, m; 0 for a grain that thins evenly throughout.</param>
/// <param name="Basis">How its masses are known.</param>
public sealed record MotorLoad(
    string Name, double Front, double Length, double Diameter, double LoadedMass, double PropellantMass,
    double BurntBalance, double GrainFront, double GrainLength, double GrainDiameter, double CoreDiameter, Basis Basis)
{
    /// <summary>kg.</summary>
    public double BurntMass => LoadedMass - PropellantMass;

    /// <summary>Station of the propellant's middle, m; it stays there through the burn.</summary>
    public double GrainStation => Front + GrainFront + GrainLength / 2;

    /// <summary>Case, nozzle and closures as a uniform cylinder of the motor's outside.</summary>
    public MassProperties Burnt => Cylinder(BurntMass, Front + BurntBalance, Diameter / 2, 0, Length);

    /// <summary>Propellant before the burn.</summary>
    public MassProperties Propellant => Cylinder(PropellantMass, GrainStation, GrainDiameter / 2, CoreDiameter / 2, GrainLength);

    /// <summary>Both.</summary>
    public MassProperties Loaded => MassProperties.Sum(Burnt, Propellant);

    /// <summary>
    /// A motor of which the outside, the masses and perhaps the balances are known: the propellant is an even cylinder of the motor's diameter,
    /// as long as the case allows about the propellant's balance.
    /// </summary>
    /// <param name="motor">As certified.</param>
    /// <param name="front">Station of its forward end, m.</param>
    public static MotorLoad Of(Motor motor, double front)
    {
        double middle = motor.PropellantBalance, half = Math.Min(middle, motor.Length - middle);
        return new(
            motor.Name, front, motor.Length, motor.Diameter, motor.LoadedMass, motor.PropellantMass,
            motor.Balances.Burnt, middle - half, 2 * half, motor.Diameter, 0, motor.Basis);
    }

    private MassProperties Cylinder(double mass, double station, double R, double r, double L)
    {
        double across = mass * (3 * (R * R + r * r) + L * L) / 12;
        return new(mass, station, 0, 0, new(mass * (R * R + r * r) / 2, across, across), Basis);
    }
}
