using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Motors;

/// <summary>The same motor from another lot or at another temperature. Masses stay; the exhaust velocity takes up a change of impulse.</summary>
public static class MotorVariant
{
    /// <summary>The curve with its times multiplied by one factor and its area by another.</summary>
    /// <param name="motor">The motor as certified.</param>
    /// <param name="impulseFactor">Above 0; 1.067 is one standard deviation allowed by NFPA 1125 (from memory).</param>
    /// <param name="burnTimeFactor">Above 0.</param>
    public static Motor Scaled(this Motor motor, double impulseFactor, double burnTimeFactor)
    {
        var thrustFactor = impulseFactor / burnTimeFactor;
        var points = motor.Curve.Points.Select(p => new ThrustPoint(p.Time * burnTimeFactor, p.Thrust * thrustFactor));
        return motor with { Curve = new ThrustHistory(points.ToValueList()) };
    }

    /// <summary>
    /// The motor with its propellant at another temperature: pressure, and with it thrust, by exp(π_K ΔT), burn time by the inverse,
    /// impulse unchanged (G. P. Sutton and O. Biblarz, <i>Rocket Propulsion Elements</i>, temperature sensitivity of pressure at
    /// constant K; from memory).
    /// </summary>
    /// <param name="motor">The motor as certified.</param>
    /// <param name="propellantTemperature">K.</param>
    /// <param name="certifiedTemperature">K at which the curve was measured.</param>
    /// <param name="sensitivity">π_K, 1/K. A property of the propellant: it has no default.</param>
    public static Motor AtTemperature(
        this Motor motor, double propellantTemperature, double certifiedTemperature, double sensitivity) =>
        motor.Scaled(1, Math.Exp(-sensitivity * (propellantTemperature - certifiedTemperature)));
}
