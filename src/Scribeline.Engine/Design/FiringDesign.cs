using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>One altimeter or timer with what it fires, or the motor's own delay.</summary>
public sealed record FiringDesign : Placed
{
    [Key("Name of the altimeter or timer; left out for a motor's own delay.", Names = true)]
    public string? Altimeter { get; init; }

    [Key("Its battery.")]
    public Supply? Supply { get; init; }

    [Key("The electric matches it fires.")]
    public MatchDesign? Match { get; init; }

    [Key("Resistance of the leads to one match, there and back.", Sign = Sign.NotBelow)]
    public Measure<ElectricResistance>? LeadResistance { get; init; }

    [Key("Speed above which it ignores its pressure sensor.", Sign = Sign.Above)]
    public Measure<Speed>? MachLockout { get; init; }

    [Key("Fires at apogee.")]
    public ApogeeDesign? Apogee { get; init; }

    [Key("Fires on the way down through a height above the pad.")]
    public HeightDesign? DescendingThrough { get; init; }

    [Key("Fires at a time after lift-off.")]
    public TimeDesign? AtTime { get; init; }

    [Key("The motor's own ejection charge.")]
    public DelayDesign? MotorDelay { get; init; }
}

/// <summary>Fires at apogee.</summary>
public sealed record ApogeeDesign : Placed
{
    [Key("The charge it fires.", Required = true)]
    public required string Charge { get; init; }

    [Key("Time after apogee.", Sign = Sign.NotBelow)]
    public Measure<Duration>? After { get; init; }
}

/// <summary>Fires on the way down through a height.</summary>
public sealed record HeightDesign : Placed
{
    [Key("Height above the pad.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Height { get; init; }

    [Key("The charge it fires.", Required = true)]
    public required string Charge { get; init; }

    [Key("Time after passing the height.", Sign = Sign.NotBelow)]
    public Measure<Duration>? After { get; init; }
}

/// <summary>Fires at a time after lift-off.</summary>
public sealed record TimeDesign : Placed
{
    [Key("Time after lift-off.", Required = true, Sign = Sign.Above)]
    public required Measure<Duration> Time { get; init; }

    [Key("The charge it fires.", Required = true)]
    public required string Charge { get; init; }
}

/// <summary>The motor's own ejection charge.</summary>
public sealed record DelayDesign : Placed
{
    [Key("Time from burnout.", Required = true, Sign = Sign.NotBelow)]
    public required Measure<Duration> Delay { get; init; }

    [Key("The charge it fires; a charge named here sits in the motor.", Required = true)]
    public required string Charge { get; init; }
}

/// <summary>Electric match.</summary>
public sealed record MatchDesign : Placed
{
    [Key("Resistance.", Sign = Sign.Above)]
    public Measure<ElectricResistance>? Resistance { get; init; }

    [Key("Current that always lights it.", Sign = Sign.Above)]
    public Measure<ElectricCurrent>? AllFire { get; init; }

    [Key("Current that never lights it.", Sign = Sign.Above)]
    public Measure<ElectricCurrent>? NoFire { get; init; }

    [Key("Current the altimeter sends to see whether it is there.", Sign = Sign.NotBelow)]
    public Measure<ElectricCurrent>? TestCurrent { get; init; }

    [Key("Matches in parallel on one channel; 1 if left out.", Sign = Sign.Above)]
    public int? Parallel { get; init; }
}
