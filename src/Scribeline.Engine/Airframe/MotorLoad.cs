using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>A motor in its place, as a mass.</summary>
/// <param name="Name">Designation.</param>
/// <param name="Front">Station of its forward end, m.</param>
/// <param name="Length">m.</param>
/// <param name="Diameter">m.</param>
/// <param name="LoadedMass">kg.</param>
/// <param name="PropellantMass">kg.</param>
/// <param name="GrainFront">Front of the propellant, m aft of the motor's forward end.</param>
/// <param name="GrainLength">m.</param>
/// <param name="GrainDiameter">m.</param>
/// <param name="CoreDiameter">Of the bore of a grain that burns outwards, m; 0 for a grain that thins evenly throughout.</param>
public sealed record MotorLoad(
    string Name, double Front, double Length, double Diameter, double LoadedMass, double PropellantMass,
    double GrainFront, double GrainLength, double GrainDiameter, double CoreDiameter)
{
    /// <summary>Propellant filling the whole case evenly: what may be said when only the outside and the masses are known.</summary>
    public static MotorLoad Even(string name, double front, double length, double diameter, double loadedMass, double propellantMass) =>
        new(name, front, length, diameter, loadedMass, propellantMass, 0, length, diameter, 0);

    /// <summary>kg.</summary>
    public double EmptyMass => LoadedMass - PropellantMass;

    /// <summary>Station of the propellant's middle, m; it stays there through the burn.</summary>
    public double GrainStation => Front + GrainFront + GrainLength / 2;

    /// <summary>Case, nozzle and closures as a uniform cylinder of the motor's outside.</summary>
    public MassProperties Empty => Cylinder(EmptyMass, Front + Length / 2, Diameter / 2, 0, Length);

    /// <summary>Propellant before the burn.</summary>
    public MassProperties Propellant => Cylinder(PropellantMass, GrainStation, GrainDiameter / 2, CoreDiameter / 2, GrainLength);

    /// <summary>Both.</summary>
    public MassProperties Loaded => MassProperties.Sum(Empty, Propellant);

    private static MassProperties Cylinder(double mass, double station, double R, double r, double L)
    {
        double across = mass * (3 * (R * R + r * r) + L * L) / 12;
        return new(mass, station, 0, 0, new(mass * (R * R + r * r) / 2, across, across), Basis.Measured);
    }
}
