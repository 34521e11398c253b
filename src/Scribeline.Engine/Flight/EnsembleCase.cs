using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Flight;

/// <summary>One of many flights: in what it may differ from the others. The rest is that of <see cref="EnsembleInputs"/>.</summary>
/// <param name="Mass">Mass and balance over the burn.</param>
/// <param name="Rail">The rail; turned about its axis alike for all.</param>
/// <param name="Air">Still air of the day, its pad at one elevation for all.</param>
/// <param name="Wind">How the air moves; a discrete gust is not flown.</param>
/// <param name="Recovery">What comes apart and opens.</param>
/// <param name="Impulse">Factor on the thrust of the motor.</param>
/// <param name="Aerodynamics">Factors on the coefficients.</param>
public sealed record EnsembleCase(
    MassHistory Mass, LaunchRail Rail, DayAir Air, AirMotion Wind, RecoveryPlan Recovery, double Impulse, AeroFactors Aerodynamics);

/// <summary>How the air's forces differ from the shared table.</summary>
/// <param name="Axial">On the axial force.</param>
/// <param name="Normal">On the normal force and its damping.</param>
/// <param name="CentreShift">Of the centre of pressure, m aft.</param>
public readonly record struct AeroFactors(double Axial, double Normal, double CentreShift)
{
    /// <summary>As the table says.</summary>
    public static AeroFactors None { get; } = new(1, 1, 0);
}

/// <summary>How one of many flights ended.</summary>
/// <param name="Failed">Whether it could not be computed to its end, or never left the rail.</param>
/// <param name="Apogee">m above the pad; NaN where it got to none.</param>
/// <param name="Landings">One per body.</param>
public sealed record EnsembleEnd(bool Failed, double Apogee, IReadOnlyList<EnsembleLanding> Landings)
{
    /// <summary>Its apogee, where it was whole and burnt out there; null otherwise.</summary>
    internal EnsembleApex? Apex { get; init; }
}

/// <summary>One of many flights at apogee, still whole: what only opens there or later can go on from it.</summary>
/// <param name="Time">s after ignition.</param>
/// <param name="State">Of the whole rocket.</param>
internal sealed record EnsembleApex(double Time, double[] State);

/// <summary>Where a body of one of many flights came down.</summary>
/// <param name="First">Index of its first piece in the plan.</param>
/// <param name="Last">Index of its last piece; below <paramref name="First"/> for a rocket without pieces.</param>
/// <param name="East">m from the foot of the rail.</param>
/// <param name="North">m from the foot of the rail.</param>
/// <param name="DescentRate">m/s.</param>
/// <param name="Time">s after ignition.</param>
public readonly record struct EnsembleLanding(int First, int Last, double East, double North, double DescentRate, double Time);
