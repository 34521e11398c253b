namespace Scribeline.Engine.Evidence.Shots;

/// <summary>A charge fired on the ground, in SI; what was not typed is null.</summary>
/// <param name="Name">What it is called: its number, or its place in the design file.</param>
/// <param name="Charge">Name of the charge whose place it took.</param>
/// <param name="Powder">As loaded, kg.</param>
/// <param name="Outcome">What happened.</param>
public sealed record Shot(string Name, string Charge, double Powder, ShotOutcome Outcome)
{
    /// <summary>Radius of the grain, m.</summary>
    public double? GrainRadius { get; init; }

    /// <summary>Pins fitted.</summary>
    public int? Pins { get; init; }

    /// <summary>Screw of the pins, as typed.</summary>
    public string? Screw { get; init; }

    /// <summary>Free volume of the bay then, m³.</summary>
    public double? Volume { get; init; }

    /// <summary>Air temperature, K.</summary>
    public double? Temperature { get; init; }

    /// <summary>Whether the piece behind was strapped fast.</summary>
    public bool Held { get; init; }

    /// <summary>How far apart the pieces ended, m.</summary>
    public double? Distance { get; init; }

    /// <summary>Speed of the pieces from one another, m/s.</summary>
    public ShotReading? Speed { get; init; }

    /// <summary>Greatest pressure in the bay over that outside, Pa.</summary>
    public ShotReading? Pressure { get; init; }

    /// <summary>What filled the room round the powder.</summary>
    public string Wadding { get; init; } = "";

    /// <summary>Anything else.</summary>
    public string Note { get; init; } = "";

    /// <summary>When.</summary>
    public string Date { get; init; } = "";

    /// <summary>Revision of the design it was fired with.</summary>
    public string Revision { get; init; } = "";

    /// <summary>Whether the joint let go.</summary>
    public bool LetGo => Outcome != ShotOutcome.Stayed;
}

/// <summary>What a shot did, mildest first.</summary>
public enum ShotOutcome
{
    /// <summary>The joint stayed shut.</summary>
    Stayed,

    /// <summary>It came apart, and what was stowed stayed in.</summary>
    GearIn,

    /// <summary>It came apart and the gear came out.</summary>
    Clean,

    /// <summary>The same, harder than anything should be.</summary>
    Hard,

    /// <summary>It came apart and something broke.</summary>
    Broke,
}
