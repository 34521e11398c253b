using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Design;

/// <summary>A measure, or the word <c>auto</c> that asks the program to choose.</summary>
/// <typeparam name="TQuantity">Kind of quantity.</typeparam>
/// <param name="Typed">The measure; null for <c>auto</c>.</param>
public sealed record AutoOr<TQuantity>(Measure<TQuantity>? Typed) : IReadable<AutoOr<TQuantity>>, IHoldsMeasure
    where TQuantity : struct, IQuantity
{
    /// <inheritdoc/>
    public static ValueList<string> Examples => ["auto"];

    IMeasure? IHoldsMeasure.Held => Typed;

    /// <summary>Whether the program chooses.</summary>
    public bool Auto => Typed is null;

    /// <inheritdoc/>
    public static Reading<AutoOr<TQuantity>> Read(string text, string at = "") =>
        text.Trim() == "auto"
            ? new AutoOr<TQuantity>((Measure<TQuantity>?)null)
            : Measure.Read<TQuantity>(text, at: at) is { Good: false } reading
                ? new TextProblem(reading.Problem.Position, reading.Problem.Message, $"{reading.Problem.Suggestion} Or write auto.".Trim())
                : new AutoOr<TQuantity>(Measure.Read<TQuantity>(text, at: at).Value);
}
