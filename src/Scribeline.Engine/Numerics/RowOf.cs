using System.Runtime.CompilerServices;

namespace Scribeline.Engine.Numerics;

/// <summary>Room for the sums of <see cref="IReal{T}.SumRows"/>.</summary>
/// <typeparam name="T">The number type.</typeparam>
[InlineArray(IReal<Scalar>.Rows)]
internal struct RowOf<T>
    where T : struct, IReal<T>
{
    private T first;
}
