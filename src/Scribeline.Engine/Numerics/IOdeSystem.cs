namespace Scribeline.Engine.Numerics;

/// <summary>
/// A first-order system y' = f(t, y) of ordinary differential equations. Implement it as a struct: the integrator
/// is compiled for it and the call inlines.
/// </summary>
public interface IOdeSystem
{
    /// <summary>Number of state components, at least 1.</summary>
    int Dimension { get; }

    /// <summary>
    /// Writes f(t, y) into <paramref name="rate"/>. Where f jumps in time, the value at the jump is the later one
    /// (continuous from the right).
    /// </summary>
    void Derivative(double time, ReadOnlySpan<double> state, Span<double> rate);
}
