using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>How the rocket left the rail.</summary>
/// <param name="Forward">When the forward guide left: nothing holds its heading from here.</param>
/// <param name="Aft">When the aft guide left: free flight, with the tip-off rate in <see cref="FlightSample.Rate"/>.</param>
/// <param name="ThrustToWeight">Thrust at the forward guide's exit over weight there.</param>
public sealed record RailExit(FlightSample Forward, FlightSample Aft, double ThrustToWeight);

/// <summary>A greatest value and where it occurred.</summary>
/// <param name="Value">SI.</param>
/// <param name="Time">s after ignition.</param>
/// <param name="Height">m above the pad.</param>
public readonly record struct FlightMaximum(double Value, double Time, double Height);

/// <summary>Greatest values of the ascent and fall of the whole rocket.</summary>
/// <param name="Speed">Over the ground, m/s.</param>
/// <param name="Mach">Mach number.</param>
/// <param name="DynamicPressure">Pa.</param>
/// <param name="Acceleration">Proper acceleration, m/s².</param>
/// <param name="AngleOfAttack">rad, between rail exit and the time the airspeed first falls below 30 m/s.</param>
/// <param name="Thrust">N.</param>
/// <param name="RollRate">Magnitude, rad/s.</param>
public sealed record FlightMaxima(
    FlightMaximum Speed,
    FlightMaximum Mach,
    FlightMaximum DynamicPressure,
    FlightMaximum Acceleration,
    FlightMaximum AngleOfAttack,
    FlightMaximum Thrust,
    FlightMaximum RollRate);

/// <summary>Where and how a body came to the ground.</summary>
/// <param name="Body">Index of the body.</param>
/// <param name="Pieces">Names of its pieces, nose to tail.</param>
/// <param name="At">The state at touch-down.</param>
/// <param name="Mass">Of the whole body, kg.</param>
public sealed record Landing(int Body, ValueList<string> Pieces, FlightSample At, double Mass)
{
    /// <summary>m east of the foot of the rail.</summary>
    public double East => At.Position.X;

    /// <summary>m north of the foot of the rail.</summary>
    public double North => At.Position.Y;

    /// <summary>Downwards, m/s.</summary>
    public double DescentRate => -At.VerticalSpeed;

    /// <summary>Over the ground, m/s.</summary>
    public double Speed => At.Speed;
}

/// <summary>How hard a canopy opened.</summary>
/// <param name="Name">Of the canopy.</param>
/// <param name="Body">Index of the body it hangs on.</param>
/// <param name="LineStretch">State at line stretch; its airspeed is v1.</param>
/// <param name="FillTime">s.</param>
/// <param name="PeakForce">Greatest drag of the canopy, N, from the equations of motion (no opening-force coefficient).</param>
public sealed record CanopyOpening(string Name, int Body, FlightSample LineStretch, double FillTime, FlightMaximum PeakForce);

/// <summary>Why a flight could not be computed to its end.</summary>
public enum FlightFailure
{
    /// <summary>Computed to its end.</summary>
    None,

    /// <summary>The thrust never reaches what lifts the rocket off.</summary>
    NoLiftOff,

    /// <summary>The plan speaks of joints or pieces the rocket has not; flown to apogee only.</summary>
    ImpossiblePlan,

    /// <summary>More steps than allowed.</summary>
    TooManySteps,

    /// <summary>A value is not finite or steps vanish: inputs contradict each other.</summary>
    NotFinite,
}
