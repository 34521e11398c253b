namespace Scribeline.Engine.Quantities;

/// <summary>What follows the sign ±: two standard deviations of a normal distribution.</summary>
/// <param name="Value">0 or more, in <paramref name="Unit"/>; a fraction of the value where relative.</param>
/// <param name="Unit">Unit as typed; null where relative.</param>
public sealed record Tolerance(double Value, UnitOfMeasure? Unit)
{
    /// <summary>Whether it is a share of the value.</summary>
    public bool Relative => Unit is null;

    /// <summary>In SI units (kelvins for temperatures), for a value in SI units.</summary>
    public double SiFor(double si) => Unit is null ? Value * Math.Abs(si) : Unit.Offset == 0 ? Unit.ToSi(Value) : Value * Unit.Factor;
}
