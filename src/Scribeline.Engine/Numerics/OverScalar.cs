using System.Runtime.InteropServices;

namespace Scribeline.Engine.Numerics;

/// <summary>A system written over <see cref="IReal{T}"/>, taken one at a time.</summary>
/// <typeparam name="TSystem">The generic system.</typeparam>
/// <param name="System">The system to integrate.</param>
public readonly record struct OverScalar<TSystem>(TSystem System) : IOdeSystem
    where TSystem : struct, IOdeSystem<Scalar>
{
    /// <inheritdoc/>
    public int Dimension => System.Dimension;

    /// <inheritdoc/>
    public void Derivative(double time, ReadOnlySpan<double> state, Span<double> rate) =>
        System.Derivative(time, MemoryMarshal.Cast<double, Scalar>(state), MemoryMarshal.Cast<double, Scalar>(rate));
}
