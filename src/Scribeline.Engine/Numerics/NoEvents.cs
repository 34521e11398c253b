namespace Scribeline.Engine.Numerics;

/// <summary>No event functions.</summary>
public readonly record struct NoEvents : IEventFunctions
{
    /// <inheritdoc/>
    public int Count => 0;

    /// <inheritdoc/>
    public EventRule Rule(int index) => throw new ArgumentOutOfRangeException(nameof(index));

    /// <inheritdoc/>
    public double Value(int index, double time, ReadOnlySpan<double> state) => throw new ArgumentOutOfRangeException(nameof(index));
}
