namespace Scribeline.Engine.Quantities;

/// <summary>A value that may be a measure or something else.</summary>
public interface IHoldsMeasure
{
    /// <summary>The measure; null where something else was typed.</summary>
    IMeasure? Held { get; }
}
