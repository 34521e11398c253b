using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>A motor as certified.</summary>
public sealed record MotorDesign : Placed
{
    [Key("Name as printed by its maker.", Required = true)]
    public required string Name { get; init; }

    [Key("Diameter of the motor.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Diameter { get; init; }

    [Key("Length of the motor.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("Mass ready to fly.", Required = true, Sign = Sign.Above)]
    public required Measure<Mass> LoadedMass { get; init; }

    [Key("Mass of propellant; either this or the empty mass.", Sign = Sign.Above)]
    public Measure<Mass>? PropellantMass { get; init; }

    [Key("Mass after burnout; either this or the propellant mass.", Sign = Sign.Above)]
    public Measure<Mass>? EmptyMass { get; init; }

    [Key("Balance of the loaded motor from its forward end; the middle if left out.", Sign = Sign.Above)]
    public Measure<Length>? LoadedBalance { get; init; }

    [Key("Balance of the burnt motor from its forward end; the middle if left out.", Sign = Sign.Above)]
    public Measure<Length>? EmptyBalance { get; init; }

    [Key("Diameter of the nozzle's exit.", Sign = Sign.Above)]
    public Measure<Length>? NozzleExit { get; init; }

    [Key("Delays on offer, from burnout to the motor's own charge.", Sign = Sign.NotBelow)]
    public ValueList<Measure<Duration>> Delays { get; init; } = ValueList<Measure<Duration>>.Empty;

    [Key("Whether it has no ejection charge.")]
    public bool Plugged { get; init; }

    [Key("Spread of total impulse from motor to motor, two standard deviations as a share.", Sign = Sign.NotBelow)]
    public Measure<Ratio>? ImpulseTolerance { get; init; }

    [Key("How masses and thrust are known.")]
    public Basis Known { get; init; }

    [Key("Thrust table: a CSV file of time in s and thrust in N, or a list of [time, thrust].", Required = true)]
    public required FileOr<ThrustTable> Thrust { get; init; }
}

/// <summary>Thrust by time.</summary>
/// <param name="Points">In the order typed.</param>
public sealed record ThrustTable(ValueList<ThrustPointDesign> Points);

/// <summary>A point of a thrust table.</summary>
[InOrder]
public sealed record ThrustPointDesign : Placed
{
    [Key("Time after first thrust.", Required = true, Sign = Sign.NotBelow)]
    public required Measure<Duration> Time { get; init; }

    [Key("Thrust.", Required = true, Sign = Sign.NotBelow)]
    public required Measure<Force> Thrust { get; init; }
}
