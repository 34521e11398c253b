namespace Scribeline.Engine.Separation;

/// <summary>A charge in a bay, the joint it must open and the two pieces it drives apart. SI; compared by value.</summary>
public sealed record EjectionInputs
{
    /// <summary>Of air, J/(kg K).</summary>
    public const double AirGasConstant = 287.053;

    /// <summary>γ of air.</summary>
    public const double AirHeatRatio = 1.4;

    /// <summary>What burns.</summary>
    public Powder Powder { get; init; } = Powder.Customary;

    /// <summary>kg, 0 or more.</summary>
    public required double ChargeMass { get; init; }

    /// <summary>Left for the gas, m³, more than 0.</summary>
    public required double FreeVolume { get; init; }

    /// <summary>Inside of the outer tube, m.</summary>
    public required double Bore { get; init; }

    /// <summary>Travel until the coupler leaves the tube, m, more than 0.</summary>
    public required double Stroke { get; init; }

    /// <summary>Of the piece ahead, kg; infinite if clamped.</summary>
    public required double ForwardMass { get; init; }

    /// <summary>Of the piece behind, kg; infinite if clamped (one of the two at most).</summary>
    public required double AftMass { get; init; }

    /// <summary>That cuts all pins, N; infinite to hold the joint whatever the pressure.</summary>
    public required double PinForce { get; init; }

    /// <summary>Friction that starts the joint, N.</summary>
    public required double StaticFriction { get; init; }

    /// <summary>Friction along the stroke, N; not more than <see cref="StaticFriction"/> is taken.</summary>
    public required double SlidingFriction { get; init; }

    /// <summary>δ_s: travel over which cut pins stop pulling, m, more than 0; an assumption.</summary>
    public double PinTravel { get; init; } = 1e-3;

    /// <summary>Force from outside that parts the joint (+), N.</summary>
    public double OutsideForce { get; init; }

    /// <summary>Outside, and in the bay before the charge, Pa.</summary>
    public required double AmbientPressure { get; init; }

    /// <summary>Of outside air, bay air and walls, K.</summary>
    public required double AmbientTemperature { get; init; }

    /// <summary>Wall and cloth that take heat, m².</summary>
    public required double WallArea { get; init; }

    /// <summary>Vents and leaks, m².</summary>
    public required double VentArea { get; init; }

    /// <summary>C_d of vents and of the opening joint.</summary>
    public double Discharge { get; init; } = 0.6;

    /// <summary>h to the walls, W/(m² K): an assumption.</summary>
    public double HeatTransfer { get; init; } = 150;

    /// <summary>τ: time over which the flame takes hold of the charge, s, 0 or more; an assumption.</summary>
    public double FlameSpread { get; init; } = 3e-3;

    /// <summary>Pressure in the charge's own container while it burns, Pa, at least; 0 for a loose charge.</summary>
    public double CanPressure { get; init; }

    /// <summary>Share of the charge that burns at most: less than 1 for a loose charge in thin air.</summary>
    public double BurntShare { get; init; } = 1;

    /// <summary>Bore area, m².</summary>
    public double Area => Math.PI / 4 * Bore * Bore;

    /// <summary>Mass that counts in the motion of the pieces from one another, kg: m1 m2/(m1 + m2).</summary>
    public double ReducedMass => double.IsPositiveInfinity(ForwardMass) ? AftMass
        : double.IsPositiveInfinity(AftMass) ? ForwardMass
        : ForwardMass * AftMass / (ForwardMass + AftMass);

    /// <summary>Share of the relative speed that the piece ahead takes; momentum is kept.</summary>
    public double ForwardShare => double.IsPositiveInfinity(AftMass) ? 1
        : double.IsPositiveInfinity(ForwardMass) ? 0
        : AftMass / (ForwardMass + AftMass);

    /// <summary>Air in the bay before the charge, kg.</summary>
    public double AirMass => AmbientPressure * FreeVolume / (AirGasConstant * AmbientTemperature);

    /// <summary>Solves the ejection.</summary>
    /// <param name="tolerance">Relative error allowed in a step; 1e-7 serves where many are fired, and a coarser one is no quicker.</param>
    /// <param name="beyond">
    /// Whether to follow the gas for 20 ms after the joint is open, past the moment when its pressure is that outside. It takes twenty times
    /// as long; the suction of the opening bay takes some ten-thousandths of the speed meanwhile.
    /// </param>
    public Ejection Fire(double tolerance = 1e-8, bool beyond = false) => EjectionFlow.Fire(this, tolerance, beyond);
}
