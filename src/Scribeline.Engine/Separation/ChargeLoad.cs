using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Separation;

/// <summary>A charge as loaded.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Forward">Name of what closes its bay ahead.</param>
/// <param name="Aft">Name of what closes its bay behind.</param>
/// <param name="Joint">Index of the joint it opens.</param>
/// <param name="Mass">kg; null where it cannot be chosen because an input is missing.</param>
/// <param name="GrainRadius">m.</param>
/// <param name="Choice">How it was chosen; null where it was typed.</param>
/// <param name="Basis">How the mass is known.</param>
public sealed record ChargeLoad(string Name, string Forward, string Aft, int Joint, double? Mass, double GrainRadius, ChargeChoice? Choice, Basis Basis)
{
    /// <summary>Share of the heat and gas that its powder gives.</summary>
    public double Impetus { get; init; } = 1;
}

/// <summary>How the program chose a charge.</summary>
/// <param name="Least">Charge that just meets the ruling limit in the worst corner of the tolerances, kg, before rounding up.</param>
/// <param name="Ruling">Id of the limit that ruled.</param>
/// <param name="Volume">Largest free volume within the tolerances, m³.</param>
/// <param name="Hold">Strongest pins and most friction within them, N.</param>
public sealed record ChargeChoice(double Least, string Ruling, double Volume, double Hold)
{
    /// <summary>Step to which charges are rounded up, kg: what a hobby scale resolves.</summary>
    public const double Step = 1e-4;

    /// <summary>The charge, rounded up, kg.</summary>
    public double Mass => Math.Ceiling((Least / Step) - 1e-9) * Step;
}
