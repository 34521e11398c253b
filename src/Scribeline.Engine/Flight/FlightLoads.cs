using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>Everything that acts on the whole rocket at a moment. Body axes unless said otherwise.</summary>
/// <param name="Force">Aerodynamic force and thrust, N.</param>
/// <param name="Moment">About the centre of mass, jet damping included, N·m.</param>
/// <param name="Gravity">m/s², downwards.</param>
/// <param name="Thrust">Ambient pressure considered, N.</param>
/// <param name="TestThrust">As tested, N: the rate of the delivered impulse.</param>
/// <param name="Outflow">Mass leaving, kg/s.</param>
/// <param name="TransverseInertiaRate">kg·m²/s.</param>
/// <param name="Mass">Mass and balance.</param>
/// <param name="Air">Still air.</param>
/// <param name="Wind">East, north, up, m/s.</param>
/// <param name="Flow">Velocity through the air, m/s.</param>
/// <param name="Airspeed">m/s.</param>
/// <param name="Coefficients">At this flow.</param>
/// <typeparam name="T">The number type.</typeparam>
internal readonly record struct FlightLoads<T>(
    Vector3<T> Force,
    Vector3<T> Moment,
    T Gravity,
    T Thrust,
    T TestThrust,
    T Outflow,
    T TransverseInertiaRate,
    FlightMass<T> Mass,
    FlightAir<T> Air,
    Vector3<T> Wind,
    Vector3<T> Flow,
    T Airspeed,
    FlightCoefficients<T> Coefficients)
    where T : struct, IReal<T>
{
    /// <summary>rad, 0 to π.</summary>
    public T AngleOfAttack => T.Atan2(T.Sqrt(Flow.Y * Flow.Y + Flow.Z * Flow.Z), Flow.X);
}
