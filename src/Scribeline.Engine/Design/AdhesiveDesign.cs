using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>An adhesive of the builder's own, from its data sheet.</summary>
public sealed record AdhesiveDesign : Placed
{
    [Key("Name that bonds use.", Required = true, Names = true)]
    public required string Name { get; init; }

    [Key("Lap shear strength, ASTM D1002 or ISO 4587.", Required = true, Sign = Sign.Above)]
    public required Measure<Pressure> LapShear { get; init; }

    [Key("Density, mixed.", Sign = Sign.Above)]
    public Measure<Density>? Density { get; init; }

    [Key("Working time in the cup.", Sign = Sign.Above)]
    public Measure<Duration>? PotLife { get; init; }

    [Key("Mass in the cup for which that holds.", Sign = Sign.Above)]
    public Measure<Mass>? PotMass { get; init; }

    [Key("Temperature at which the times hold.", Required = true)]
    public required Measure<Temperature> Temperature { get; init; }

    [Key("Until it may be moved.", Sign = Sign.Above)]
    public Measure<Duration>? Handling { get; init; }

    [Key("Until it may be loaded.", Sign = Sign.Above)]
    public Measure<Duration>? FullCure { get; init; }

    [Key("Where it begins to give under load: deflection or glass transition.")]
    public Measure<Temperature>? Softens { get; init; }

    [Key("Where the figures come from.", Required = true)]
    public required string Source { get; init; }
}

/// <summary>How the bench works.</summary>
public sealed record BenchDesign : Placed
{
    [Key("Temperature of the workshop; that of the day if left out.")]
    public Measure<Temperature>? Temperature { get; init; }

    [Key("How faces are prepared for bonding.")]
    public PreparationWord? Preparation { get; init; }

    [Key("Adhesive mixed over adhesive needed; 1.4 if left out.", Sign = Sign.Above)]
    public Measure<Ratio>? Waste { get; init; }

    [Key("Length of an evening of building; 3 h if left out.", Sign = Sign.Above)]
    public Measure<Duration>? Evening { get; init; }

    [Key("Thickness of the paper for templates; 0.1 mm if left out.", Sign = Sign.NotBelow)]
    public Measure<Length>? Paper { get; init; }
}

/// <summary>Preparation of faces.</summary>
public enum PreparationWord
{
    /// <summary>Degreased, abraded with P120 to P240 to a uniform matt, wiped.</summary>
    Abraded,

    /// <summary>Degreased and no more.</summary>
    Degreased,
}
