using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Scribeline.Engine.Numerics;

/// <summary>
/// Eight numbers side by side in one 512-bit register, where the machine has one; the same results, slower, where it has
/// not. Agrees with <see cref="Scalar"/> to the bit in arithmetic and to a few units in the last place in the
/// elementary functions.
/// </summary>
/// <param name="Value">The numbers.</param>
public readonly record struct Wide8(Vector512<double> Value) : IReal<Wide8>
{
    /// <inheritdoc/>
    public static int Width => 8;

    /// <inheritdoc/>
    public static Wide8 From(double value) => new(Vector512.Create(value));

    /// <inheritdoc/>
    public static double Lane(Wide8 value, int lane) => value.Value[lane];

    /// <inheritdoc/>
    public static Wide8 Load(ReadOnlySpan<double> values) => new(Vector512.Create(values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 operator +(Wide8 a, Wide8 b) => new(a.Value + b.Value);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 operator -(Wide8 a, Wide8 b) => new(a.Value - b.Value);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 operator *(Wide8 a, Wide8 b) => new(a.Value * b.Value);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 operator /(Wide8 a, Wide8 b) => new(a.Value / b.Value);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 operator -(Wide8 a) => new(-a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 Sqrt(Wide8 a) => new(Vector512.Sqrt(a.Value));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 Abs(Wide8 a) => new(Vector512.Abs(a.Value));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 Floor(Wide8 a) => new(Vector512.Floor(a.Value));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 Min(Wide8 a, Wide8 b) => new(Vector512.Min(a.Value, b.Value));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 Max(Wide8 a, Wide8 b) => new(Vector512.Max(a.Value, b.Value));
    public static Wide8 Exp(Wide8 a) => new(Vector512.Exp(a.Value));
    public static Wide8 Log(Wide8 a) => new(Vector512.Log(a.Value));
    public static Wide8 Sin(Wide8 a) => new(Vector512.Sin(a.Value));
    public static Wide8 Cos(Wide8 a) => new(Vector512.Cos(a.Value));

    public static Wide8 Atan2(Wide8 y, Wide8 x)
    {
        var result = Vector512<double>.Zero;
        for (var lane = 0; lane < Width; lane++) result = result.WithElement(lane, Math.Atan2(y.Value[lane], x.Value[lane]));
        return new(result);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 SelectLess(Wide8 a, Wide8 b, Wide8 then, Wide8 otherwise) =>
        new(Vector512.ConditionalSelect(Vector512.LessThan(a.Value, b.Value), then.Value, otherwise.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Wide8 Gather(ReadOnlySpan<double> table, Wide8 index) => new(Vector512.Create(
        table[(int)index.Value[0]], table[(int)index.Value[1]], table[(int)index.Value[2]], table[(int)index.Value[3]],
        table[(int)index.Value[4]], table[(int)index.Value[5]], table[(int)index.Value[6]], table[(int)index.Value[7]]));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void SumRows(
        ReadOnlySpan<double> table, Wide8 start, int stride, in Wide8 a, in Wide8 b, in Wide8 c, in Wide8 d, Span<Wide8> sums)
    {
        const int most = IReal<Wide8>.Rows;
        Span<double> rows = stackalloc double[8 * most];
        for (var lane = 0; lane < 8; lane++)
        {
            var (wa, wb, wc, wd) = (Vector512.Create(a.Value[lane]), Vector512.Create(b.Value[lane]), Vector512.Create(c.Value[lane]), Vector512.Create(d.Value[lane]));
            var from = (int)start.Value[lane];
            for (var q = 0; q < sums.Length; q += 8)
            {
                var sum = wa * Vector512.Create(table[(from + q)..]) + wb * Vector512.Create(table[(from + stride + q)..])
                    + wc * Vector512.Create(table[(from + (2 * stride) + q)..]) + wd * Vector512.Create(table[(from + (3 * stride) + q)..]);
                sum.CopyTo(rows[((lane * most) + q)..]);
            }
        }

        for (var q = 0; q < sums.Length; q++)
        {
            sums[q] = new(Vector512.Create(
                rows[q], rows[(1 * most) + q], rows[(2 * most) + q], rows[(3 * most) + q], rows[(4 * most) + q], rows[(5 * most) + q], rows[(6 * most) + q], rows[(7 * most) + q]));
        }
    }
}
