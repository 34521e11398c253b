using System.Runtime.CompilerServices;

namespace Scribeline.Engine.Numerics;

/// <summary>One <see cref="double"/> as an <see cref="IReal{T}"/>.</summary>
/// <param name="Value">The number.</param>
public readonly record struct Scalar(double Value) : IReal<Scalar>
{
    /// <inheritdoc/>
    public static int Width => 1;

    public static implicit operator Scalar(double value) => new(value);
    public static implicit operator double(Scalar value) => value.Value;

    /// <inheritdoc/>
    public static Scalar From(double value) => new(value);

    /// <inheritdoc/>
    public static double Lane(Scalar value, int lane) => value.Value;

    /// <inheritdoc/>
    public static Scalar Load(ReadOnlySpan<double> values) => new(values[0]);

    public static Scalar operator +(Scalar a, Scalar b) => new(a.Value + b.Value);
    public static Scalar operator -(Scalar a, Scalar b) => new(a.Value - b.Value);
    public static Scalar operator *(Scalar a, Scalar b) => new(a.Value * b.Value);
    public static Scalar operator /(Scalar a, Scalar b) => new(a.Value / b.Value);
    public static Scalar operator -(Scalar a) => new(-a.Value);

    public static Scalar Sqrt(Scalar a) => new(Math.Sqrt(a.Value));
    public static Scalar Abs(Scalar a) => new(Math.Abs(a.Value));
    public static Scalar Floor(Scalar a) => new(Math.Floor(a.Value));
    public static Scalar Min(Scalar a, Scalar b) => new(Math.Min(a.Value, b.Value));
    public static Scalar Max(Scalar a, Scalar b) => new(Math.Max(a.Value, b.Value));
    public static Scalar Exp(Scalar a) => new(Math.Exp(a.Value));
    public static Scalar Log(Scalar a) => new(Math.Log(a.Value));
    public static Scalar Sin(Scalar a) => new(Math.Sin(a.Value));
    public static Scalar Cos(Scalar a) => new(Math.Cos(a.Value));
    public static Scalar Atan2(Scalar y, Scalar x) => new(Math.Atan2(y.Value, x.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar SelectLess(Scalar a, Scalar b, Scalar then, Scalar otherwise) => a.Value < b.Value ? then : otherwise;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Gather(ReadOnlySpan<double> table, Scalar index) => new(table[(int)index.Value]);

    /// <inheritdoc/>
    public static void SumRows(
        ReadOnlySpan<double> table, Scalar start, int stride, in Scalar a, in Scalar b, in Scalar c, in Scalar d, Span<Scalar> sums)
    {
        var rows = table.Slice((int)start.Value, (3 * stride) + sums.Length);
        for (var q = 0; q < sums.Length; q++)
        {
            sums[q] = a.Value * rows[q] + b.Value * rows[stride + q] + c.Value * rows[(2 * stride) + q] + d.Value * rows[(3 * stride) + q];
        }
    }
}
