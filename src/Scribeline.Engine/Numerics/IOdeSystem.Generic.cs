namespace Scribeline.Engine.Numerics;

/// <summary>
/// A first-order system y' = f(t, y) over any number type, each lane with its own time. Implement it as a struct.
/// </summary>
/// <typeparam name="T">The number type.</typeparam>
public interface IOdeSystem<T>
    where T : struct, IReal<T>
{
    /// <summary>Number of state components, at least 1.</summary>
    int Dimension { get; }

    /// <summary>Writes f(t, y) into <paramref name="rate"/>; continuous from the right where f jumps in time.</summary>
    void Derivative(T time, ReadOnlySpan<T> state, Span<T> rate);
}
