using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>Motor mount: a tube held by centring rings.</summary>
public sealed record MotorMountDesign : Placed
{
    [Key("Inside diameter; the motors it takes.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Inside { get; init; }

    [Key("Outside diameter; either this or the wall.", Sign = Sign.Above)]
    public Measure<Length>? Outside { get; init; }

    [Key("Wall thickness; either this or the outside diameter.", Sign = Sign.Above)]
    public Measure<Length>? Wall { get; init; }

    [Key("Length of the mount.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Length { get; init; }

    [Key("From the tube's aft end to the mount's; negative where it stands out; flush if left out.")]
    public Measure<Length>? FromAftEnd { get; init; }

    [Key("How far the motor stands out behind the mount.")]
    public Measure<Length>? Overhang { get; init; }

    [Key("What it is made of.")]
    public string? Material { get; init; }

    [Key("Adhesive of the rings.")]
    public string? Adhesive { get; init; }

    [Key("Radius of the fillets at the rings.", Sign = Sign.Above)]
    public Measure<Length>? Fillet { get; init; }

    [Key("Centring rings.")]
    public ValueList<RingDesign> Rings { get; init; } = ValueList<RingDesign>.Empty;

    [Key("What a cord ties to at the front of the motor, such as forged eye bolt 3/8.")]
    public string? Hardware { get; init; }

    [Key("Working load of the hardware in line, as stamped on it; from the table by name and size if left out.", Sign = Sign.Above)]
    public Measure<Force>? HardwareLoad { get; init; }

    [Key("What keeps the motor in.")]
    public RetainerDesign? Retainer { get; init; }
}

/// <summary>Centring ring.</summary>
public sealed record RingDesign : Placed
{
    [Key("Name.")]
    public string? Name { get; init; }

    [Key("From the mount's aft end to the ring's back; either this or from forward end.")]
    public Measure<Length>? FromAftEnd { get; init; }

    [Key("From the mount's front to the ring's front; either this or from aft end.")]
    public Measure<Length>? FromForwardEnd { get; init; }

    [Key("Thickness.", Required = true, Sign = Sign.Above)]
    public required Measure<Length> Thickness { get; init; }

    [Key("Outside diameter; the inside of the tube if left out.", Sign = Sign.Above)]
    public Measure<Length>? Outside { get; init; }

    [Key("Inside diameter; the outside of the mount if left out.", Sign = Sign.Above)]
    public Measure<Length>? Inside { get; init; }

    [Key("What it is made of.")]
    public string? Material { get; init; }
}

/// <summary>What keeps the motor in.</summary>
public sealed record RetainerDesign : Placed
{
    [Key("Name or kind.", Required = true)]
    public required string Name { get; init; }

    [Key("Mass.", Sign = Sign.Above)]
    public Measure<Mass>? Mass { get; init; }

    [Key("How far it stands out behind the mount.", Sign = Sign.NotBelow)]
    public Measure<Length>? Length { get; init; }

    [Key("Outside diameter.", Sign = Sign.Above)]
    public Measure<Length>? Outside { get; init; }
}
