using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// What the equations of flight ask of a rocket on a day. Implemented by a struct, so that every call is direct.
/// Heights are metres above the foot of the rail.
/// </summary>
internal interface IFlightModel
{
    /// <summary>Reference diameter, m.</summary>
    double Calibre { get; }

    /// <summary>Reference area, m².</summary>
    double Area { get; }

    /// <summary>Impulse of the whole burn as tested, N·s; more than 0 even without a motor.</summary>
    double TotalImpulse { get; }

    /// <summary>The nozzle.</summary>
    NozzleGeometry Nozzle { get; }

    /// <summary>Turning of the Earth in east, north, up, rad/s; zero to leave it out.</summary>
    Vector3<Scalar> EarthRate { get; }

    /// <summary>The share of the whole impulse that an impulse is, N·s; a force gives the rate of that share, 1/s.</summary>
    T ShareOfImpulse<T>(T impulse)
        where T : struct, IReal<T>;

    /// <summary>Thrust as tested, N, at a time after ignition, s.</summary>
    T Thrust<T>(T time)
        where T : struct, IReal<T>;

    /// <summary>Mass and balance when a share of the impulse, 0 to 1, has been delivered.</summary>
    void Mass<T>(in T burned, out FlightMass<T> mass)
        where T : struct, IReal<T>;

    /// <summary>Still air; wind and gusts, m/s east, north, up.</summary>
    void Around<T>(in T height, out FlightAir<T> air, out Vector3<T> wind)
        where T : struct, IReal<T>;

    /// <summary>What a barometric altimeter zeroed on the pad reads, m.</summary>
    double AltimeterHeight(double height);

    /// <summary>Gravity, m/s², downwards.</summary>
    T Gravity<T>(T height)
        where T : struct, IReal<T>;

    /// <summary>Coefficients of the rocket, by sine (0 or more) and cosine of its angle of attack.</summary>
    void Aerodynamics<T>(in T mach, in T sine, in T cosine, in T reynoldsPerMetre, in T thrustOn, out FlightCoefficients<T> coefficients)
        where T : struct, IReal<T>;
}

/// <summary>The nozzle as the equations of motion see it.</summary>
/// <param name="Station">Exit plane, m aft of the nose tip.</param>
/// <param name="OffsetY">Of the thrust line at the exit, m, body axes.</param>
/// <param name="OffsetZ">Of the thrust line at the exit, m, body axes.</param>
/// <param name="TiltY">Slope of the thrust towards y, rad, small.</param>
/// <param name="TiltZ">Slope of the thrust towards z, rad, small.</param>
/// <param name="ExitArea">For the pressure term and the roll part of jet damping, m²; 0 leaves both out.</param>
/// <param name="TestPressure">Ambient pressure of the thrust test, Pa.</param>
internal readonly record struct NozzleGeometry(
    double Station, double OffsetY = 0, double OffsetZ = 0, double TiltY = 0, double TiltZ = 0, double ExitArea = 0, double TestPressure = 101_325);

/// <summary>Mass and balance at a moment of the burn. The slopes are per unit of the share of impulse delivered.</summary>
internal readonly record struct FlightMass<T>(
    T Mass, T Station, T OffsetY, T OffsetZ, Inertia<T> Inertia, T MassSlope, T AxialInertiaSlope, T TransverseInertiaSlope)
    where T : struct, IReal<T>;

/// <summary>Still air at a height: Pa, kg/m³, m/s, Pa·s.</summary>
internal readonly record struct FlightAir<T>(T Pressure, T Density, T SoundSpeed, T Viscosity)
    where T : struct, IReal<T>;

/// <summary>
/// Aerodynamic coefficients. The sums run over the components i with slope C_Nα,i at station X_i: Σ C_Nα,i, Σ C_Nα,i X_i, Σ C_Nα,i X_i².
/// Roll: C_l = RollForcing + RollDamping · p d / 2V.
/// </summary>
internal readonly record struct FlightCoefficients<T>(
    T Axial, T NormalForce, T CentreOfPressure, T Sum0, T Sum1, T Sum2, T RollForcing, T RollDamping)
    where T : struct, IReal<T>;
