using System.Globalization;

namespace Scribeline.Engine.Motors;

/// <summary>
/// The designation by class, average thrust and delay: K600-12 is class K, 600 N on average, 12 s from burnout to ejection;
/// delay 0 is a booster without delay, P a plugged motor (NFPA 1125, from memory).
/// </summary>
public static class MotorDesignation
{
    /// <summary>Letter and average thrust in whole N, such as K600; null beyond the class table.</summary>
    public static string? Of(Motor motor) =>
        motor.Class is { } c ? string.Create(CultureInfo.InvariantCulture, $"{c.Letter}{motor.Curve.AverageThrust:0}") : null;

    /// <summary>With the delay in s, or P when plugged.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="delay">Delay as drilled or chosen, s; not used for a plugged motor.</param>
    public static string? Of(Motor motor, double delay) => Of(motor) is not { } letterAndThrust
        ? null
        : string.Create(CultureInfo.InvariantCulture, $"{letterAndThrust}-{(motor.Plugged ? "P" : delay.ToString("0.#", CultureInfo.InvariantCulture))}");

    /// <summary>Nominal burn time, s, from certified impulse and average thrust: I/F.</summary>
    public static double NominalBurnTime(double totalImpulse, double averageThrust) => totalImpulse / averageThrust;
}
