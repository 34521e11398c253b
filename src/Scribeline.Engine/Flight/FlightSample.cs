using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>
/// Everything about one moment of a flight. Frame: east, north, up from the foot of the rail; body axes as in
/// <see cref="Airframe.MassProperties"/>. Values that have no meaning in the phase are NaN (margin under a canopy, for example).
/// </summary>
public sealed record FlightSample
{
    /// <summary>s after ignition.</summary>
    public required double Time { get; init; }

    public required FlightPhase Phase { get; init; }

    /// <summary>Centre of mass, m east, north, up.</summary>
    public required Vector3<Scalar> Position { get; init; }

    /// <summary>Over the ground, m/s.</summary>
    public required Vector3<Scalar> Velocity { get; init; }

    /// <summary>Body axes to east, north, up. After a separation: as it was then.</summary>
    public required Quaternion<Scalar> Attitude { get; init; }

    /// <summary>Angular rate in body axes, rad/s.</summary>
    public required Vector3<Scalar> Rate { get; init; }

    /// <summary>Wind at this height, gusts included, m/s.</summary>
    public required Vector3<Scalar> Wind { get; init; }

    /// <summary>Acceleration that an accelerometer on board feels, m/s²: body axes, after a separation east, north, up.</summary>
    public required Vector3<Scalar> ProperAcceleration { get; init; }

    /// <summary>Of the centre of mass above the ground at the pad, m.</summary>
    public double Height => Position.Z;

    /// <summary>What a barometric altimeter zeroed on the pad reads, m.</summary>
    public required double AltimeterHeight { get; init; }

    /// <summary>Over the ground, m/s.</summary>
    public double Speed => Velocity.Length;

    /// <summary>Upwards, m/s.</summary>
    public double VerticalSpeed => Velocity.Z;

    /// <summary>Through the air, m/s.</summary>
    public required double Airspeed { get; init; }

    public required double Mach { get; init; }

    /// <summary>½ρV², Pa.</summary>
    public required double DynamicPressure { get; init; }

    /// <summary>Between the long axis and the oncoming air, rad.</summary>
    public required double AngleOfAttack { get; init; }

    /// <summary>Between the long axis and the vertical, rad.</summary>
    public required double Tilt { get; init; }

    /// <summary>kg.</summary>
    public required double Mass { get; init; }

    /// <summary>Station, m.</summary>
    public required double CentreOfMass { get; init; }

    /// <summary>Station at this Mach number and angle of attack, m.</summary>
    public required double CentreOfPressure { get; init; }

    /// <summary>Centre of pressure behind centre of mass, calibres.</summary>
    public required double StaticMargin { get; init; }

    /// <summary>N.</summary>
    public required double Thrust { get; init; }

    /// <summary>Force against the motion through the air, N, at least 0.</summary>
    public required double Drag { get; init; }

    /// <summary>Across the body, N.</summary>
    public required double NormalForce { get; init; }

    /// <summary>About the long axis, rad/s.</summary>
    public double RollRate => Rate.X;

    /// <summary>Natural (undamped) frequency of the pitch oscillation, rad/s; NaN where unstable.</summary>
    public required double PitchFrequency { get; init; }

    /// <summary>Damping ratio of the pitch oscillation, jet damping included; NaN where unstable.</summary>
    public required double PitchDamping { get; init; }
}
