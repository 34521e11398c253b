using System.Globalization;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Motors;

/// <summary>What is wrong with a motor as entered, all of it at once.</summary>
public static class MotorProblems
{
    /// <summary>Exhaust velocities between which a solid motor is believed, m/s (82 to 306 s of specific impulse; common practice).</summary>
    public const double LowestExhaustVelocity = 800, HighestExhaustVelocity = 3000;

    /// <summary>The problems of a thrust table; empty when a <see cref="ThrustHistory"/> can be made of it and makes sense.</summary>
    public static ValueList<Problem> In(ValueList<ThrustPoint> points)
    {
        List<Problem> problems = [];
        if (points.Count < 2) return [new("thrust", "A thrust table needs two points or more.")];
        for (var i = 0; i < points.Count; i++)
        {
            var (time, thrust) = points[i];
            if (!double.IsFinite(time) || !double.IsFinite(thrust)) problems.Add(new(Text($"thrust[{i}]"), Text($"Point {i + 1} is not a number.")));
            else if (thrust < 0) problems.Add(new(Text($"thrust[{i}]"), Text($"Thrust cannot be negative: {thrust} N at {time} s.")));
            if (i > 0 && !(time > points[i - 1].Time))
                problems.Add(new(Text($"thrust[{i}]"), Text($"Times must rise: {time} s follows {points[i - 1].Time} s.")));
        }
        if (points[0].Time < 0) problems.Add(new("thrust[0]", Text($"Times begin at 0 or later, not {points[0].Time} s.")));
        if (points[^1].Thrust != 0) problems.Add(new(Text($"thrust[{points.Count - 1}]"), Text($"The table must end at zero thrust, not {points[^1].Thrust} N.")));
        if (points.All(p => p.Thrust == 0)) problems.Add(new("thrust", "The table has no thrust."));
        return problems.ToValueList();
    }

    /// <summary>The problems of a whole motor; empty when it can be flown.</summary>
    public static ValueList<Problem> In(Motor motor)
    {
        List<Problem> problems = [.. In(motor.Curve.Points)];
        void Require(string at, bool holds, FormattableString message)
        {
            if (!holds) problems.Add(new(at, Text(message)));
        }

        Require("diameter", motor.Diameter > 0, $"The diameter must be above 0, not {motor.Diameter} m.");
        Require("length", motor.Length > 0, $"The length must be above 0, not {motor.Length} m.");
        Require("propellant mass", motor.PropellantMass > 0, $"The propellant mass must be above 0, not {motor.PropellantMass} kg.");
        Require(
            "loaded mass",
            motor.LoadedMass > motor.PropellantMass,
            $"The loaded mass {motor.LoadedMass} kg must exceed the propellant mass {motor.PropellantMass} kg.");
        Require("loaded balance", InMotor(motor.LoadedBalance, motor), $"The loaded balance {motor.LoadedBalance} m lies outside the motor.");
        Require("burnt balance", InMotor(motor.BurntBalance, motor), $"The burnt balance {motor.BurntBalance} m lies outside the motor.");
        if (motor.PropellantMass > 0 && motor.LoadedMass > motor.PropellantMass)
        {
            Require(
                "loaded balance",
                InMotor(motor.PropellantBalance, motor),
                $"Loaded and burnt balance put the propellant {motor.PropellantBalance:0.###} m from the forward end, outside the motor.");
            Require(
                "propellant mass",
                motor.ExhaustVelocity is >= LowestExhaustVelocity and <= HighestExhaustVelocity,
                $"Impulse {motor.Curve.TotalImpulse:0.#} N·s from {motor.PropellantMass} kg of propellant asks for {motor.ExhaustVelocity:0} m/s of exhaust; solid motors give {LowestExhaustVelocity:0} to {HighestExhaustVelocity:0} m/s. Check the masses and the table.");
        }
        Require(
            "nozzle exit diameter",
            motor.NozzleExitDiameter is null || (motor.NozzleExitDiameter > 0 && motor.NozzleExitDiameter <= motor.Diameter),
            $"The nozzle exit diameter {motor.NozzleExitDiameter} m does not fit the motor's {motor.Diameter} m.");
        foreach (var delay in motor.Delays) Require("delays", delay >= 0, $"A delay cannot be negative: {delay} s.");
        Require("delays", !motor.Plugged || motor.Delays.Count == 0, $"A plugged motor has no delays.");
        return problems.ToValueList();
    }

    private static bool InMotor(double? balance, Motor motor) => balance is null || (balance >= 0 && balance <= motor.Length);

    private static string Text(FormattableString message) => message.ToString(CultureInfo.InvariantCulture);
}
