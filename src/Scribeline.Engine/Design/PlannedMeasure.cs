using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>A quantity of a design that can be measured on the real thing.</summary>
/// <param name="Of">Name of the part, plate, canopy, cord or joint it belongs to.</param>
/// <param name="What">Its keys below that, parted by spaces, such as <c>fins root</c>.</param>
/// <param name="At">Path in the file.</param>
/// <param name="Dimension">Kind of quantity.</param>
/// <param name="Sign">What values it may have.</param>
/// <param name="Plan">As typed; null where it was left out and only estimated.</param>
public sealed record PlannedMeasure(string Of, string What, string At, Dimension Dimension, Sign Sign, IMeasure? Plan)
{
    /// <summary>By which it is measured and recorded, such as <c>Booster fins root</c>. It stays while other things change.</summary>
    public string Name => $"{Of} {What}";

    /// <summary>Reads a measured value of it, as a builder types it.</summary>
    /// <param name="text">Such as <c>8.48 in ± 0.01 in</c>.</param>
    public Reading<IMeasure> Read(string text)
    {
        var reading = Measure.ReadAs(Dimension, text, Basis.Measured, At);
        if (!reading.Good) return reading;
        var fits = Sign switch { Sign.Above => reading.Value.Si > 0, Sign.NotBelow => reading.Value.Si >= 0, _ => true };
        return fits ? reading : new TextProblem(0, $"It cannot be {text.Trim()}.", Sign == Sign.Above ? "Write a value above 0." : "Write 0 or more.");
    }
}
