using UnitsNet;

namespace Scribeline.Engine.Quantities;

/// <summary>A typed value with its unit, its tolerance and the text as typed. Equal if all of these are.</summary>
/// <typeparam name="TQuantity">UnitsNet quantity, such as <see cref="Length"/>.</typeparam>
/// <param name="Value">In <paramref name="Unit"/>.</param>
/// <param name="Unit">As typed; the first of a compound such as 5 ft 3 in.</param>
/// <param name="Tolerance">What followed ±; null where none was typed.</param>
/// <param name="Text">As typed.</param>
/// <param name="Known">How it is known.</param>
/// <param name="At">Path in the file; empty when made in code.</param>
public sealed record Measure<TQuantity>(
    double Value, UnitOfMeasure Unit, Tolerance? Tolerance, string Text, Basis Known = Basis.Estimated, string At = "") : IMeasure
    where TQuantity : struct, IQuantity
{
    /// <inheritdoc/>
    public double Si => Unit.ToSi(Value);

    /// <inheritdoc/>
    public double ToleranceSi => Tolerance?.SiFor(Si) ?? 0;

    /// <inheritdoc/>
    public double Sigma => ToleranceSi / 2;

    /// <inheritdoc/>
    public Dimension Dimension => Dimension.Of<TQuantity>();

    /// <summary>As typed.</summary>
    public override string ToString() => Text;
}

/// <summary>Makes measures.</summary>
public static class Measure
{
    /// <summary>Reads what a builder types: <c>3/16 in</c>, <c>1-1/4"</c>, <c>5' 3"</c>, <c>2 lb 4 oz</c>, <c>412 g ± 5 g</c>, <c>20 °C ± 2 °C</c>.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="known">How it is known.</param>
    /// <param name="at">Path in the file.</param>
    public static Reading<Measure<TQuantity>> Read<TQuantity>(string text, Basis known = Basis.Estimated, string at = "")
        where TQuantity : struct, IQuantity =>
        new MeasureReader(text, Dimension.Of<TQuantity>()).Read().Select(v => new Measure<TQuantity>(v.Value, v.Unit, v.Tolerance, text.Trim(), known, at));

    /// <summary>Reads what a builder types as a quantity whose kind is known only while running.</summary>
    /// <param name="dimension">Kind of quantity.</param>
    /// <param name="text">As typed.</param>
    /// <param name="known">How it is known.</param>
    /// <param name="at">Path in the file.</param>
    public static Reading<IMeasure> ReadAs(Dimension dimension, string text, Basis known = Basis.Estimated, string at = "") =>
        new MeasureReader(text, dimension).Read().Select(v =>
            (IMeasure)Activator.CreateInstance(typeof(Measure<>).MakeGenericType(dimension.Quantity), v.Value, v.Unit, v.Tolerance, text.Trim(), known, at)!);

    /// <summary>A measure of an SI value, written in metric units.</summary>
    /// <param name="si">SI value, finite.</param>
    /// <param name="tolerance">What follows ±, SI; 0 for none.</param>
    /// <param name="known">How it is known.</param>
    /// <param name="at">Path, for values that stand in for typed ones.</param>
    public static Measure<TQuantity> Si<TQuantity>(double si, double tolerance = 0, Basis known = Basis.Estimated, string at = "")
        where TQuantity : struct, IQuantity
    {
        if (!double.IsFinite(si)) throw new ArgumentOutOfRangeException(nameof(si), si, "A measure is finite.");
        var unit = Dimension.Of<TQuantity>().Metric;
        return Of<TQuantity>(unit.FromSi(si), unit, tolerance == 0 ? null : new(tolerance / unit.Factor, unit), known, at);
    }

    /// <summary>A measure of a value in a unit, with its text written by <see cref="MeasureText"/>.</summary>
    public static Measure<TQuantity> Of<TQuantity>(
        double value, UnitOfMeasure unit, Tolerance? tolerance = null, Basis known = Basis.Estimated, string at = "")
        where TQuantity : struct, IQuantity =>
        new(value, unit, tolerance, MeasureText.Write(value, unit, tolerance), known, at);
}
