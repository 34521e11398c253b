namespace Scribeline.Engine.Design;

/// <summary>Ejection charge.</summary>
public sealed record ChargeDesign : Placed
{
    [Key("Name.", Required = true, Names = true)]
    public required string Name { get; init; }

    [Key("The plate its holder sits on, or Motor for the motor's own charge.", Required = true)]
    public required string On { get; init; }

    [Key("The part whose bay it fills with gas.", Required = true)]
    public required string Into { get; init; }

    [Key("Powder.", Required = true)]
    public required PowderWord Powder { get; init; }

    [Key("How much: a mass, auto, or a share of another charge.", Required = true)]
    public required ChargeMass Mass { get; init; }
}

/// <summary>Black powder by grain, coarse to fine.</summary>
public enum PowderWord
{
    /// <summary>FFg.</summary>
    [Word("2F")]
    TwoF,

    /// <summary>FFFg.</summary>
    [Word("3F")]
    ThreeF,

    /// <summary>FFFFg.</summary>
    [Word("4F")]
    FourF,
}
