using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Properties.Air;

/// <summary>Two numbers as one <see cref="IReal{T}"/>, plainly written, to hold what is generic to what it gives for one number.</summary>
public readonly record struct Pair(double A, double B) : IReal<Pair>
{
    public static int Width => 2;

    public static Pair From(double value) => new(value, value);
    public static double Lane(Pair value, int lane) => lane == 0 ? value.A : value.B;
    public static Pair Load(ReadOnlySpan<double> values) => new(values[0], values[1]);
    public static Pair operator +(Pair a, Pair b) => new(a.A + b.A, a.B + b.B);
    public static Pair operator -(Pair a, Pair b) => new(a.A - b.A, a.B - b.B);
    public static Pair operator *(Pair a, Pair b) => new(a.A * b.A, a.B * b.B);
    public static Pair operator /(Pair a, Pair b) => new(a.A / b.A, a.B / b.B);
    public static Pair operator -(Pair a) => new(-a.A, -a.B);
    public static Pair Sqrt(Pair a) => Each(a, Math.Sqrt);
    public static Pair Abs(Pair a) => Each(a, Math.Abs);
    public static Pair Floor(Pair a) => Each(a, Math.Floor);
    public static Pair Min(Pair a, Pair b) => new(Math.Min(a.A, b.A), Math.Min(a.B, b.B));
    public static Pair Max(Pair a, Pair b) => new(Math.Max(a.A, b.A), Math.Max(a.B, b.B));
    public static Pair Exp(Pair a) => Each(a, Math.Exp);
    public static Pair Log(Pair a) => Each(a, Math.Log);
    public static Pair Sin(Pair a) => Each(a, Math.Sin);
    public static Pair Cos(Pair a) => Each(a, Math.Cos);
    public static Pair Atan2(Pair y, Pair x) => new(Math.Atan2(y.A, x.A), Math.Atan2(y.B, x.B));
    public static Pair SelectLess(Pair a, Pair b, Pair then, Pair otherwise) =>
        new(a.A < b.A ? then.A : otherwise.A, a.B < b.B ? then.B : otherwise.B);

    public static Pair Gather(ReadOnlySpan<double> table, Pair index) => new(table[(int)index.A], table[(int)index.B]);

    private static Pair Each(Pair a, Func<double, double> f) => new(f(a.A), f(a.B));

    public static void SumRows(
        ReadOnlySpan<double> table, Pair start, int stride, in Pair a, in Pair b, in Pair c, in Pair d, Span<Pair> sums)
    {
        for (var q = 0; q < sums.Length; q++)
        {
            var at = start + From(q);
            sums[q] = (a * Gather(table, at)) + (b * Gather(table, at + From(stride))) + (c * Gather(table, at + From(2 * stride)))
                + (d * Gather(table, at + From(3 * stride)));
        }
    }
}
