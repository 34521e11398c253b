using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Scribeline.Engine.Numerics;

/// <summary>
/// Four numbers side by side in one 256-bit register, where the machine has one; the same results, slower, where it has
/// not. Agrees with <see cref="Scalar"/> to the bit in arithmetic and to a few units in the last place in the
/// elementary functions.
/// </summary>
/// <param name="Value">The numbers.</param>
public readonly record struct Wide4(Vector256<double> Value) : IReal<Wide4>
{
    /// <inheritdoc/>
    public static int Width => 4;

    /// <inheritdoc/>
    public static Wide4 From(double value) => new(Vector256.Create(value));

    /// <inheritdoc/>
    public static double Lane(Wide4 value, int lane) => value.Value[lane];

    /// <inheritdoc/>
    public static Wide4 Load(ReadOnlySpan<double> values) => new(Vector256.Create(values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 operator +(Wide4 a, Wide4 b) => new(a.Value + b.Value);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 operator -(Wide4 a, Wide4 b) => new(a.Value - b.Value);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 operator *(Wide4 a, Wide4 b) => new(a.Value * b.Value);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 operator /(Wide4 a, Wide4 b) => new(a.Value / b.Value);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 operator -(Wide4 a) => new(-a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 Sqrt(Wide4 a) => new(Vector256.Sqrt(a.Value));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 Abs(Wide4 a) => new(Vector256.Abs(a.Value));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 Floor(Wide4 a) => new(Vector256.Floor(a.Value));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 Min(Wide4 a, Wide4 b) => new(Vector256.Min(a.Value, b.Value));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 Max(Wide4 a, Wide4 b) => new(Vector256.Max(a.Value, b.Value));
    public static Wide4 Exp(Wide4 a) => new(Vector256.Exp(a.Value));
    public static Wide4 Log(Wide4 a) => new(Vector256.Log(a.Value));
    public static Wide4 Sin(Wide4 a) => new(Vector256.Sin(a.Value));
    public static Wide4 Cos(Wide4 a) => new(Vector256.Cos(a.Value));

    public static Wide4 Atan2(Wide4 y, Wide4 x)
    {
        var result = Vector256<double>.Zero;
        for (var lane = 0; lane < Width; lane++) result = result.WithElement(lane, Math.Atan2(y.Value[lane], x.Value[lane]));
        return new(result);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 SelectLess(Wide4 a, Wide4 b, Wide4 then, Wide4 otherwise) =>
        new(Vector256.ConditionalSelect(Vector256.LessThan(a.Value, b.Value), then.Value, otherwise.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide4 Gather(ReadOnlySpan<double> table, Wide4 index) => new(Vector256.Create(
        table[(int)index.Value[0]], table[(int)index.Value[1]], table[(int)index.Value[2]], table[(int)index.Value[3]]));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void SumRows(
        ReadOnlySpan<double> table, Wide4 start, int stride, in Wide4 a, in Wide4 b, in Wide4 c, in Wide4 d, Span<Wide4> sums)
    {
        const int most = IReal<Wide4>.Rows;
        Span<double> rows = stackalloc double[4 * most];
        for (var lane = 0; lane < 4; lane++)
        {
            var (wa, wb, wc, wd) = (Vector256.Create(a.Value[lane]), Vector256.Create(b.Value[lane]), Vector256.Create(c.Value[lane]), Vector256.Create(d.Value[lane]));
            var from = (int)start.Value[lane];
            for (var q = 0; q < sums.Length; q += 4)
            {
                var sum = wa * Vector256.Create(table[(from + q)..]) + wb * Vector256.Create(table[(from + stride + q)..])
                    + wc * Vector256.Create(table[(from + (2 * stride) + q)..]) + wd * Vector256.Create(table[(from + (3 * stride) + q)..]);
                sum.CopyTo(rows[((lane * most) + q)..]);
            }
        }

        for (var q = 0; q < sums.Length; q++)
        {
            sums[q] = new(Vector256.Create(
                rows[q], rows[(1 * most) + q], rows[(2 * most) + q], rows[(3 * most) + q]));
        }
    }
}
