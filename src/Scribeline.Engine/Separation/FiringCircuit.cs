namespace Scribeline.Engine.Separation;

/// <summary>
/// One firing channel as a circuit: battery, leads, electric matches. What is not known is null and nothing stands in for it.
/// Source: Ohm's and Joule's laws.
/// </summary>
/// <param name="Name">Of the altimeter or timer.</param>
/// <param name="Voltage">Of the battery without load, V.</param>
/// <param name="InternalResistance">Of the battery, cold, Ω.</param>
/// <param name="LeadResistance">There and back, Ω.</param>
/// <param name="MatchResistance">Of one match, Ω.</param>
/// <param name="AllFire">Current that always lights a match, A.</param>
/// <param name="NoFire">Current that never lights it, A.</param>
/// <param name="TestCurrent">That the altimeter sends to see whether the match is there, A.</param>
/// <param name="Parallel">Matches in parallel on the channel, 1 or more.</param>
public sealed record FiringCircuit(
    string Name,
    double? Voltage,
    double? InternalResistance,
    double? LeadResistance,
    double? MatchResistance,
    double? AllFire,
    double? NoFire,
    double? TestCurrent,
    int Parallel = 1)
{
    /// <summary>Where the voltage comes from, in words.</summary>
    public string VoltageSource { get; init; } = "design";

    /// <summary>Current of the whole channel, A: V/(R_battery + R_leads + R_match/n).</summary>
    /// <param name="voltage">V.</param>
    /// <param name="battery">Ω.</param>
    /// <param name="leads">Ω.</param>
    /// <param name="match">Ω.</param>
    /// <param name="parallel">Matches in parallel, 1 or more.</param>
    public static double Current(double voltage, double battery, double leads, double match, int parallel = 1) =>
        voltage / (battery + leads + (match / parallel));

    /// <summary>Heat given to a match, J: I² R t.</summary>
    /// <param name="current">A.</param>
    /// <param name="resistance">Ω.</param>
    /// <param name="time">s.</param>
    public static double Heat(double current, double resistance, double time) => current * current * resistance * time;
}
