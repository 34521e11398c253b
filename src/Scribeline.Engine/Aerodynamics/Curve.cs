using MathNet.Numerics.Interpolation;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>A tabulated function: monotone cubic (Fritsch and Carlson 1980) between its points, constant beyond them.</summary>
internal sealed class Curve
{
    private readonly CubicSpline spline;
    private readonly double first;
    private readonly double last;

    /// <summary>Through the points, x rising; at least three.</summary>
    public Curve(double[] x, double[] y)
    {
        spline = CubicSpline.InterpolatePchipSorted(x, y);
        first = x[0];
        last = x[^1];
    }

    /// <summary>The value at x.</summary>
    public double At(double x) => spline.Interpolate(Math.Clamp(x, first, last));
}

/// <summary>Joins between regimes.</summary>
internal static class Bridge
{
    /// <summary>0 below <paramref name="from"/>, 1 above <paramref name="to"/>, a cubic with level ends between.</summary>
    public static double Step(double x, double from, double to)
    {
        var u = Math.Clamp((x - from) / (to - from), 0, 1);
        return u * u * (3 - 2 * u);
    }

    /// <summary>The cubic through (x0, y0) and (x1, y1) with the slopes s0 and s1 there.</summary>
    public static double Hermite(double x, double x0, double y0, double s0, double x1, double y1, double s1)
    {
        var h = x1 - x0;
        var u = (x - x0) / h;
        var v = 1 - u;
        return v * v * ((1 + 2 * u) * y0 + u * h * s0) + u * u * ((1 + 2 * v) * y1 - v * h * s1);
    }

    /// <summary>Slope of a function by a central difference.</summary>
    public static double Slope(Func<double, double> f, double x, double step = 1e-4) => (f(x + step) - f(x - step)) / (2 * step);
}
